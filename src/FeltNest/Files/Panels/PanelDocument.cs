using FeltNest.Ball.Rules;
using FeltNest.Files.Felts;
using FeltNest.Files.Fields;
using FeltNest.Panel.Thickness;

namespace FeltNest.Files.Panels;

/// <summary>Flat panel: every field of <c>feltnest/panel/1</c>.</summary>
internal static class PanelDocument
{
    private static readonly FieldSet Fields = new();

    /// <summary>The document.</summary>
    public static readonly Document Document = new() { Schema = SchemaName.Panel, Title = "Flat panel", Fields = Fields };

    public static readonly TextField Name = Fields.Add(new TextField("name"));
    public static readonly TextField Ball = Fields.Add(new TextField("ball") { Optional = true });
    public static readonly TextsField Given = Fields.Add(
        new TextsField("given", "fields that were given beside the ball's file and went before it, each as field=value")
        {
            Optional = true,
        });
    public static readonly TextField Curve = Fields.Add(new TextField("curve") { Optional = true });
    public static readonly TextField Flattening = Fields.Add(new TextField("flattening") { Optional = true });
    public static readonly TextField Edge = Fields.Add(new TextField("edge") { Optional = true });
    public static readonly NumberField WarpAngleDeg = Fields.Add(new NumberField("warpAngleDeg") { Optional = true, OrWord = "any" });
    public static readonly NumberField MassPerAreaGsm = Fields.Add(new NumberField("massPerAreaGsm") { Optional = true });
    public static readonly ObjectField FeltLot = Fields.Add(
        new ObjectField("feltLot", LotFields.Set, "lot of felt that it was computed for; left out where the ball states none")
        {
            Optional = true,
        });
    public static readonly NumberField AreaMm2 = Fields.Add(new NumberField("areaMm2", "of the cut panel") { Optional = true });
    public static readonly NumberField PerimeterMm = Fields.Add(new NumberField("perimeterMm", "of the cut panel") { Optional = true });
    public static readonly NumberField LengthMm = Fields.Add(new NumberField("lengthMm", "of the cut panel") { Optional = true });
    public static readonly NumberField WidthMm = Fields.Add(new NumberField("widthMm", "of the cut panel") { Optional = true });
    public static readonly NumberField WaistMm = Fields.Add(new NumberField("waistMm", "of the cut panel") { Optional = true });
    public static readonly NumberField ArcDeviationMm = Fields.Add(
        new NumberField("arcDeviationMm", "greatest distance between the arcs and the computed curve") { Optional = true });
    public static readonly ObjectField Sphere = Fields.Add(new ObjectField("sphere", SphereFields.Set) { Optional = true });
    public static readonly ObjectField Strain = Fields.Add(new ObjectField("strain", StrainFields.Set) { Optional = true });
    public static readonly ObjectField Thickness = Fields.Add(
        new ObjectField("thickness", ThicknessFields.Set, "what the felt's thickness adds") { Optional = true });
    public static readonly ObjectField Fit = Fields.Add(
        new ObjectField("fit", FitFields.Set, "where the edge comes to lie with nothing pulling it; null where it finds no rest")
        {
            Optional = true,
            OrNull = true,
        });
    public static readonly ObjectField Solve = Fields.Add(new ObjectField("solve", SolveFields.Set) { Optional = true });
    public static readonly ObjectField EdgeLimit = Fields.Add(
        new ObjectField(
            "edgeLimit", EdgeLimitFields.Set,
            "what the edge compression limit did; null where none was set and for all but the mated elastic panel")
        {
            Optional = true,
            OrNull = true,
        });
    public static readonly ObjectsField Allowances = Fields.Add(new ObjectsField("allowances", AllowanceFields.Set) { Optional = true });
    public static readonly ObjectField BallCheck = Fields.Add(new ObjectField("ballCheck", BallCheckFields.Set) { Optional = true });
    public static readonly RowsField Outline = Fields.Add(
        new RowsField("outline", ["u", "v"], "corners [u, v], mm, one closed outline; the last joins the first")
        {
            Most = Geometry.Outline.MostPoints,
        });
    public static readonly ObjectsField Arcs = Fields.Add(
        new ObjectsField("arcs", ArcFields.Set, "vertices of a closed outline of arcs and straight pieces")
        {
            Most = Geometry.Outline.MostPoints,
        });
    public static readonly RowsField EdgeMap = Fields.Add(
        new RowsField("edgeMap", ["u", "v", "s"], "[u, v, s]: edge before allowances with its seam parameter") { Optional = true });

    /// <summary>Fields of <c>sphere</c>.</summary>
    internal static class SphereFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField RadiusMm = Set.Add(new NumberField("radiusMm", "on the fitted sphere, zero seam gap"));
        public static readonly NumberField SeamLengthMm = Set.Add(new NumberField("seamLengthMm", "on the fitted sphere, zero seam gap"));
        public static readonly NumberField PanelAreaMm2 = Set.Add(new NumberField("panelAreaMm2", "on the fitted sphere, zero seam gap"));
        public static readonly NumberField WaistMm = Set.Add(new NumberField("waistMm", "on the fitted sphere, zero seam gap"));
        public static readonly NumberField LengthMm = Set.Add(new NumberField("lengthMm", "on the fitted sphere, zero seam gap"));
        public static readonly NumberField WidthMm = Set.Add(new NumberField("widthMm", "on the fitted sphere, zero seam gap"));
        public static readonly NumberField LeastRadiusMm = Set.Add(new NumberField("leastRadiusMm", "on the fitted sphere, zero seam gap"));
    }

    /// <summary>Fields of <c>strain</c>.</summary>
    internal static class StrainFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField MaxStretchPercent = Set.Add(new NumberField("maxStretchPercent", "% of flat length"));
        public static readonly NumberField MaxCompressionPercent = Set.Add(new NumberField("maxCompressionPercent", "% of flat length"));
        public static readonly NumberField EdgeMaxCompressionPercent = Set.Add(
            new NumberField("edgeMaxCompressionPercent", "% of flat length"));
        public static readonly NumberField EdgeMismatchPercent = Set.Add(new NumberField("edgeMismatchPercent", "% of flat length"));
        public static readonly NumberField EnergyNmm = Set.Add(new NumberField("energyNmm", "one panel"));
    }

    /// <summary>Fields of <c>thickness</c>.</summary>
    internal static class ThicknessFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField ThicknessMm = Set.Add(new NumberField("thicknessMm", "of the felt as cut"));
        public static readonly ObjectsField Layers = Set.Add(
            new ObjectsField("layers", LayerFields.Set, "glue face, middle and nap face; all other strains are of the neutral layer"));
        public static readonly NumberField BendingNPerMm = Set.Add(
            new NumberField("bendingNPerMm", "energy of bending to the sphere for a unit of area"));
        public static readonly NumberField BendingNmm =
            Set.Add(new NumberField("bendingNmm", "energy of bending to the sphere, one panel"));
        public static readonly NumberField EdgeStrainNPerMm = Set.Add(
            new NumberField("edgeStrainNPerMm", "greatest energy of strain along the edge for a unit of area on the ball"));
        public static readonly NumberField EdgeStrainS = Set.Add(
            new NumberField("edgeStrainS", "where that is: seam parameter, radians"));
        public static readonly NumberField EdgeTackNPerMm = Set.Add(
            new NumberField("edgeTackNPerMm", "adhesion that holds the edge down whatever the felt does: bending and strain together"));
        public static readonly NumberField PuckerLimitPercent = Set.Add(
            new NumberField("puckerLimitPercent", "compression to warn at, % of flat length on the neutral layer; null for none")
            {
                OrNull = true,
            });
        public static readonly FlagField PuckerLimitOfEdge = Set.Add(
            new FlagField("puckerLimitOfEdge", "whether that is the limit of the edge, for want of one for the whole panel"));
        public static readonly FlagField PuckerLimitKept = Set.Add(new FlagField("puckerLimitKept", "whether no place is compressed more"));
        public static readonly NumberField PuckerSharePercent = Set.Add(
            new NumberField("puckerSharePercent", "share of the flat panel compressed more, %"));
    }

    /// <summary>Fields of <c>thickness.layers[]</c>.</summary>
    internal static class LayerFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly EnumField<FeltLayerName> Layer = Set.Add(new EnumField<FeltLayerName>("layer"));
        public static readonly NumberField FromNeutralMm = Set.Add(
            new NumberField("fromNeutralMm", "how far outside the neutral layer; negative inside"));
        public static readonly NumberField MaxStretchPercent = Set.Add(
            new NumberField("maxStretchPercent", "% of flat length; negative where nothing is stretched"));
        public static readonly NumberField MaxCompressionPercent = Set.Add(
            new NumberField("maxCompressionPercent", "% of flat length; negative where nothing is compressed"));
    }

    /// <summary>Fields of <c>fit</c>.</summary>
    internal static class FitFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField LargestGapMm = Set.Add(
            new NumberField(
                "largestGapMm", "greatest gap between the two panels of a ball before allowances: over and above the seam gap")
            {
                OrNull = true,
            });
        public static readonly NumberField LargestOverlapMm = Set.Add(
            new NumberField("largestOverlapMm", "greatest overlap before allowances") { OrNull = true });
        public static readonly NumberField EnergyNmm = Set.Add(new NumberField("energyNmm", "one panel"));
        public static readonly ObjectField AsCut = Set.Add(
            new ObjectField("asCut", FitGapFields.Set, "of the panels as cut, at fitting: what the fitter feels"));
        public static readonly ObjectField AfterCure = Set.Add(
            new ObjectField("afterCure", FitGapFields.Set, "after the felt has shrunk in the cure"));
    }

    /// <summary>Fields of <c>fit.asCut</c> and <c>fit.afterCure</c>.</summary>
    internal static class FitGapFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField LargestGapMm = Set.Add(
            new NumberField("largestGapMm", "greatest gap between the two panels; null where they do not face each other")
            {
                OrNull = true,
            });
        public static readonly NumberField LargestOverlapMm = Set.Add(
            new NumberField("largestOverlapMm", "greatest overlap; null likewise") { OrNull = true });
    }

    /// <summary>Fields of <c>solve</c>.</summary>
    internal static class SolveFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly WholeField Degree = Set.Add(new WholeField("degree"));
        public static readonly WholeField Unknowns = Set.Add(new WholeField("unknowns"));
        public static readonly WholeField Iterations = Set.Add(new WholeField("iterations"));
        public static readonly NumberField Residual = Set.Add(
            new NumberField("residual", "greatest violation left, at unit radius and stiffness"));
        public static readonly NumberField ChordTorqueNmm = Set.Add(
            new NumberField("chordTorqueNmm", "torque that holds the chord between the tips"));
    }

    /// <summary>Fields of <c>edgeLimit</c>.</summary>
    internal static class EdgeLimitFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField LimitPercent = Set.Add(
            new NumberField("limitPercent", "greatest compression allowed along the edge, % of flat length"));
        public static readonly FlagField Active = Set.Add(new FlagField("active", "whether the limit acts anywhere"));
        public static readonly NumberField SharePercent = Set.Add(new NumberField("sharePercent", "share of the seam held at the limit"));
        public static readonly RowsField Where = Set.Add(
            new RowsField("where", ["from s", "to s"], "held parts of the seam [from s, to s], radians"));
        public static readonly NumberField EdgeAreaMm2 = Set.Add(new NumberField("edgeAreaMm2", "area inside the edge before allowances"));
        public static readonly NumberField EnergyNmm = Set.Add(new NumberField("energyNmm", "one panel"));
        public static readonly NumberField UnlimitedCompressionPercent = Set.Add(
            new NumberField("unlimitedCompressionPercent", "greatest edge compression without the limit"));
        public static readonly NumberField UnlimitedAreaMm2 = Set.Add(
            new NumberField("unlimitedAreaMm2", "area inside the edge without the limit"));
        public static readonly NumberField UnlimitedEnergyNmm = Set.Add(new NumberField("unlimitedEnergyNmm", "energy without the limit"));
    }

    /// <summary>Fields of <c>allowances[]</c>.</summary>
    internal static class AllowanceFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly WholeField Step = Set.Add(new WholeField("step"));
        public static readonly TextField Name = Set.Add(new TextField("name"));
        public static readonly TextField Value = Set.Add(new TextField("value"));
        public static readonly NumberField LengthEffectMm = Set.Add(new NumberField("lengthEffectMm"));
        public static readonly NumberField WidthEffectMm = Set.Add(new NumberField("widthEffectMm"));
        public static readonly NumberField AreaEffectMm2 = Set.Add(new NumberField("areaEffectMm2"));
    }

    /// <summary>Fields of <c>ballCheck</c>.</summary>
    internal static class BallCheckFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly TextField RuleType = Set.Add(new TextField("ruleType"));
        public static readonly TextField Edition = Set.Add(new TextField("edition"));
        public static readonly TextField Source = Set.Add(new TextField("source") { OrNull = true });
        public static readonly NumberField FinishedDiameterMm = Set.Add(new NumberField("finishedDiameterMm"));
        public static readonly NumberField CoreG = Set.Add(new NumberField("coreG"));
        public static readonly NumberField CementG = Set.Add(new NumberField("cementG"));
        public static readonly NumberField FeltG = Set.Add(new NumberField("feltG"));
        public static readonly NumberField TotalG = Set.Add(new NumberField("totalG"));
        public static readonly ObjectsField Findings = Set.Add(new ObjectsField("findings", FindingFields.Set));
        public static readonly ObjectsField Tolerances = Set.Add(
            new ObjectsField("tolerances", ToleranceFields.Set, "spread of each quantity; empty where the ball states no tolerances"));
    }

    /// <summary>Fields of <c>ballCheck.findings[]</c>.</summary>
    internal static class FindingFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly TextField Quantity = Set.Add(new TextField("quantity"));
        public static readonly NumberField Value = Set.Add(new NumberField("value", "computed, or null") { OrNull = true });
        public static readonly TextField Unit = Set.Add(new TextField("unit") { OrBlank = true });
        public static readonly NumberField Low = Set.Add(new NumberField("low", "rule") { OrNull = true });
        public static readonly NumberField High = Set.Add(new NumberField("high", "rule") { OrNull = true });
        public static readonly EnumField<RuleVerdict> Verdict = Set.Add(new EnumField<RuleVerdict>("verdict"));
    }

    /// <summary>Fields of <c>ballCheck.tolerances[]</c>.</summary>
    internal static class ToleranceFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly TextField Quantity = Set.Add(new TextField("quantity"));
        public static readonly NumberField Value = Set.Add(new NumberField("value"));
        public static readonly TextField Unit = Set.Add(new TextField("unit") { OrBlank = true });
        public static readonly NumberField WorstCase = Set.Add(new NumberField("worstCase", "plus-minus, every part off the same way"));
        public static readonly NumberField RootSumSquare = Set.Add(new NumberField("rootSumSquare", "plus-minus, parts off independently"));
        public static readonly EnumField<RuleVerdict> WorstCaseVerdict = Set.Add(new EnumField<RuleVerdict>("worstCaseVerdict"));
        public static readonly EnumField<RuleVerdict> RootSumSquareVerdict = Set.Add(new EnumField<RuleVerdict>("rootSumSquareVerdict"));
    }
}
