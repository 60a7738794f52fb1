using FeltNest.Ball;
using FeltNest.Geometry;
using FeltNest.Panel;
using FeltNest.Panel.Elastic;
using FeltNest.Seam;

namespace FeltNest.Tests.Drawing;

/// <summary>A small made-up panel: a plate 40 x 10 with round ends, strained by a plain formula.</summary>
public static class SamplePanel
{
    private const int Rings = 4;
    private const int Spokes = 16;

    public static BallSpec Ball { get; } = new()
    {
        Name = "Tiny <ball> & co",
        RuleType = RuleType.Stage1,
        Core = new CoreSpec { OuterDiameterMm = 20, MassG = 5 },
        Cement = new CementSpec { ThicknessMm = 0.1, MassPerAreaGsm = 100 },
        Felt = new FeltSpec
        {
            Name = "F",
            Construction = FeltConstruction.Woven,
            ThicknessMm = 3,
            FinishedThicknessMm = 3,
            MassPerAreaGsm = 800,
            WarpModulusNPerMm = 2,
            WeftModulusNPerMm = 2,
            ShearModulusNPerMm = 0.769,
            Poisson = 0.3,
            NeutralLayer = 0.5,
            MaxStretchPercent = 4,
            MaxEdgeCompressionPercent = 15,
            CureShrinkWarpPercent = 0,
            CureShrinkWeftPercent = 0,
        },
        Seam = new SeamSpec { Curve = SeamFamily.TwoHarmonic, WaistMm = 8, SeamGapMm = 0.4 },
        Panel = new PanelSpec(FlatteningMethod.Elastic, EdgeRule.Mated, 30),
    };

    public static FlatPanel Panel { get; } = Make();

    /// <summary>The same panel with its edge held at a limit on two fifths of the seam, and its chord held against the warp.</summary>
    public static FlatPanel Held { get; } = Panel with
    {
        Fit = new PanelFit
        {
            LargestGapMm = 0.34,
            LargestOverlapMm = 0,
            EnergyNmm = 1.25,
            AsCut = new FitGap { LargestGapMm = 0.74, LargestOverlapMm = 0 },
            AfterCure = new FitGap { LargestGapMm = 0.74, LargestOverlapMm = 0 },
        },
        EdgeLimit = new EdgeLimitReport
        {
            LimitPercent = 6,
            SharePercent = 40,
            Where = [new SeamInterval { FromS = 1, ToS = 2 }],
            EdgeAreaMm2 = 380,
            EnergyNmm = 1.5,
            UnlimitedCompressionPercent = 9,
            UnlimitedAreaMm2 = 390,
            UnlimitedEnergyNmm = 1.25,
        },
        Solve = Panel.Solve with { ChordTorqueNmm = -2.5 },
    };

    private static FlatPanel Make()
    {
        ArcOutline arcs = ArcOutline.From(
            [new ArcVertex(-15, -5, 0), new ArcVertex(15, -5, Math.PI), new ArcVertex(15, 5, 0), new ArcVertex(-15, 5, Math.PI)]);
        List<StrainSample> samples = [];
        for (int ring = 0; ring < Rings; ring++)
        {
            for (int spoke = 0; spoke < Spokes; spoke++)
            {
                double share = ring / (Rings - 1.0);
                (double sin, double cos) = Math.SinCos(2 * Math.PI * spoke / Spokes);
                samples.Add(
                    new StrainSample
                    {
                        Place = new Point2(20 * share * cos, 5 * share * sin),
                        MajorPercent = 5 - (4 * share),
                        MinorPercent = 2 - (9 * share),
                        MajorAngle = 0,
                        Fitted = new SpherePoint(0, 0, 1),
                    });
            }
        }

        return new FlatPanel
        {
            Arcs = arcs,
            Outline = arcs.ContainingPolygon(0.01),
            ArcDeviationMm = 0.001,
            LengthMm = 40,
            WidthMm = 10,
            WaistMm = 10,
            Sphere = new SphereFigures
            {
                RadiusMm = 11.6,
                SeamLengthMm = 120,
                PanelAreaMm2 = 845,
                WaistMm = 8,
                LengthMm = 60,
                WidthMm = 18,
                LeastRadiusMm = 7,
            },
            EdgeMap = [new EdgePoint { U = 0, V = 5, S = 0, StretchPercent = -7 }],
            Strain = new StrainSummary
            {
                MaxStretchPercent = 5,
                MaxCompressionPercent = 7,
                EdgeMaxCompressionPercent = 7,
                EdgeMismatchPercent = 0.01,
                EnergyNmm = 1.5,
            },
            Allowances = [new PanelAllowance
            {
                Step = 1,
                Name = "seam gap",
                Value = "0.4 mm",
                LengthEffectMm = -0.4,
                WidthEffectMm = -0.4,
                AreaEffectMm2 = -9,
            }],
            Field = new StrainField { Rings = Rings, Spokes = Spokes, Samples = samples },
            Solve = new PanelSolve { Degree = 12, Unknowns = 345, Iterations = 6, Residual = 2e-12, ChordTorqueNmm = 0 },
        };
    }
}
