using FeltNest.Files.Fields;
using FeltNest.Files.Studies;

namespace FeltNest.Files.Compare;

/// <summary>Widths or offers side by side: every field of <c>feltnest/compare/1</c>.</summary>
internal static class CompareDocument
{
    private static readonly FieldSet Fields = new();

    /// <summary>The document.</summary>
    public static readonly Document Document = new()
    {
        Schema = SchemaName.Compare,
        Title = "Widths or offers side by side",
        Fields = Fields,
    };

    public static readonly TextField Part = Fields.Add(new TextField("part"));
    public static readonly TextField Costs = Fields.Add(new TextField("costs", "name in the costs file") { OrNull = true });
    public static readonly ObjectField DieLife = Fields.Add(
        new ObjectField("dieLife", DieLifeFields.Set, "life of the die that is reckoned with; null without one") { OrNull = true });
    public static readonly NumberField Balls = Fields.Add(
        new NumberField("balls", "good balls that the felt is bought for; null where that is not known") { OrNull = true, Unit = "balls" });
    public static readonly WordField Method = Fields.Add(
        new WordField("method", ["parallel rows from one set of tables", "searched by all ways"]));
    public static readonly ObjectField Lay = Fields.Add(new ObjectField("lay", StudyFields.LayFields.Set));
    public static readonly FlagField CutShort = Fields.Add(new FlagField("cutShort"));
    public static readonly TextField Best = Fields.Add(new TextField("best", "name of the row of rank 1"));
    public static readonly ObjectsField Rows = Fields.Add(new ObjectsField("rows", RowFields.Set, "in the order asked"));
    public static readonly ObjectsField Unanswered = Fields.Add(
        new ObjectsField("unanswered", UnansweredFields.Set, "widths or offers without a layout"));
    public static readonly TextField Die = Fields.Add(
        new TextField("die", "`kept`, or the row whose die the drop widths are of; null where that has several bands") { OrNull = true });
    public static readonly ObjectsField DropWidths = Fields.Add(
        new ObjectsField("dropWidths", CompareFindingFields.DropWidthFields.Set, "one die kept: its pitch, tilt and phase fixed"));
    public static readonly ObjectsField Crossovers = Fields.Add(
        new ObjectsField(
            "crossovers", CompareFindingFields.CrossoverFields.Set,
            "parallel rows, a die designed anew at each width; empty but for a width range"));
    public static readonly ObjectsField BreakEvens =
        Fields.Add(new ObjectsField("breakEvens", CompareFindingFields.BreakEvenFields.Set, "every two offers"));
    public static readonly ObjectsField Values = Fields.Add(
        new ObjectsField("values", CompareFindingFields.ValueFields.Set, "the best row laid again with a millimetre more or less"));
    public static readonly ObjectsField Flips = Fields.Add(
        new ObjectsField(
            "flips", CompareFindingFields.FlipFields.Set,
            "single figures of the costs that would make another row the cheapest, the layouts as they are: ends up to 2 m, shares up to "
                + "20 %, money up to ten times; empty without costs and for a width range"));
    public static readonly ObjectsField Swings = Fields.Add(
        new ObjectsField(
            "swings", CompareFindingFields.SwingFields.Set, "figures with a stated range: what they do to the best row, widest first"));
    public static readonly ObjectField Outlook = Fields.Add(
        new ObjectField(
            "outlook", CompareFindingFields.OutlookFields.Set,
            "all figures that have a range drawn together, the layouts as they are taken; null where none has one, for a width range or "
                + "without "
                + "a price")
        {
            OrNull = true,
        });
    public static readonly ObjectField YearTerms = Fields.Add(
        new ObjectField(
            "yearTerms", CompareFindingFields.YearTermFields.Set,
            "what savings are reckoned with; null where the balls of a year are not known")
        {
            OrNull = true,
        });
    public static readonly ObjectsField Years = Fields.Add(
        new ObjectsField(
            "years", CompareFindingFields.YearFields.Set,
            "what money could be spent on against what is cut today (the first row, with the kept die), the greatest present value "
                + "first, without "
                + "interest the greatest saving; empty where the balls of a year or a price are not known"));
    public static readonly ObjectsField Gang = Fields.Add(
        new ObjectsField(
            "gang", CompareFindingFields.GangFields.Set, "dies and plies weighed on the best row; empty where the costs file names none"));
    public static readonly ObjectsField Sweep = Fields.Add(
        new ObjectsField(
            "sweep", CompareFindingFields.SweepFields.Set, "the curve of the chart: parallel rows over the width, edge as asked"));

    /// <summary>Fields of <c>dieLife</c>.</summary>
    internal static class DieLifeFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly WholeField Strikes = Set.Add(new WholeField("strikes", "strikes until its rule is dull"));
        public static readonly WordField Basis = Set.Add(
            new WordField(
                "basis", ["costs", "readings"], "of the costs file, or of the die's readings, which go first"));
        public static readonly TextField Die = Set.Add(
            new TextField("die", "die whose readings they are; null where the costs file holds") { OrNull = true });
    }

    /// <summary>Fields of <c>rows[]</c>.</summary>
    internal static class RowFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly TextField Name = Set.Add(new TextField("name"));
        public static readonly WholeField Rank = Set.Add(
            new WholeField("rank", "1 the best: by cost where every row has one, else by square metres"));
        public static readonly TextField Felt = Set.Add(new TextField("felt") { OrNull = true });
        public static readonly TextField Lot = Set.Add(new TextField("lot") { OrNull = true });
        public static readonly NumberField WidthMm = Set.Add(
            new NumberField("widthMm", "width the layout is for: the guaranteed one of an offer"));
        public static readonly NumberField EdgeMm = Set.Add(new NumberField("edgeMm", "trim at the lower selvedge"));
        public static readonly NumberField UpperEdgeMm = Set.Add(new NumberField("upperEdgeMm", "trim at the upper selvedge"));
        public static readonly NumberField PanelsPerMetre = Set.Add(new NumberField("panelsPerMetre"));
        public static readonly NumberField BallsPerMetre = Set.Add(new NumberField("ballsPerMetre"));
        public static readonly NumberField WastePercent = Set.Add(
            new NumberField("wastePercent", "full roll width, one repeat, before roll ends and faults"));
        public static readonly ObjectField PerThousandBalls = Set.Add(
            new ObjectField(
                "perThousandBalls", PerThousandBallsFields.Set, "felt bought per thousand good balls, all losses that were given in it"));
        public static readonly TextField MassBasis = Set.Add(
            new TextField("massBasis", "whether kilograms are of bare or coated felt; null where the offer does not say")
            {
                OrNull = true,
            });
        public static readonly ObjectField Account = Set.Add(
            new ObjectField("account", AccountFields.Set, "where the felt bought goes, % of the roll; adds to 100"));
        public static readonly ObjectField Roll = Set.Add(new ObjectField("roll", RowRollFields.Set));
        public static readonly NumberField CostPerThousandBalls = Set.Add(
            new NumberField("costPerThousandBalls", "null where no price is known") { OrNull = true });
        public static readonly CurrencyField Currency = Set.Add(new CurrencyField("currency") { OrNull = true });
        public static readonly NumberField DiePrice = Set.Add(
            new NumberField(
                "diePrice", "price of the die that the cost sheet counts, that of its cavities in it; null where no die is known")
            {
                OrNull = true,
            });
        public static readonly ObjectsField CostSheet = Set.Add(
            new ObjectsField("costSheet", CostSheetFields.Set, "empty where no price is known"));
        public static readonly ObjectField Purchase = Set.Add(
            new ObjectField(
                "purchase", CompareWayFields.PurchaseFields.Set,
                "what is bought for all balls; null where their number or a price is not known")
            {
                OrNull = true,
            });
        public static readonly ObjectField LeastFelt = Set.Add(
            new ObjectField(
                "leastFelt", CompareWayFields.WayFields.Set,
                "the layout with least felt, cut with as many repeats a strike as are allowed"));
        public static readonly ObjectsField Front = Set.Add(
            new ObjectsField(
                "front", CompareWayFields.WayFields.Set,
                "ways to cut this felt within 2 % of the least, of which none is better in felt, strikes and cavities together, least felt "
                    + "first; the cheapest is what the row is of"));
        public static readonly ObjectField Nominal = Set.Add(
            new ObjectField("nominal", NominalFields.Set, "the same offer at its nominal width; null where that is the planned one")
            {
                OrNull = true,
            });
        public static readonly ObjectField KeptDie = Set.Add(
            new ObjectField("keptDie", KeptDieFields.Set, "the kept die on this width; null where no die is kept") { OrNull = true });
        public static readonly ObjectField FurtherDies = Set.Add(
            new ObjectField("furtherDies", FurtherDiesFields.Set, "against the best with one die; null where one die cuts the layout")
            {
                OrNull = true,
            });
    }

    /// <summary>Fields of <c>rows[].perThousandBalls</c>.</summary>
    internal static class PerThousandBallsFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField Metres = Set.Add(new NumberField("metres"));
        public static readonly NumberField SquareMetres = Set.Add(new NumberField("squareMetres"));
        public static readonly NumberField Kilograms = Set.Add(new NumberField("kilograms") { OrNull = true });
        public static readonly NumberField NetSquareMetres = Set.Add(
            new NumberField("netSquareMetres", "in the panels of a thousand balls"));
        public static readonly NumberField Strikes = Set.Add(new NumberField("strikes", "strikes"));
    }

    /// <summary>Fields of <c>rows[].account</c>.</summary>
    internal static class AccountFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField GoodPanelsPercent = Set.Add(new NumberField("goodPanelsPercent", "panels that become balls"));
        public static readonly NumberField BetweenPanelsPercent = Set.Add(new NumberField("betweenPanelsPercent", "web between panels"));
        public static readonly NumberField UnusedEdgePercent = Set.Add(
            new NumberField("unusedEdgePercent", "usable width that no row reaches"));
        public static readonly NumberField EdgeTrimPercent = Set.Add(
            new NumberField("edgeTrimPercent", "both trims, over the whole length"));
        public static readonly NumberField RollEndsPercent = Set.Add(new NumberField("rollEndsPercent", "both ends, usable width"));
        public static readonly NumberField RemnantPercent = Set.Add(
            new NumberField("remnantPercent", "length too short for one more strike"));
        public static readonly NumberField FaultsPercent = Set.Add(new NumberField("faultsPercent", "panels lost to faults"));
        public static readonly NumberField RejectsPercent = Set.Add(new NumberField("rejectsPercent", "panels rejected after cutting"));
        public static readonly NumberField UnpairedPercent = Set.Add(new NumberField("unpairedPercent", "good panels without a partner"));
    }

    /// <summary>Fields of <c>rows[].roll</c>.</summary>
    internal static class RowRollFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField LengthM = Set.Add(
            new NumberField("lengthM", "null where none was given: then no ends and no remnant") { OrNull = true });
        public static readonly NumberField Repeats = Set.Add(new NumberField("repeats") { OrNull = true });
        public static readonly NumberField RemnantMm = Set.Add(new NumberField("remnantMm"));
        public static readonly NumberField Balls = Set.Add(new NumberField("balls", "good balls of one roll") { OrNull = true });
        public static readonly NumberField MinimumThousandBalls = Set.Add(
            new NumberField("minimumThousandBalls", "thousand balls of the least length sold") { OrNull = true });
    }

    /// <summary>Fields of <c>rows[].costSheet[]</c>.</summary>
    internal static class CostSheetFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly WholeField Line = Set.Add(new WholeField("line", "1 to 19; 20 to 25 are the parts of line 10"));
        public static readonly TextField Name = Set.Add(new TextField("name"));
        public static readonly NumberField Quantity = Set.Add(new NumberField("quantity") { OrNull = true });
        public static readonly TextField Unit = Set.Add(new TextField("unit") { OrBlank = true });
        public static readonly NumberField Amount = Set.Add(
            new NumberField("amount", "null where the line has none or its figure was not given") { OrNull = true });
    }

    /// <summary>Fields of <c>rows[].nominal</c>.</summary>
    internal static class NominalFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField WidthMm = Set.Add(new NumberField("widthMm"));
        public static readonly NumberField PanelsPerMetre = Set.Add(new NumberField("panelsPerMetre"));
        public static readonly NumberField SquareMetresPerThousandBalls = Set.Add(new NumberField("squareMetresPerThousandBalls"));
        public static readonly NumberField CostPerThousandBalls = Set.Add(new NumberField("costPerThousandBalls") { OrNull = true });
    }

    /// <summary>Fields of <c>rows[].keptDie</c>.</summary>
    internal static class KeptDieFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly WholeField Rows = Set.Add(new WholeField("rows"));
        public static readonly NumberField PanelsPerMetre = Set.Add(new NumberField("panelsPerMetre"));
        public static readonly NumberField SquareMetresPerThousandBalls = Set.Add(new NumberField("squareMetresPerThousandBalls"));
        public static readonly NumberField CostPerThousandBalls = Set.Add(new NumberField("costPerThousandBalls") { OrNull = true });
        public static readonly NumberField NewDiePaysAfterThousandBalls = Set.Add(
            new NumberField("newDiePaysAfterThousandBalls", "price of the die over what the new lay saves") { OrNull = true });
    }

    /// <summary>Fields of <c>rows[].furtherDies</c>.</summary>
    internal static class FurtherDiesFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly WholeField Dies = Set.Add(new WholeField("dies"));
        public static readonly NumberField OneDiePanelsPerMetre = Set.Add(new NumberField("oneDiePanelsPerMetre"));
        public static readonly NumberField OneDieCostPerThousandBalls = Set.Add(
            new NumberField("oneDieCostPerThousandBalls") { OrNull = true });
        public static readonly NumberField PayAfterThousandBalls = Set.Add(
            new NumberField(
                "payAfterThousandBalls",
                "thousand balls after which the further dies have saved their price; null where it is not known or nothing is saved")
            {
                OrNull = true,
            });
    }

    /// <summary>Fields of <c>unanswered[]</c>.</summary>
    internal static class UnansweredFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly TextField Name = Set.Add(new TextField("name"));
        public static readonly TextField Reason = Set.Add(new TextField("reason"));
    }
}
