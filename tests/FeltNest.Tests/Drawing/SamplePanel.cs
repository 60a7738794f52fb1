using FeltNest.Ball;
using FeltNest.Geometry;
using FeltNest.Panel;
using FeltNest.Panel.Elastic;
using FeltNest.Panel.Wrap;
using FeltNest.Seam;

namespace FeltNest.Tests.Drawing;

/// <summary>A small made-up panel: a plate 40 x 10 with round ends, strained by a plain formula.</summary>
public static class SamplePanel
{
    private const int Rings = 4;
    private const int Spokes = 16;

    public static BallSpec Ball { get; } = new(
        "Tiny <ball> & co", RuleType.Stage1, new CoreSpec(20, 5), new CementSpec(0.1, 100),
        new FeltSpec("F", FeltConstruction.Woven, 3, 3, 800, 2, 2, 0.769, 0.3, 0.5, 4, 15, 0, 0),
        new SeamSpec(SeamFamily.TwoHarmonic, 8, 0.4), new PanelSpec(FlatteningMethod.Elastic, EdgeRule.Mated, 30));

    public static FlatPanel Panel { get; } = Make();

    /// <summary>The same panel with its edge held at a limit on two fifths of the seam, and its chord held against the warp.</summary>
    public static FlatPanel Held { get; } = Panel with
    {
        Fit = new PanelFit(0.34, 0, 1.25),
        EdgeLimit = new EdgeLimitReport(6, 40, [new SeamInterval(1, 2)], 380, 1.5, 9, 390, 1.25),
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
                    new StrainSample(
                        new Point2(20 * share * cos, 5 * share * sin), 5 - (4 * share), 2 - (9 * share), 0, new SpherePoint(0, 0, 1)));
            }
        }

        return new FlatPanel(
            arcs, arcs.ContainingPolygon(0.01), 0.001, 40, 10, 10, new SphereFigures(11.6, 120, 845, 8, 60, 18, 7),
            [new EdgePoint(0, 5, 0, -7)], new StrainSummary(5, 7, 7, 0.01, 1.5),
            [new PanelAllowance(1, "seam gap", "0.4 mm", -0.4, -0.4, -9)],
            new StrainField(Rings, Spokes, samples), new PanelSolve(12, 345, 6, 2e-12, 0));
    }
}
