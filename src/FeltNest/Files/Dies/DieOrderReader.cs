using FeltNest.Die.Order;
using FeltNest.Files.Fields;
using FeltNest.Files.Json;
using FeltNest.Files.Rolls;
using static FeltNest.Files.Dies.DieOrderDocument;

namespace FeltNest.Files.Dies;

/// <summary>Reads what a shop wants of a die (schema feltnest/die-order/1).</summary>
public static class DieOrderReader
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
        return new DieOrder(
            top.Text(Name), RuleOf(top.Object(Rule)), BoardOf(top.Object(Board)), EjectionOf(top.Object(Ejection)),
            TolerancesOf(top.Object(Tolerances)), ForceOf(top.Object(Force)), felt.Number(FeltFields.ThicknessMm),
            felt.OptionalText(FeltFields.Material), felt.Whole(FeltFields.Plies), top.Flag(CommonCut), top.Word(View) == FromDie,
            top.Word(Projection) == ThirdAngle, TitleOf(top.OptionalObject(DieOrderDocument.Title)), WishesOf(top.OptionalObject(Order)),
            top.OptionalObject(Wear) is { } wear ? WearOf(wear) : null)
        {
            Nap = felt.Has(FeltFields.NapToward) ? NapWord.Find(felt.Word(FeltFields.NapToward)) : null,
        };
    }

    private static DieRule RuleOf(JsonFields rule) => new(
        rule.Number(RuleFields.ThicknessMm), rule.Number(RuleFields.HeightMm), rule.Word(RuleFields.Bevel),
        rule.Text(RuleFields.Hardness), rule.Number(RuleFields.LeastBendMm));

    private static DieBoard BoardOf(JsonFields board) => new(
        board.Text(BoardFields.Material), board.Number(BoardFields.ThicknessMm), board.Number(BoardFields.LandMm),
        board.Number(BoardFields.DensityKgPerM3), board.Number(BoardFields.BridgeEveryMm), board.Number(BoardFields.BridgeMm));

    private static DieEjection EjectionOf(JsonFields ejection) => new(
        ejection.Text(EjectionFields.Material), ejection.Number(EjectionFields.RoomMm), ejection.Number(EjectionFields.ClearMm));

    private static DieTolerances TolerancesOf(JsonFields item)
    {
        DieTolerances read = new(
            item.Number(TolerancesFields.EdgeProfileMm), item.Number(TolerancesFields.PanelProfileMm), item.Word(TolerancesFields.General));
        return read.PanelProfileMm >= read.EdgeProfileMm
            ? read : throw item.Fault(
                TolerancesFields.PanelProfileMm,
                FormattableString.Invariant(
                    $"{read.PanelProfileMm:R} is below edgeProfileMm {read.EdgeProfileMm:R}: a cut panel cannot be nearer than its die"));
    }

    private static ForceFigures ForceOf(JsonFields force) => new(
        force.Number(ForceFields.NPerMmPerPly), force.Word(ForceFields.Basis), force.Number(ForceFields.EjectionPercent),
        force.Number(ForceFields.ReservePercent), force.Number(ForceFields.CloseMm));

    private static DieTitle TitleOf(JsonFields? title)
    {
        string? Of(TextField field) => title?.OptionalText(field);
        return new DieTitle(
            Of(TitleFields.LegalOwner), Of(TitleFields.IdentificationNumber), Of(TitleFields.DateOfIssue), Of(TitleFields.Creator),
            Of(TitleFields.ApprovalPerson), Of(TitleFields.Title), Of(TitleFields.SupplementaryTitle), Of(TitleFields.DocumentType),
            Of(TitleFields.Revision), Of(TitleFields.Department), Of(TitleFields.TechnicalReference), Of(TitleFields.Status),
            Of(TitleFields.Language));
    }

    private static DieWishes WishesOf(JsonFields? order)
    {
        string? Of(TextField field) => order?.OptionalText(field);
        return new DieWishes(
            order?.Whole(OrderFields.Quantity) ?? 1, Of(OrderFields.Replaces), Of(OrderFields.Mounting), Of(OrderFields.Registration),
            Of(OrderFields.AirHoles), Of(OrderFields.CavityMarks), Of(OrderFields.JudgedBy));
    }

    private static DieWear WearOf(JsonFields wear) => new(
        wear.Amount(WearFields.Price), wear.Currency(WearFields.Currency), wear.Whole(WearFields.LifeStrikes),
        wear.Whole(WearFields.ReRules), wear.Has(WearFields.ReRules) ? wear.Amount(WearFields.ReRulePrice) : 0);
}
