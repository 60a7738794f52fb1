using FeltNest.Files.Fields;

namespace FeltNest.Files.Layouts;

/// <summary>Fields of what a layout says of its search.</summary>
internal static class LayoutSearchFields
{
    /// <summary>Fields of <c>search</c>.</summary>
    internal static class SearchFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly WholeField Seed = Set.Add(new WholeField("seed"));
        public static readonly WholeField Effort = Set.Add(new WholeField("effort"));
        public static readonly FlagField CutShort = Set.Add(new FlagField("cutShort"));
        public static readonly TextField Method = Set.Add(new TextField("method"));
        public static readonly ObjectField ProvedOnGrid = Set.Add(
            new ObjectField("provedOnGrid", ProvedOnGridFields.Set) { Optional = true, OrNull = true });
        public static readonly NumberField PlaneUtilisationPercent = Set.Add(
            new NumberField("planeUtilisationPercent", "best without edges at the same gap: a reference, not a bound")
            {
                Optional = true,
                OrNull = true,
            });
        public static readonly NumberField LeastGapMm = Set.Add(
            new NumberField("leastGapMm", "least distance the check found") { Optional = true, OrNull = true });
        public static readonly NumberField FreerRowsPanelsPerMetre = Set.Add(
            new NumberField("freerRowsPanelsPerMetre", "what rows of any tilt would give; null when not asked or not better")
            {
                Optional = true,
                OrNull = true,
            });
        public static readonly NumberField UpperBoundPercent = Set.Add(
            new NumberField("upperBoundPercent", 0, 100, "no layout uses more of the full roll width, per cent; null where not stated")
            {
                Optional = true,
                OrNull = true,
            });
        public static readonly ObjectField Loss = Set.Add(
            new ObjectField("loss", LossFields.Set, "where the waste comes from, per cent of the full roll width") { Optional = true });
        public static readonly ObjectsField Methods = Set.Add(
            new ObjectsField("methods", MethodFields.Set, "what each way of searching reached, best first") { Optional = true });
        public static readonly ObjectsField RuleCosts = Set.Add(
            new ObjectsField("ruleCosts", RuleCostFields.Set, "what the roll would give without a rule") { Optional = true });
    }

    /// <summary>Fields of <c>search.provedOnGrid</c>.</summary>
    internal static class ProvedOnGridFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField AngleStepDeg = Set.Add(new NumberField("angleStepDeg"));
        public static readonly NumberField PitchStepMm = Set.Add(new NumberField("pitchStepMm"));
    }

    /// <summary>Fields of <c>search.loss</c>.</summary>
    internal static class LossFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField ShapePercent = Set.Add(
            new NumberField("shapePercent", "what the best lattice of the plane leaves without a gap"));
        public static readonly NumberField GapPercent = Set.Add(new NumberField("gapPercent", "what the gap takes in the plane"));
        public static readonly NumberField TrimPercent = Set.Add(
            new NumberField("trimPercent", "felt in trims and stripes that the lattice would have used"));
        public static readonly NumberField EdgesPercent = Set.Add(
            new NumberField("edgesPercent", "half of row height - step on each side, the step with its gap"));
        public static readonly NumberField RowFitPercent = Set.Add(new NumberField("rowFitPercent", "the rest"));
    }

    /// <summary>Fields of <c>search.methods[]</c>.</summary>
    internal static class MethodFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly TextField Method = Set.Add(new TextField("method", "in words"));
        public static readonly NumberField PanelsPerMetre = Set.Add(
            new NumberField("panelsPerMetre", 0, NumberField.NoMost, "panels per metre"));
        public static readonly WholeField Bands = Set.Add(
            new WholeField("bands", 1, NumberField.NoMost, "bands with a repeat of their own"));
    }

    /// <summary>Fields of <c>search.ruleCosts[]</c>.</summary>
    internal static class RuleCostFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly TextField Rule = Set.Add(new TextField("rule", "the rule"));
        public static readonly NumberField PanelsPerMetreWithout = Set.Add(
            new NumberField("panelsPerMetreWithout", 0, NumberField.NoMost, "panels per metre without it"));
        public static readonly TextField Words = Set.Add(new TextField("words", "what this rests on"));
    }
}
