using FeltNest.Ball;
using FeltNest.Design;
using FeltNest.Files.Balls;
using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Panel;
using FeltNest.Tests.Files;
using Xunit;

namespace FeltNest.Tests.Layout.Bands;

/// <summary>Bands with a repeat of their own, and bands laid into each other.</summary>
public sealed class BandSearchTests
{
    // A panel of about 165 x 50 mm.
    private static readonly Outline Bone = Shapes.DogBone(2.3, 0.7, 24, 25);

    [Fact, Trait("tier", "long")]
    public void Bands_never_give_less_than_one_and_somewhere_give_more()
    {
        // A flattened ball's panel on a width that fits a single row system badly.
        BallSpec ball = BallReader.Read(RepositoryFile.PathOf("shapes", "balls", "type-2.json")).Ball;
        LayoutRequest same = Shapes.Request(Bone, 870, gap: 2) with { Part = CoverPart.Of(ball, PanelFlattener.Flatten(ball)) };
        LayoutRequest any = same with { Rules = same.Rules with { Rows = RowRule.Any } };
        double plain = Shapes.Lay(same).PanelsPerMetre;
        double shared = Shapes.Lay(any).PanelsPerMetre;
        RollLayout apart = Shapes.Lay(any with { Rules = any.Rules with { Bands = 2 } });
        Assert.True(shared > 1.003 * plain, $"{shared / plain}");
        Assert.True(apart.PanelsPerMetre >= shared * (1 - 1e-9));
    }

    [Fact]
    public void Squares_of_one_size_gain_nothing_from_bands_and_stay_in_one()
    {
        LayoutRequest request = Shapes.Request(Shapes.Of(1, 0, 0, 10, 0, 10, 10, 0, 10), 100, rows: RowRule.Any);
        RollLayout layout = Shapes.Lay(request with { Rules = request.Rules with { Bands = 3 } });
        Assert.Single(layout.Bands);

        // Ten rows of ten: every bit of the cloth.
        Assert.Equal(1000, layout.PanelsPerMetre, 1e-6);
    }

    [Fact]
    public void Parallel_panels_stay_parallel_over_the_bands()
    {
        LayoutRequest request = Shapes.Request(Bone, 620, gap: 3);
        RollLayout layout = Shapes.Lay(request with { Rules = request.Rules with { Bands = 2 } });
        double[] tilts = [.. layout.Bands.SelectMany(b => b.Repeat.Panels).Select(p => p.AngleDeg)];
        Assert.All(tilts, t => Assert.Equal(0, Math.IEEERemainder(t - tilts[0], 180), 1e-6));
    }
}
