using FeltNest.Die.Order;
using FeltNest.Files.Fields;
using FeltNest.Files.Rolls;

namespace FeltNest.Files.Dies;

/// <summary>What a shop wants of a die: every field of <c>feltnest/die-order/1</c>.</summary>
internal static class DieOrderDocument
{
    /// <summary>Word for drawings seen from the die's edges.</summary>
    public const string FromDie = "die";

    /// <summary>Word for the third angle of projection.</summary>
    public const string ThirdAngle = "third";

    // Longest text on a sheet, letters.
    private const int MostLetters = 60;

    private const string Block = "ISO 7200";

    private static readonly FieldSet Fields = new();

    /// <summary>The document.</summary>
    public static readonly Document Document = new()
    {
        Schema = SchemaName.DieOrder,
        Title = "What a shop wants of a die",
        Fields = Fields,
    };

    public static readonly TextField Name = Fields.Add(new TextField("name", "name or number of the die") { MostLetters = MostLetters });
    public static readonly ObjectField Rule = Fields.Add(new ObjectField("rule", RuleFields.Set, "the steel rule"));
    public static readonly ObjectField Board = Fields.Add(new ObjectField("board", BoardFields.Set, "the board that holds the rules"));
    public static readonly ObjectField Ejection = Fields.Add(
        new ObjectField("ejection", EjectionFields.Set, "what pushes felt off the rules"));
    public static readonly ObjectField Tolerances = Fields.Add(new ObjectField("tolerances", TolerancesFields.Set));
    public static readonly ObjectField Force = Fields.Add(new ObjectField("force", ForceFields.Set, "what the force is worked out from"));
    public static readonly ObjectField Felt = Fields.Add(new ObjectField("felt", FeltFields.Set));
    public static readonly FlagField CommonCut = Fields.Add(
        new FlagField(
            "commonCut",
            "whether neighbours may share a cut: where two edges are one line it is drawn and counted once; rules may then stand nearer "
                + "than their bodies have room")
        {
            Default = false,
        });
    public static readonly WordField View = Fields.Add(
        new WordField("view", ["panel", FromDie], "drawings and DXF seen from the nap side, or mirrored from the die's edges")
        {
            Default = "panel",
        });
    public static readonly WordField Projection = Fields.Add(
        new WordField("projection", ["first", ThirdAngle], "symbol of the angle of projection") { Default = "first" });
    public static readonly ObjectField Title = Fields.Add(
        new ObjectField("title", TitleFields.Set, "title block of ISO 7200; fields left out are left blank") { Optional = true });
    public static readonly ObjectField Order = Fields.Add(
        new ObjectField("order", OrderFields.Set, "the rest of the order; what is left out is a blank on the sheet") { Optional = true });
    public static readonly ObjectField Wear = Fields.Add(
        new ObjectField("wear", WearFields.Set, "price and life, as a cost file's `die`") { Optional = true });

    // Most letters of a field of the title block; as long as any text where the standard sets none.
    private static int Iso(string field) => DieTitle.Limits.First(limit => limit.Field == field).Most ?? MostLetters;

    /// <summary>Fields of <c>rule</c>.</summary>
    internal static class RuleFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField ThicknessMm = Set.Add(new NumberField("thicknessMm", 0.3, 8, "body; 0.71 is 2 point"));
        public static readonly NumberField HeightMm = Set.Add(new NumberField("heightMm", 8, 120, "foot to edge"));
        public static readonly EnumField<RuleBevel> Bevel = Set.Add(
            new EnumField<RuleBevel>("bevel", "where the edge stands over the body; side bevels name the side they face"));
        public static readonly TextField Hardness = Set.Add(
            new TextField("hardness", "in the toolmaker's words") { MostLetters = MostLetters, Default = "die maker's choice" });
        public static readonly NumberField LeastBendMm = Set.Add(
            new NumberField(
                "leastBendMm", 0.1, 50, "least inside radius of a bend; 1.5 for 2 point, 2.5 for 3 point are common practice, no source"));
        public static readonly NumberField NeutralShare = Set.Add(
            new NumberField(
                "neutralShare", 0.2, 0.6,
                "where a bend keeps its length, share of the thickness from its inner face; left out, 0.33 below an inside radius of twice "
                    + "the thickness and 0.5 from there on")
            {
                Optional = true,
            });
        public static readonly NumberField StockMm = Set.Add(
            new NumberField("stockMm", 100, 100_000, "length of one piece of stock; left out, no stock list is made") { Optional = true });
        public static readonly NumberField CutLossMm = Set.Add(new NumberField("cutLossMm", 0, 20, "lost at each cut") { Default = 0 });
    }

    /// <summary>Fields of <c>board</c>.</summary>
    internal static class BoardFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly TextField Material = Set.Add(new TextField("material") { MostLetters = MostLetters });
        public static readonly NumberField ThicknessMm = Set.Add(new NumberField("thicknessMm", 3, 60));
        public static readonly NumberField LandMm = Set.Add(new NumberField("landMm", 3, 200, "board left outside the outermost edge"));
        public static readonly NumberField DensityKgPerM3 = Set.Add(
            new NumberField("densityKgPerM3", 100, 9000, "for the mass of the die"));
        public static readonly NumberField BridgeEveryMm = Set.Add(
            new NumberField("bridgeEveryMm", 20, 1000, "length of edge to one bridge; never fewer than 2 a cavity"));
        public static readonly NumberField BridgeMm = Set.Add(new NumberField("bridgeMm", 1, 15, "length of a bridge"));
        public static readonly ObjectField Laser = Set.Add(
            new ObjectField("laser", LaserFields.Set, "how the board is cut on a laser; left out, no board for it is made")
            {
                Optional = true,
            });
    }

    /// <summary>Fields of <c>board.laser</c>.</summary>
    internal static class LaserFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField KerfMm = Set.Add(
            new NumberField("kerfMm", 0, 2, "width that the beam burns away in this board's material: cut a test slot and measure it"));
        public static readonly NumberField SlotMm = Set.Add(
            new NumberField("slotMm", 0.2, 10, "width of a slot when cut; left out, the thickness of the rule; wider than the kerf")
            {
                Optional = true,
            });
        public static readonly NumberField BedLengthMm = Set.Add(
            new NumberField("bedLengthMm", 100, 20_000, "longer side of the bed; longer boards are split") { Optional = true });
        public static readonly NumberField BedWidthMm = Set.Add(
            new NumberField("bedWidthMm", 100, 20_000, "shorter side of the bed; with `bedLengthMm`") { Optional = true });
        public static readonly NumberField PinMm = Set.Add(
            new NumberField("pinMm", 0, 50, "diameter of two register pins on the board's centre line; 0 for none") { Default = 0 });
        public static readonly NumberField ScrewMm = Set.Add(
            new NumberField("screwMm", 0, 20, "diameter of screws round the rim; 0 for none") { Default = 0 });
        public static readonly NumberField AirHoleMm =
            Set.Add(new NumberField("airHoleMm", 0.5, 50, "diameter of air holes") { Default = 4 });
        public static readonly WholeField AirHoles = Set.Add(new WholeField("airHoles", 0, 20, "air holes in each cavity") { Default = 0 });
        public static readonly NumberField DowelMm = Set.Add(
            new NumberField("dowelMm", 2, 20, "diameter of dowels across a split") { Default = 6 });
        public static readonly NumberField LettersMm = Set.Add(
            new NumberField("lettersMm", 1.5, 20, "height of engraved letters") { Default = 4 });
        public static readonly NumberField SheetLengthMm = Set.Add(
            new NumberField("ejectionSheetLengthMm", 100, 10_000, "sheet that the ejection is cut from; left out, it is not nested")
            {
                Optional = true,
            });
        public static readonly NumberField SheetWidthMm = Set.Add(
            new NumberField("ejectionSheetWidthMm", 100, 10_000, "across; with `ejectionSheetLengthMm`") { Optional = true });
    }

    /// <summary>Fields of <c>ejection</c>.</summary>
    internal static class EjectionFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly TextField Material = Set.Add(new TextField("material") { MostLetters = MostLetters });
        public static readonly NumberField RoomMm = Set.Add(
            new NumberField("roomMm", 0, 20, "width it needs between two rules; 2.4 is a trade figure, unverified"));
        public static readonly NumberField ClearMm = Set.Add(
            new NumberField(
                "clearMm", 0, 5, "how far its pieces stand off the faces of the rules, part of that room; common practice, no source")
            {
                Default = 0.5,
            });
    }

    /// <summary>Fields of <c>tolerances</c>.</summary>
    internal static class TolerancesFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField EdgeProfileMm = Set.Add(
            new NumberField("edgeProfileMm", 0.02, 5, "profile of the cutting edge: width of the zone"));
        public static readonly NumberField PositionMm = Set.Add(
            new NumberField(
                "positionMm", 0, 5, "position of each cavity: diameter of the circle that its middle lies in; a trade table has 0.015 in")
            {
                Default = 0.4,
            });

        public static readonly NumberField PanelProfileMm = Set.Add(
            new NumberField("panelProfileMm", 0.05, 10, "profile of a cut panel: width of the zone; at least that of the edge"));
        public static readonly WordField General = Set.Add(
            new WordField("general", ["m", "f"], "class of ISO 2768-1 for board and plate") { Default = "m" });
    }

    /// <summary>Fields of <c>force</c>.</summary>
    internal static class ForceFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField NPerMmPerPly = Set.Add(new NumberField("nPerMmPerPly", 0.1, 1000, "N per mm of edge and ply"));
        public static readonly EnumField<ForceBasis> Basis = Set.Add(
            new EnumField<ForceBasis>("basis", "a placeholder passes no press and does not choose the cavities"));
        public static readonly NumberField EjectionPercent = Set.Add(
            new NumberField("ejectionPercent", 0, 100, "added for ejection") { Default = 15 });
        public static readonly NumberField ReservePercent = Set.Add(
            new NumberField("reservePercent", 0, 200, "added for an edge that dulls") { Default = 25 });
        public static readonly NumberField CloseMm = Set.Add(
            new NumberField("closeMm", 0, 50, "rules no further apart than this add half the shorter length") { Default = 6.35 });
    }

    /// <summary>Fields of <c>felt</c>.</summary>
    internal static class FeltFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField ThicknessMm = Set.Add(new NumberField(ShopRanges.FeltThickness, "one ply as cut"));
        public static readonly TextField Material =
            Set.Add(new TextField("material", "in words") { MostLetters = MostLetters, Optional = true });
        public static readonly WholeField Plies = Set.Add(new WholeField(ShopRanges.Plies, "plies under one strike") { Default = 1 });
        public static readonly WordField NapToward = Set.Add(
            new WordField(
                "napToward", NapWord.Words,
                "which way the nap lies under the die, +x is the feed; left out, sheets say that it is not stated")
            {
                Optional = true,
            });
    }

    /// <summary>Fields of <c>title</c>.</summary>
    internal static class TitleFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly TextField LegalOwner =
            Set.Add(new TextField("legalOwner") { MostLetters = Iso("legalOwner"), Because = Block, Optional = true });
        public static readonly TextField IdentificationNumber = Set.Add(
            new TextField("identificationNumber") { MostLetters = Iso("identificationNumber"), Because = Block, Optional = true });
        public static readonly TextField DateOfIssue = Set.Add(
            new TextField("dateOfIssue", "as it is to stand there; no date is written unless it is given")
            {
                MostLetters = Iso("dateOfIssue"),
                Because = Block,
                Optional = true,
            });
        public static readonly TextField Creator =
            Set.Add(new TextField("creator") { MostLetters = Iso("creator"), Because = Block, Optional = true });
        public static readonly TextField ApprovalPerson =
            Set.Add(new TextField("approvalPerson") { MostLetters = Iso("approvalPerson"), Because = Block, Optional = true });
        public static readonly TextField Title =
            Set.Add(new TextField("title") { MostLetters = Iso("title"), Because = Block, Optional = true });
        public static readonly TextField SupplementaryTitle = Set.Add(
            new TextField("supplementaryTitle", "left out, each sheet says what it shows")
            {
                MostLetters = Iso("supplementaryTitle"),
                Because = Block,
                Optional = true,
            });
        public static readonly TextField DocumentType =
            Set.Add(new TextField("documentType") { MostLetters = Iso("documentType"), Because = Block, Optional = true });
        public static readonly TextField Revision = Set.Add(
            new TextField("revision", "revision of the panel and die") { MostLetters = Iso("revision"), Because = Block, Optional = true });
        public static readonly TextField Department =
            Set.Add(new TextField("department") { MostLetters = Iso("department"), Because = Block, Optional = true });
        public static readonly TextField TechnicalReference = Set.Add(
            new TextField("technicalReference") { MostLetters = Iso("technicalReference"), Because = Block, Optional = true });
        public static readonly TextField Status =
            Set.Add(new TextField("status") { MostLetters = Iso("status"), Because = Block, Optional = true });
        public static readonly TextField Language =
            Set.Add(new TextField("language") { MostLetters = Iso("language"), Because = Block, Optional = true });
    }

    /// <summary>Fields of <c>order</c>.</summary>
    internal static class OrderFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly WholeField Quantity = Set.Add(new WholeField("quantity", 1, 1000, "dies of this kind") { Default = 1 });
        public static readonly TextField Replaces = Set.Add(
            new TextField("replaces", "die that this one replaces") { MostLetters = MostLetters, Optional = true });
        public static readonly TextField Mounting = Set.Add(
            new TextField("mounting", "how it is held in the press") { MostLetters = MostLetters, Optional = true });
        public static readonly TextField Registration = Set.Add(
            new TextField("registration", "how it finds its place") { MostLetters = MostLetters, Optional = true });
        public static readonly TextField AirHoles = Set.Add(new TextField("airHoles") { MostLetters = MostLetters, Optional = true });
        public static readonly TextField CavityMarks = Set.Add(new TextField("cavityMarks") { MostLetters = MostLetters, Optional = true });
        public static readonly TextField JudgedBy = Set.Add(
            new TextField("judgedBy", "how the first blank is judged") { MostLetters = MostLetters, Optional = true });
    }
}
