using FeltNest.Files.Fields;

namespace FeltNest.Files.Panels;

/// <summary>Flat outline laid on a ball: every field of <c>feltnest/wrap/1</c>.</summary>
internal static class WrapDocument
{
    private static readonly FieldSet Fields = new();

    /// <summary>The document.</summary>
    public static readonly Document Document = new() { Schema = SchemaName.Wrap, Title = "Flat outline laid on a ball", Fields = Fields };

    public static readonly TextField Ball = Fields.Add(new TextField("ball", "name of the ball"));
    public static readonly TextField Outline = Fields.Add(new TextField("outline", "name of the outline"));
    public static readonly NumberField RadiusMm = Fields.Add(new NumberField("radiusMm", "of the fitted sphere"));
    public static readonly NumberField WarpAngleDeg = Fields.Add(
        new NumberField("warpAngleDeg", "from the warp to +u of the outline") { OrWord = "any" });
    public static readonly NumberField TurnedDeg = Fields.Add(
        new NumberField("turnedDeg", "how far the outline was turned so that its long axis lies along u; 0 where it was drawn so"));
    public static readonly ObjectField Smoothing = Fields.Add(
        new ObjectField("smoothing", SmoothingFields.Set, "by how much the edge was smoothed; null where it was laid as drawn")
        {
            OrNull = true,
        });
    public static readonly ObjectField EdgeFree = Fields.Add(
        new ObjectField("edgeFree", EdgeFreeFields.Set, "as cut, at fitting, with nothing pulling the edge"));
    public static readonly ObjectField AfterCure = Fields.Add(
        new ObjectField("afterCure", EdgeFreeFields.Set, "after the felt has shrunk in the cure, with nothing pulling the edge"));
    public static readonly ObjectField EdgeHeld = Fields.Add(
        new ObjectField(
            "edgeHeld", EdgeHeldFields.Set,
            "after the cure, edge drawn to the seam with the gap for the adhesive closed; null where it cannot be")
        {
            OrNull = true,
        });
    public static readonly TextField WhyNotHeld = Fields.Add(
        new TextField("whyNotHeld", "why the edge cannot be drawn to the seam") { OrNull = true });

    /// <summary>Fields of <c>smoothing</c>.</summary>
    internal static class SmoothingFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly WholeField Places = Set.Add(new WholeField("places", "of the outline, that the smooth edge goes through"));
        public static readonly NumberField RmsMm = Set.Add(
            new NumberField("rmsMm", "how far the places lie off the smooth edge, root mean square"));
        public static readonly NumberField GreatestMm = Set.Add(new NumberField("greatestMm", "how far at most"));
        public static readonly NumberField OffDrawnMm = Set.Add(
            new NumberField("offDrawnMm", "how far at most the smooth edge runs off the outline as drawn between its places"));
        public static readonly WordField KeptBy = Set.Add(new WordField(
            "keptBy", ["nothing", "half-turn", "mirrors"], "what keeps the smooth edge; the outline is off it by its own noise alone"));
    }

    /// <summary>Fields of <c>edgeFree</c> and <c>afterCure</c>.</summary>
    internal static class EdgeFreeFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField EnergyNmm = Set.Add(new NumberField("energyNmm"));
        public static readonly NumberField LargestGapMm = Set.Add(
            new NumberField("largestGapMm", "greatest gap two copies leave; null where they do not face each other") { OrNull = true });
        public static readonly NumberField LargestOverlapMm = Set.Add(
            new NumberField("largestOverlapMm", "greatest overlap; null likewise") { OrNull = true });
        public static readonly NumberField TurnDeg = Set.Add(
            new NumberField("turnDeg", "turn of both copies about their poles for the least mean square gap; the gaps are after it"));
        public static readonly NumberField Residual = Set.Add(
            new NumberField("residual", "greatest violation left, at unit radius and stiffness"));
        public static readonly RowsField Edge = Set.Add(
            new RowsField(
                "edge", ["x", "y", "z"],
                "places [x, y, z] of the edge on the sphere, mm: centre of the sphere at 0, centroid of the outline on +z, +u in the +x "
                    + "half-plane"));
        public static readonly RowsField Gaps = Set.Add(
            new RowsField(
                "gaps", ["place of the edge", "signed gap in mm"],
                "[place of the edge, signed gap in mm], below 0 an overlap; places that meet no edge are left out"));
    }

    /// <summary>Fields of <c>edgeHeld</c>.</summary>
    internal static class EdgeHeldFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly WordField By = Set.Add(new WordField("by", ["edge map", "sliding along the seam"]));
        public static readonly NumberField EnergyNmm = Set.Add(new NumberField("energyNmm"));
        public static readonly NumberField MaxStretchPercent = Set.Add(new NumberField("maxStretchPercent"));
        public static readonly NumberField MaxCompressionPercent = Set.Add(new NumberField("maxCompressionPercent"));
        public static readonly NumberField EdgePullNPerMm = Set.Add(
            new NumberField("edgePullNPerMm", "greatest pull that closing needs, N for a mm of flat edge"));
        public static readonly NumberField EdgeOffSeamMm = Set.Add(
            new NumberField("edgeOffSeamMm", "greatest distance left between edge and seam"));
        public static readonly NumberField Residual = Set.Add(
            new NumberField("residual", "greatest violation left, at unit radius and stiffness"));
    }
}
