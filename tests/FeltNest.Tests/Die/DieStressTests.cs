using FeltNest.Die;
using FeltNest.Die.Check;
using FeltNest.Die.Edge;
using FeltNest.Die.Gang;
using FeltNest.Files.Dies;
using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Tests.Files;
using FeltNest.Tests.Geometry;
using FeltNest.Tests.Layout;
using Xunit;

namespace FeltNest.Tests.Die;

/// <summary>Dies for random parts of every kind: checked by NetTopologySuite, and turned and mirrored against themselves.</summary>
public sealed class DieStressTests : IDisposable
{
    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact, Trait("tier", "long")]
    public void Dies_for_random_parts_pass_the_check()
    {
        HashSet<int> kinds = [];
        for (int seed = 0; seed < Runs.Count(7); seed++)
        {
            if (Design(Lay(seed), seed) is not { } design)
            {
                continue;
            }

            string path = folder.Path("die.json");
            File.WriteAllBytes(path, DieWriter.Write(design));
            DieInput read = DieReader.Read(path);
            Assert.Equal((seed, string.Empty), (seed, string.Join("; ", DieCheck.Verify(read.Layout.Layout, read.Die).Violations)));
            kinds.Add(seed % RandomOutlines.Kinds);
        }

        Assert.True(kinds.Count >= 4, $"dies of {kinds.Count} kinds of part");
    }

    [Fact, Trait("tier", "long")]
    public void A_die_turned_or_mirrored_with_its_lay_has_the_same_figures()
    {
        int compared = 0;
        for (int seed = 0; seed < Runs.Count(7); seed++)
        {
            RollLayout lay = Lay(seed);
            if (Design(lay, seed) is not { } plain)
            {
                continue;
            }

            DieDesign turned = Design(
                Placed(lay, p => p, at => at with { XMm = -at.XMm, YMm = lay.RollWidthMm - at.YMm, AngleDeg = at.AngleDeg + 180 }), seed)!;
            DieDesign mirrored = Design(
                Placed(lay, p => new Point2(p.X, -p.Y), at => at with { YMm = lay.RollWidthMm - at.YMm, AngleDeg = -at.AngleDeg }), seed)!;
            foreach (DieDesign other in new[] { turned, mirrored })
            {
                Assert.Equal(
                    (seed, plain.Gang.Cavities.Count, plain.Gang.Repeats, plain.Gang.Places.Count),
                    (seed, other.Gang.Cavities.Count, other.Gang.Repeats, other.Gang.Places.Count));
                Assert.Equal(plain.Gang.FeedMm, other.Gang.FeedMm, 1e-9);
                Assert.Equal(plain.Gang.EdgeWidthMm, other.Gang.EdgeWidthMm, 1e-6);
                Assert.Equal(plain.Gang.EdgeLengthMm, other.Gang.EdgeLengthMm, 1e-6);

                // Arcs are fitted anew to the other hand: as close, but not the same ones.
                Assert.Equal(1, other.RuleLengthMm / plain.RuleLengthMm, 2e-4);
                Assert.Equal(1, other.Force.Kn / plain.Force.Kn, 1e-3);
                AssertNear(Least(plain), Least(other), seed);
                compared++;
            }
        }

        Assert.True(compared >= 6, $"{compared} compared");

        // Which copies of the cavities make the shortest die can be open, and then some gaps lie within the die or between its strikes: the
        // least of both is the lay's.
        static double Least(DieDesign design) => Math.Min(design.LeastGapMm, design.Joint.NominalMm);
    }

    [Fact, Trait("tier", "long")]
    public void Edges_of_random_smooth_parts_keep_their_promises_however_they_lie()
    {
        for (int seed = 0; seed < Runs.Count(1); seed++)
        {
            Random random = new(seed);
            Outline bone = Shapes.DogBone(1.5 + random.NextDouble(), 0.35 + (0.4 * random.NextDouble()), 200, 25);
            Outline wave = Wave(random);
            foreach (Outline part in new[] { bone, wave }.Select(one => one.Centred().Turned(7 * random.NextDouble())))
            {
                LayoutPart drawn = Shapes.Part(part);
                LayoutPart mirrored = Shapes.Part(Outline.From(part.Points.Select(p => new Point2(-p.X, p.Y))));
                EdgeVerdict verdict = DieEdgeCheck.Measure(drawn, EdgeFitter.Fit(drawn, TestContext.Current.CancellationToken));
                EdgeVerdict other = DieEdgeCheck.Measure(mirrored, EdgeFitter.Fit(mirrored, TestContext.Current.CancellationToken));
                foreach (EdgeVerdict one in new[] { verdict, other })
                {
                    Assert.InRange(one.OffMm, 0, 0.02);
                    Assert.InRange(one.TangentBreakDeg, 0, 0.1);

                    // What lies between two curves no further apart than so much.
                    Assert.InRange(one.AreaShare * part.Area, 0, 1.01 * one.OffMm * part.Perimeter);
                    Assert.InRange(one.MirrorOffMm, 0, 1e-9);
                }
            }
        }
    }

    private static void AssertNear(double expected, double actual, int seed) =>
        Assert.True(expected.Equals(actual) || Math.Abs(expected - actual) < 1e-6, $"seed {seed}: least gap {actual}, {expected} before");

    // Radius 40 with waves of up to four to a turn, finely traced.
    private static Outline Wave(Random random)
    {
        (double Size, double Start)[] waves =
        [
            .. Enumerable.Range(2, 3).Select(k => (3.0 * random.NextDouble() / k, 7 * random.NextDouble())),
        ];
        return Outline.From(Enumerable.Range(0, 600).Select(i => i * Math.PI / 300)
            .Select(t => new Point2(40 + waves.Select((w, k) => w.Size * Math.Cos(((k + 2) * t) + w.Start)).Sum(), 0).Turned(t)));
    }

    private static DieDesign? Design(RollLayout lay, int seed)
    {
        try
        {
            return DieDesigner.Run(
                new GangRequest(lay, 0, DieCases.Order, seed % 3 == 0 ? null : DieCases.Press(300, seed % 3 == 1 ? 300 : 130), null),
                TestContext.Current.CancellationToken);
        }
        catch (FeltNestException error)
        {
            TestContext.Current.TestOutputHelper!.WriteLine($"{seed}: {error.Message}");

            // Teeth too near for rules, corners too rough for arcs, a press too small: no die, and that is said.
            return null;
        }
    }

    private static RollLayout Lay(int seed)
    {
        Random random = new(seed);
        Outline drawn = RandomOutlines.Next(random, seed % RandomOutlines.Kinds, 20).Centred();
        double size = 2 * drawn.Points.Max(p => p.Length);
        double scale = (50 + (50 * random.NextDouble())) / size;
        Outline part = Outline.From(drawn.Points.Select(p => p * scale)).Centred();
        return Shapes.Lay(
            Shapes.Request(
                part, (scale * size * (1.1 + random.NextDouble())) + 30, 4, 15, seed % 4 == 1 ? RowRule.Alternate : RowRule.Same));
    }

    private static RollLayout Placed(RollLayout layout, Func<Point2, Point2> part, Func<PlacedPanel, PlacedPanel> panel) => layout with
    {
        Parts = [.. layout.Parts.Select(p => p with { Outline = Outline.From(p.Outline.Points.Select(part)) })],
        Bands =
        [
            .. layout.Bands.Select(band =>
                band with { Repeat = new LayoutRepeat(band.Repeat.LengthMm, [.. band.Repeat.Panels.Select(panel)]) }),
        ],
    };
}
