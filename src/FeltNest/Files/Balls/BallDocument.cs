using FeltNest.Ball;
using FeltNest.Ball.Ranges;
using FeltNest.Ball.Tolerance;
using FeltNest.Files.Felts;
using FeltNest.Files.Fields;

namespace FeltNest.Files.Balls;

/// <summary>Ball specification: every field of <c>feltnest/ball/1</c>.</summary>
internal static class BallDocument
{
    private static readonly FieldSet Fields = new();

    /// <summary>The document.</summary>
    public static readonly Document Document = new() { Schema = SchemaName.Ball, Title = "Ball specification", Fields = Fields };

    public static readonly TextField Name = Fields.Add(new TextField("name", "shown on results"));
    public static readonly EnumField<RuleType> RuleType = Fields.Add(new EnumField<RuleType>("ruleType"));
    public static readonly ObjectField Core = Fields.Add(new ObjectField("core", CoreFields.Set));
    public static readonly ObjectField Cement = Fields.Add(new ObjectField("cement", CementFields.Set));
    public static readonly ObjectField Felt = Fields.Add(new ObjectField("felt", FeltFields.Set));
    public static readonly ObjectField Seam = Fields.Add(new ObjectField("seam", SeamFields.Set));
    public static readonly ObjectField Panel = Fields.Add(new ObjectField("panel", PanelFields.Set));
    public static readonly ObjectField Tolerances = Fields.Add(
        new ObjectField("tolerances", TolerancesFields.Set, "how far the parts may be off; may be left out") { Optional = true });

    /// <summary>Fields of <c>core</c>.</summary>
    internal static class CoreFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField OuterDiameterMm = Set.Add(new NumberField(BallRanges.CoreDiameter, "outside diameter"));
        public static readonly NumberField MassG = Set.Add(new NumberField(BallRanges.CoreMass, "mass"));
    }

    /// <summary>Fields of <c>cement</c>.</summary>
    internal static class CementFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField ThicknessMm = Set.Add(new NumberField(BallRanges.CementThickness, "dry film on the core"));
        public static readonly NumberField MassPerAreaGsm = Set.Add(new NumberField(BallRanges.CementMass, "dry mass per area of core"));
    }

    /// <summary>Fields of <c>felt</c>.</summary>
    internal static class FeltFields
    {
        internal static readonly FieldSet Set = new();

        // What counts for a figure that the felt file gives.
        private const string FromFile = "required, left out where `felt.file` gives it";

        public static readonly FileField File = Set.Add(
            new FileField("file", "felt file beside the ball's: its figures, its name and its lot are the felt's, and stand here no more")
            {
                Optional = true,
            });
        public static readonly ObjectField Lot = Set.Add(
            new ObjectField("lot", LotFields.Set, "lot that the figures were measured on; `felt.file` gives it") { Optional = true });
        public static readonly TextField Name = Set.Add(new TextField("name") { Otherwise = FromFile });
        public static readonly EnumField<FeltConstruction> Construction = Set.Add(new EnumField<FeltConstruction>("construction"));
        public static readonly NumberField ThicknessMm =
            Set.Add(new NumberField(BallRanges.FeltThickness, "as cut") { Otherwise = FromFile });
        public static readonly NumberField FinishedThicknessMm = Set.Add(
            new NumberField(BallRanges.FinishedThickness, "on the finished ball"));
        public static readonly NumberField MassPerAreaGsm =
            Set.Add(new NumberField(BallRanges.FeltMass, "as cut") { Otherwise = FromFile });
        public static readonly NumberField WarpModulusNPerMm = Set.Add(
            new NumberField(BallRanges.WarpModulus, "modulus times thickness along the warp") { Otherwise = FromFile });
        public static readonly NumberField WeftModulusNPerMm = Set.Add(
            new NumberField(BallRanges.WeftModulus, "modulus times thickness along the weft") { Otherwise = FromFile });
        public static readonly NumberField ShearModulusNPerMm = Set.Add(
            new NumberField(
                BallRanges.ShearModulus,
                "shear modulus times thickness; warp modulus / (2 (1 + poisson)) within 0.1 % and warp = weft mean felt without a warp")
            {
                Otherwise = FromFile,
            });
        public static readonly NumberField Poisson = Set.Add(
            new NumberField(BallRanges.Poisson, "warp to weft; below the root of warp over weft modulus") { Otherwise = FromFile });
        public static readonly NumberField NeutralLayer = Set.Add(
            new NumberField(BallRanges.NeutralLayer, "layer that keeps its length when bent: 0 core side, 1 outside")
            {
                Otherwise = FromFile,
            });
        public static readonly NumberField MaxStretchPercent = Set.Add(
            new NumberField(BallRanges.MaxStretch, "stretch to warn at, % of flat length"));
        public static readonly NumberField MaxEdgeCompressionPercent = Set.Add(
            new NumberField(
                BallRanges.MaxEdgeCompression,
                "most edge compression, % of flat length; binds the elastic mated panel, 100 is no limit")
            { Otherwise = FromFile });
        public static readonly NumberField MaxCompressionPercent = Set.Add(
            new NumberField(
                BallRanges.MaxCompression,
                "compression anywhere to warn at, % of flat length on the neutral layer; left out, that of the edge is taken, and said")
            {
                Optional = true,
            });
        public static readonly NumberField CureShrinkWarpPercent = Set.Add(new NumberField(BallRanges.ShrinkWarp) { Otherwise = FromFile });
        public static readonly NumberField CureShrinkWeftPercent = Set.Add(new NumberField(BallRanges.ShrinkWeft) { Otherwise = FromFile });
        public static readonly NumberField ApplicationStretchWarpPercent = Set.Add(
            new NumberField(
                BallRanges.ApplicationStretchWarp,
                "stretch along the warp by which the felt is pulled on all over, beyond what the sphere asks, % of the cut length; the "
                    + "panel is cut smaller by it")
            {
                Default = 0,
            });
        public static readonly NumberField ApplicationStretchWeftPercent = Set.Add(
            new NumberField(
                BallRanges.ApplicationStretchWeft,
                "stretch along the weft by which the felt is pulled on all over, beyond what the sphere asks, % of the cut length; the "
                    + "panel is cut smaller by it")
            {
                Default = 0,
            });
    }

    /// <summary>Fields of <c>seam</c>.</summary>
    internal static class SeamFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly EnumField<SeamFamily> Curve = Set.Add(
            new EnumField<SeamFamily>(
                "curve", "family of the seam; `points` takes the field points, the others waistMm, `shaped` offsets too"));
        public static readonly NumberField WaistMm = Set.Add(
            new NumberField("waistMm", 0, NumberField.NoMost, "great-circle arc across the waist on the fitted sphere at zero seam gap")
            {
                Otherwise = "required, left out with `points`",
                EndsExcluded = true,
                Allowed = "20 to 90 degrees of the fitted sphere",
            });
        public static readonly RowsField Points = Set.Add(
            new RowsField(
                "points", ["x", "y", "z"],
                "places along the seam in order, any unit; centre of the ball at 0, z through a panel's pole, x through a tip of that "
                    + "panel")
            {
                Otherwise = "only with `points`",
                Least = 24,
                Most = Geometry.Outline.MostPoints,
            });
        public static readonly RowsField Offsets = Set.Add(
            new RowsField(
                "offsets", ["order", "mm"],
                "waves along the normal of the two-harmonic seam: even orders, each once, with their amounts on the fitted sphere, "
                    + "positive "
                    + "into the panel; 2, 6, 10, ... keep the panel's mirrors, 4, 8, 12, ... its half-turn alone")
            {
                Otherwise = "only with `shaped`",
                Least = 1,
                Most = FeltNest.Seam.ShapedSeam.MostOrder / 2,
            });
        public static readonly NumberField SeamGapMm = Set.Add(new NumberField(BallRanges.SeamGap, "gap between the two panels"));
        public static readonly NumberField AdhesiveLeastMm = Set.Add(
            new NumberField(AdhesiveRanges.Least, "least gap that the edge adhesive bridges; with adhesiveMostMm or not at all")
            {
                Optional = true,
            });
        public static readonly NumberField AdhesiveMostMm = Set.Add(
            new NumberField(AdhesiveRanges.Most, "greatest gap that it bridges; above adhesiveLeastMm") { Optional = true });
    }

    /// <summary>Fields of <c>panel</c>.</summary>
    internal static class PanelFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly EnumField<FlatteningMethod> Flattening = Set.Add(new EnumField<FlatteningMethod>("flattening"));
        public static readonly EnumField<EdgeRule> Edge = Set.Add(new EnumField<EdgeRule>("edge"));
        public static readonly NumberField WarpAngleDeg = Set.Add(
            new NumberField(BallRanges.WarpAngle, "from the warp to +u; `any` only for felt without a warp") { OrWord = "any" });
        public static readonly NumberField DieOffsetMm = Set.Add(
            new NumberField(
                BallRanges.DieOffset,
                "how far outside the panel wanted the die cuts, below 0 inside: for the bevel's side and springback; applied last")
            {
                Default = 0,
            });
    }

    /// <summary>Fields of <c>tolerances</c>.</summary>
    internal static class TolerancesFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField CoreDiameterMm = Set.Add(
            new NumberField(ToleranceRanges.CoreDiameterTolerance, "core diameter, plus-minus") { Optional = true });
        public static readonly NumberField CoreMassG = Set.Add(
            new NumberField(ToleranceRanges.CoreMassTolerance, "core mass, plus-minus") { Default = 0 });
        public static readonly NumberField CementThicknessMm = Set.Add(
            new NumberField(ToleranceRanges.CementThicknessTolerance, "cement thickness, plus-minus") { Optional = true });
        public static readonly NumberField CementMassPerAreaGsm = Set.Add(
            new NumberField(ToleranceRanges.CementMassTolerance, "cement mass per area, plus-minus") { Default = 0 });
        public static readonly NumberField FeltFinishedThicknessMm = Set.Add(
            new NumberField(ToleranceRanges.FinishedThicknessTolerance, "felt thickness on the finished ball, plus-minus") { Default = 0 });
        public static readonly NumberField FeltMassPerAreaGsm = Set.Add(
            new NumberField(ToleranceRanges.FeltMassTolerance, "felt mass per area, plus-minus") { Default = 0 });
        public static readonly NumberField FeltThicknessMm = Set.Add(
            new NumberField(ToleranceRanges.FeltThicknessTolerance, "felt thickness as cut, plus-minus; for the seam gap")
            {
                Optional = true,
            });
        public static readonly NumberField NeutralLayer = Set.Add(
            new NumberField(ToleranceRanges.NeutralLayerTolerance, "place of the neutral layer, plus-minus; for the seam gap")
            {
                Optional = true,
            });
        public static readonly NumberField WarpModulusNPerMm = Set.Add(
            new NumberField(
                ToleranceRanges.WarpModulusTolerance, "modulus along the warp, plus-minus; for the seam gap, needs panel.warpAngleDeg")
            {
                Optional = true,
            });
        public static readonly NumberField WeftModulusNPerMm = Set.Add(
            new NumberField(ToleranceRanges.WeftModulusTolerance, "modulus along the weft, plus-minus; likewise")
            {
                Optional = true,
            });
        public static readonly NumberField ShearModulusNPerMm = Set.Add(
            new NumberField(ToleranceRanges.ShearModulusTolerance, "shear modulus, plus-minus; likewise")
            {
                Optional = true,
            });
        public static readonly NumberField Poisson = Set.Add(
            new NumberField(ToleranceRanges.PoissonTolerance, "Poisson's ratio, plus-minus; for the seam gap")
            {
                Optional = true,
            });
        public static readonly NumberField CureShrinkWarpPercent = Set.Add(
            new NumberField(
                ToleranceRanges.CureShrinkWarpTolerance,
                "shrinkage along the warp, plus-minus points of per cent; for the seam gap, needs panel.warpAngleDeg")
            {
                Optional = true,
            });
        public static readonly NumberField CureShrinkWeftPercent = Set.Add(
            new NumberField(ToleranceRanges.CureShrinkWeftTolerance, "shrinkage along the weft, plus-minus; likewise")
            {
                Optional = true,
            });
        public static readonly NumberField ApplicationStretchWarpPercent = Set.Add(
            new NumberField(
                ToleranceRanges.ApplicationStretchWarpTolerance,
                "stretch on application along the warp, plus-minus points of per cent; likewise")
            {
                Optional = true,
            });
        public static readonly NumberField ApplicationStretchWeftPercent = Set.Add(
            new NumberField(ToleranceRanges.ApplicationStretchWeftTolerance, "stretch on application along the weft, plus-minus; likewise")
            {
                Optional = true,
            });
        public static readonly NumberField WarpAngleDeg = Set.Add(
            new NumberField(
                ToleranceRanges.WarpAngleTolerance,
                "angle of the cut panels to the warp, plus-minus, both panels alike; needs panel.warpAngleDeg")
            {
                Optional = true,
            });
        public static readonly NumberField DieOffsetMm = Set.Add(
            new NumberField(
                ToleranceRanges.DieOffsetTolerance, "how far the die cuts outside its drawing all round, plus-minus; for the seam gap")
            {
                Optional = true,
            });
        public static readonly NumberField PlacingAlongMm = Set.Add(
            new NumberField(
                ToleranceRanges.PlacingAlongTolerance,
                "placing of each panel along its long axis, plus-minus on the fitted sphere; for the seam gap")
            {
                Optional = true,
            });
        public static readonly NumberField PlacingAcrossMm = Set.Add(
            new NumberField(ToleranceRanges.PlacingAcrossTolerance, "placing of each panel across its long axis, plus-minus; likewise")
            {
                Optional = true,
            });
        public static readonly NumberField PlacingTurnDeg = Set.Add(
            new NumberField(ToleranceRanges.PlacingTurnTolerance, "turn of each panel about its pole, plus-minus; for the seam gap")
            {
                Optional = true,
            });
        public static readonly EnumField<ToleranceReading> ReadAs = Set.Add(
            new EnumField<ToleranceReading>(
                "readAs",
                "how the tolerances of the seam gap are read: `uniform`, every value within the plus-minus as likely, or `two-sigma`, "
                    + "normal "
                    + "with the plus-minus as two standard deviations; left out, uniform")
            {
                Optional = true,
            });
    }
}
