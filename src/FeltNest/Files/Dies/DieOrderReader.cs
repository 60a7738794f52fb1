using FeltNest.Die.Order;
using FeltNest.Files.Fields;
using FeltNest.Files.Json;
using FeltNest.Files.Rolls;
using static FeltNest.Files.Dies.DieOrderDocument;

namespace FeltNest.Files.Dies;

/// <summary>Reads what a shop wants of a die (schema feltnest/die-order/1).</summary>
internal static class DieOrderReader
{
    /// <summary>The order of a file.</summary>
    /// <exception cref="InputException">Names the file, the field, the value found and what is allowed.</exception>
    public static DieOrder Read(string path) => Read(InputText.OfFile(path));

    /// <summary>The order of a text.</summary>
    /// <exception cref="InputException">Names the text, the field, the value found and what is allowed.</exception>
    public static DieOrder Read(InputText text)
    {
        JsonFields top = JsonFields.Top(text, DieOrderDocument.Document);
        JsonFields felt = top.Object(Felt);
        return new DieOrder
        {
            Name = top.Text(Name),
            Rule = RuleOf(top.Object(Rule)),
            Board = BoardOf(top.Object(Board), top.Object(Rule).Number(RuleFields.ThicknessMm)),
            Ejection = EjectionOf(top.Object(Ejection)),
            Tolerances = TolerancesOf(top.Object(Tolerances)),
            Force = ForceOf(top.Object(Force)),
            FeltThicknessMm = felt.Number(FeltFields.ThicknessMm),
            FeltMaterial = felt.OptionalText(FeltFields.Material),
            Plies = felt.Whole(FeltFields.Plies),
            CommonCut = top.Flag(CommonCut),
            DieView = top.Word(View) == FromDie,
            ThirdAngle = top.Word(Projection) == ThirdAngle,
            Title = TitleOf(top.OptionalObject(DieOrderDocument.Title)),
            Wishes = WishesOf(top.OptionalObject(Order)),
            Wear = top.OptionalObject(Wear) is { } wear ? WearOf(wear) : null,
            Nap = felt.Has(FeltFields.NapToward) ? NapWord.Find(felt.Word(FeltFields.NapToward)) : null,
        };
    }

    private static DieRule RuleOf(JsonFields rule) => new()
    {
        ThicknessMm = rule.Number(RuleFields.ThicknessMm),
        HeightMm = rule.Number(RuleFields.HeightMm),
        Bevel = rule.Word(RuleFields.Bevel),
        Hardness = rule.Text(RuleFields.Hardness),
        LeastBendMm = rule.Number(RuleFields.LeastBendMm),
        NeutralShare = rule.OptionalNumber(RuleFields.NeutralShare),
        StockMm = rule.OptionalNumber(RuleFields.StockMm),
        CutLossMm = rule.Number(RuleFields.CutLossMm),
    };

    private static DieBoard BoardOf(JsonFields board, double ruleMm) => new()
    {
        Material = board.Text(BoardFields.Material),
        ThicknessMm = board.Number(BoardFields.ThicknessMm),
        LandMm = board.Number(BoardFields.LandMm),
        DensityKgPerM3 = board.Number(BoardFields.DensityKgPerM3),
        BridgeEveryMm = board.Number(BoardFields.BridgeEveryMm),
        BridgeMm = board.Number(BoardFields.BridgeMm),
        Laser = board.OptionalObject(BoardFields.Laser) is { } laser ? LaserOf(laser, ruleMm) : null,
    };

    private static BoardLaser LaserOf(JsonFields laser, double ruleMm)
    {
        double? bedLength = laser.OptionalNumber(LaserFields.BedLengthMm);
        double? bedWidth = laser.OptionalNumber(LaserFields.BedWidthMm);
        double? sheetLength = laser.OptionalNumber(LaserFields.SheetLengthMm);
        double? sheetWidth = laser.OptionalNumber(LaserFields.SheetWidthMm);
        BoardLaser read = new()
        {
            KerfMm = laser.Number(LaserFields.KerfMm),
            SlotMm = laser.OptionalNumber(LaserFields.SlotMm),
            BedLengthMm = bedLength,
            BedWidthMm = bedWidth,
            PinMm = laser.Number(LaserFields.PinMm),
            ScrewMm = laser.Number(LaserFields.ScrewMm),
            AirHoleMm = laser.Number(LaserFields.AirHoleMm),
            AirHoles = laser.Whole(LaserFields.AirHoles),
            DowelMm = laser.Number(LaserFields.DowelMm),
            LettersMm = laser.Number(LaserFields.LettersMm),
            EjectionSheet = sheetLength is { } along && sheetWidth is { } across ? (along, across) : null,
        };
        if (bedLength is null != bedWidth is null || bedLength < bedWidth)
        {
            throw laser.Fault(LaserFields.BedLengthMm, "length and width are given together, and the length is the longer side");
        }

        if (sheetLength is null != sheetWidth is null)
        {
            throw laser.Fault(LaserFields.SheetLengthMm, "length and width of the sheet are given together");
        }

        double slot = read.SlotMm ?? ruleMm;
        bool holes = new[] { read.PinMm, read.ScrewMm, read.AirHoleMm }.All(d => d == 0 || d > read.KerfMm);
        return slot > read.KerfMm && holes
            ? read
            : throw laser.Fault(
                LaserFields.KerfMm,
                FormattableString.Invariant($"{read.KerfMm} mm is no narrower than a slot of {slot} mm or than a hole"));
    }

    private static DieEjection EjectionOf(JsonFields ejection) => new()
    {
        Material = ejection.Text(EjectionFields.Material),
        RoomMm = ejection.Number(EjectionFields.RoomMm),
        ClearMm = ejection.Number(EjectionFields.ClearMm),
    };

    private static DieTolerances TolerancesOf(JsonFields item)
    {
        DieTolerances read = new()
        {
            EdgeProfileMm = item.Number(TolerancesFields.EdgeProfileMm),
            PositionMm = item.Number(TolerancesFields.PositionMm),
            PanelProfileMm = item.Number(TolerancesFields.PanelProfileMm),
            General = item.Word(TolerancesFields.General),
        };
        return read.PanelProfileMm >= read.EdgeProfileMm
            ? read : throw item.Fault(
                TolerancesFields.PanelProfileMm,
                FormattableString.Invariant(
                    $"{read.PanelProfileMm:R} is below edgeProfileMm {read.EdgeProfileMm:R}: a cut panel cannot be nearer than its die"));
    }

    private static ForceFigures ForceOf(JsonFields force) => new()
    {
        NPerMmPerPly = force.Number(ForceFields.NPerMmPerPly),
        Basis = force.Word(ForceFields.Basis),
        EjectionPercent = force.Number(ForceFields.EjectionPercent),
        ReservePercent = force.Number(ForceFields.ReservePercent),
        CloseMm = force.Number(ForceFields.CloseMm),
    };

    private static DieTitle TitleOf(JsonFields? title)
    {
        string? Of(TextField field) => title?.OptionalText(field);
        return new DieTitle
        {
            LegalOwner = Of(TitleFields.LegalOwner),
            IdentificationNumber = Of(TitleFields.IdentificationNumber),
            DateOfIssue = Of(TitleFields.DateOfIssue),
            Creator = Of(TitleFields.Creator),
            ApprovalPerson = Of(TitleFields.ApprovalPerson),
            Title = Of(TitleFields.Title),
            SupplementaryTitle = Of(TitleFields.SupplementaryTitle),
            DocumentType = Of(TitleFields.DocumentType),
            Revision = Of(TitleFields.Revision),
            Department = Of(TitleFields.Department),
            TechnicalReference = Of(TitleFields.TechnicalReference),
            Status = Of(TitleFields.Status),
            Language = Of(TitleFields.Language),
        };
    }

    private static DieWishes WishesOf(JsonFields? order)
    {
        string? Of(TextField field) => order?.OptionalText(field);
        return new DieWishes
        {
            Quantity = order?.Whole(OrderFields.Quantity) ?? 1,
            Replaces = Of(OrderFields.Replaces),
            Mounting = Of(OrderFields.Mounting),
            Registration = Of(OrderFields.Registration),
            AirHoles = Of(OrderFields.AirHoles),
            CavityMarks = Of(OrderFields.CavityMarks),
            JudgedBy = Of(OrderFields.JudgedBy),
        };
    }

    private static DieWear WearOf(JsonFields wear) => new()
    {
        Price = wear.Amount(WearFields.Price),
        Currency = wear.Currency(WearFields.Currency),
        LifeStrikes = wear.Whole(WearFields.LifeStrikes),
        ReRules = wear.Whole(WearFields.ReRules),
        ReRulePrice = wear.Has(WearFields.ReRules) ? wear.Amount(WearFields.ReRulePrice) : 0,
    };
}
