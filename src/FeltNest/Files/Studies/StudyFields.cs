using FeltNest.Files.Fields;
using FeltNest.Layout;

namespace FeltNest.Files.Studies;

/// <summary>Fields that studies and comparisons say alike.</summary>
internal static class StudyFields
{
    /// <summary>Fields of the rules of laying.</summary>
    internal static class LayFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField GapMm = Set.Add(new NumberField("gapMm", "least distance between any two cut edges"));
        public static readonly EnumField<RowRule> Rows = Set.Add(new EnumField<RowRule>("rows", "which rows may be mixed"));
        public static readonly NumberField WarpAngle = Set.Add(
            new NumberField("warpAngle", "angle of the panels to the warp") { Unit = "degrees", OrWord = "free" });
        public static readonly NumberField WarpToleranceDeg = Set.Add(
            new NumberField(ShopRanges.WarpTolerance, "how far a panel may lie off that angle"));
        public static readonly FlagField OneWay = Set.Add(new FlagField("oneWay", "no half-turns"));
        public static readonly WholeField Effort = Set.Add(new WholeField("effort", "counted work of the search"));
        public static readonly WholeField Seed = Set.Add(new WholeField("seed", "seed of the random part of the search"));
    }

    /// <summary>Fields of the roll with the rules of laying.</summary>
    internal static class RollFields
    {
        internal static readonly FieldSet Set = new(LayFields.Set);

        public static readonly NumberField WidthMm = Set.Add(new NumberField("widthMm", "width of the roll"));
        public static readonly NumberField EdgeMm = Set.Add(new NumberField("edgeMm", "edge trim at the lower selvedge"));
        public static readonly NumberField UpperEdgeMm = Set.Add(new NumberField("upperEdgeMm", "edge trim at the upper selvedge"));
    }

    /// <summary>Fields of the limits of the felt.</summary>
    internal static class LimitsFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField MaxStretchPercent = Set.Add(new NumberField("maxStretchPercent", "of the ball file"));
        public static readonly NumberField MaxEdgeCompressionPercent = Set.Add(
            new NumberField("maxEdgeCompressionPercent", "of the ball file"));
    }

    /// <summary>Fields of what a layout yields.</summary>
    internal static class YieldFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField PanelsPerMetre = Set.Add(new NumberField("panelsPerMetre", "running metre of roll"));
        public static readonly NumberField BallsPerMetre = Set.Add(new NumberField("ballsPerMetre", "running metre of roll"));
        public static readonly NumberField WastePercent = Set.Add(new NumberField("wastePercent", "full roll width, one repeat"));
        public static readonly ObjectField PerThousandBalls = Set.Add(
            new ObjectField("perThousandBalls", PerThousandBallsFields.Set, "felt"));
    }

    /// <summary>Fields of the felt for a thousand balls.</summary>
    internal static class PerThousandBallsFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField Metres = Set.Add(new NumberField("metres", "running metres"));
        public static readonly NumberField SquareMetres = Set.Add(new NumberField("squareMetres", "of full roll width"));
        public static readonly NumberField Kilograms = Set.Add(
            new NumberField("kilograms", "null where the mass per area is not known") { OrNull = true });
    }
}
