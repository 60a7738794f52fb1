using FeltNest.Files.Fields;
using FeltNest.Files.Studies;

namespace FeltNest.Files.Families;

/// <summary>A family of balls on many widths: every field of <c>feltnest/family/1</c>.</summary>
internal static class FamilyDocument
{
    private const string Money = "in `currency`";

    private static readonly FieldSet Fields = new();

    /// <summary>The document.</summary>
    public static readonly Document Document = new()
    {
        Schema = SchemaName.Family,
        Title = "Widths to stock for a family of balls",
        Fields = Fields,
    };

    public static readonly TextField Costs = Fields.Add(new TextField("costs", "name in the costs file") { OrNull = true });
    public static readonly CurrencyField Currency = Fields.Add(new CurrencyField("currency", "of every amount"));
    public static readonly WordField Method = Fields.Add(
        new WordField("method", ["parallel rows from one set of tables", "searched by all ways"]));
    public static readonly NumberField HorizonYears = Fields.Add(
        new NumberField("horizonYears", "years over which whole dies and rules are counted") { Unit = "years" });
    public static readonly NumberField WidthYearCost = Fields.Add(
        new NumberField(
            "widthYearCost", "money a year to keep one width in stock; null where the costs file has none: then none is counted")
        {
            OrNull = true,
            Unit = Money,
        });
    public static readonly NumberField OverheadPercent = Fields.Add(
        new NumberField("overheadPercent", "overhead, on dies too; 0 where the costs file has none"));
    public static readonly ObjectField Die = Fields.Add(
        new ObjectField("die", DieFields.Set, "what is the same of every die; null where none is priced") { OrNull = true });
    public static readonly ObjectsField Balls = Fields.Add(new ObjectsField("balls", BallFields.Set, "in the order of the list"));
    public static readonly ObjectsField Widths = Fields.Add(new ObjectsField("widths", WidthFields.Set, "in the order asked"));
    public static readonly ObjectsField Pairs = Fields.Add(
        new ObjectsField("pairs", PairFields.Set, "every ball on every width: the way to cut it that costs least in a year"));
    public static readonly ObjectsField Unanswered = Fields.Add(
        new ObjectsField("unanswered", UnansweredFields.Set, "balls on widths without a layout"));
    public static readonly ObjectsField Plans = Fields.Add(
        new ObjectsField(
            "plans", PlanFields.Set,
            "with at most one width, two, and so on, then with any number; a number of widths on which not every ball can be cut has "
                + "none"));
    public static readonly ObjectsField Differences = Fields.Add(
        new ObjectsField(
            "differences", DifferenceFields.Set,
            "of a family of two: the second less the first, on every width where both can be cut; empty for another number"));

    /// <summary>Fields of <c>die</c>.</summary>
    internal static class DieFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly WholeField LifeStrikes = Set.Add(new WholeField("lifeStrikes", "strikes until its rule is dull"));
        public static readonly WholeField ReRules = Set.Add(new WholeField("reRules", "how often it gets a new rule"));
        public static readonly NumberField ReRulePrice = Set.Add(
            new NumberField("reRulePrice", "price of a new rule") { Unit = Money });
    }

    /// <summary>Fields of <c>balls[]</c>.</summary>
    internal static class BallFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly TextField Name = Set.Add(new TextField("name"));
        public static readonly TextField Part = Set.Add(new TextField("part", "name in its own file"));
        public static readonly NumberField BallsPerYear = Set.Add(
            new NumberField("ballsPerYear", "good balls made in a year") { Unit = "balls" });
        public static readonly NumberField EdgeMm = Set.Add(new NumberField("edgeMm", "trim at the lower selvedge"));
        public static readonly NumberField UpperEdgeMm = Set.Add(new NumberField("upperEdgeMm", "trim at the upper selvedge"));
        public static readonly ObjectField Lay = Set.Add(new ObjectField("lay", StudyFields.LayFields.Set));
    }

    /// <summary>Fields of <c>widths[]</c>.</summary>
    internal static class WidthFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly TextField Name = Set.Add(new TextField("name"));
        public static readonly NumberField WidthMm = Set.Add(
            new NumberField("widthMm", "width the layouts are planned on: the guaranteed one of an offer"));
        public static readonly TextField Felt = Set.Add(new TextField("felt") { OrNull = true });
    }

    /// <summary>Fields of <c>pairs[]</c>.</summary>
    internal static class PairFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly TextField Ball = Set.Add(new TextField("ball"));
        public static readonly TextField Width = Set.Add(new TextField("width"));
        public static readonly NumberField PanelsPerMetre = Set.Add(new NumberField("panelsPerMetre"));
        public static readonly NumberField SquareMetresPerThousandBalls = Set.Add(
            new NumberField("squareMetresPerThousandBalls", "felt bought for a thousand good balls") { Unit = "m2" });
        public static readonly NumberField StrikesPerThousandBalls = Set.Add(
            new NumberField("strikesPerThousandBalls") { Unit = "strikes" });
        public static readonly NumberField Cavities = Set.Add(
            new NumberField("cavities", "panels of one ply that the die cuts in a strike") { Unit = "panels" });
        public static readonly NumberField RunningPerThousandBalls = Set.Add(
            new NumberField("runningPerThousandBalls", "felt, strikes and all else but the die, for a thousand good balls")
            {
                Unit = Money,
            });
        public static readonly NumberField RunningPerYear = Set.Add(
            new NumberField("runningPerYear", "the same for the balls of a year, to the cent") { Unit = Money });
        public static readonly WholeField Dies = Set.Add(
            new WholeField("dies", "whole dies bought over `horizonYears`; null where no die is priced") { OrNull = true });
        public static readonly WholeField ReRules = Set.Add(
            new WholeField("reRules", "new rules put into them; null where no die is priced") { OrNull = true });
        public static readonly NumberField DiePrice = Set.Add(
            new NumberField("diePrice", "of one die, that of its cavities in it; null where no die is priced")
            {
                OrNull = true,
                Unit = Money,
            });
        public static readonly NumberField DiesPerYear = Set.Add(
            new NumberField("diesPerYear", "dies and rules, overhead on them, a year, to the cent") { Unit = Money });
        public static readonly NumberField CostPerYear = Set.Add(
            new NumberField("costPerYear", "both, without keeping the width in stock") { Unit = Money });
    }

    /// <summary>Fields of <c>unanswered[]</c>.</summary>
    internal static class UnansweredFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly TextField Ball = Set.Add(new TextField("ball"));
        public static readonly TextField Width = Set.Add(new TextField("width"));
        public static readonly TextField Reason = Set.Add(new TextField("reason"));
    }

    /// <summary>Fields of <c>plans[]</c>.</summary>
    internal static class PlanFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly WholeField MostWidths = Set.Add(
            new WholeField("mostWidths", "most widths that were allowed; null for any number") { OrNull = true });
        public static readonly WholeField Widths = Set.Add(new WholeField("widths", "widths that are stocked"));
        public static readonly NumberField Running = Set.Add(
            new NumberField("running", "felt, strikes and all else but dies and stock, a year") { Unit = Money });
        public static readonly NumberField Dies = Set.Add(new NumberField("dies", "dies and rules a year") { Unit = Money });
        public static readonly NumberField Stock =
            Set.Add(new NumberField("stock", "keeping the widths in stock, a year") { Unit = Money });
        public static readonly NumberField CostPerYear = Set.Add(new NumberField("costPerYear", "all three") { Unit = Money });
        public static readonly NumberField Bound = Set.Add(
            new NumberField("bound", "no plan of so many widths costs less a year") { Unit = Money });
        public static readonly FlagField Proved = Set.Add(new FlagField("proved", "the bound is the cost: no plan is better"));
        public static readonly NumberField Saves = Set.Add(
            new NumberField("saves", "a year against the plan before it; null for the first") { OrNull = true, Unit = Money });
        public static readonly ObjectsField Takes = Set.Add(
            new ObjectsField("takes", TakeFields.Set, "every ball with the width it is cut on, in the order of the list"));
    }

    /// <summary>Fields of <c>plans[].takes[]</c>.</summary>
    internal static class TakeFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly TextField Ball = Set.Add(new TextField("ball"));
        public static readonly TextField Width = Set.Add(new TextField("width"));
        public static readonly NumberField CostPerYear = Set.Add(
            new NumberField("costPerYear", "of the pair, without keeping the width in stock") { Unit = Money });
    }

    /// <summary>Fields of <c>differences[]</c>.</summary>
    internal static class DifferenceFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly TextField Width = Set.Add(new TextField("width"));
        public static readonly NumberField SquareMetresPerThousandBalls = Set.Add(
            new NumberField("squareMetresPerThousandBalls", "felt") { Unit = "m2" });
        public static readonly NumberField StrikesPerThousandBalls = Set.Add(
            new NumberField("strikesPerThousandBalls", "strikes") { Unit = "strikes" });
        public static readonly NumberField RunningPerThousandBalls = Set.Add(
            new NumberField("runningPerThousandBalls", "money but for the die") { Unit = Money });
    }
}
