using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Layout.Check;
using FeltNest.Tests.Geometry;
using Xunit;

namespace FeltNest.Tests.Layout;

/// <summary>The same part turned, mirrored or given more points is laid as densely; parts drawn as badly as can be are laid all the
/// same.</summary>
public sealed class LayoutStressTests
{
    // Points on the sides change nothing but rounding. Turned or mirrored, the grid of tilts falls on other tilts of the part, and a search
    // at the least effort, which is no proof, may end in a neighbouring optimum: of 28 such pairs 25 came out the same, the worst, spiky,
    // 0.8 % off.
    private const double Same = 1e-9;
    private const double Near = 0.01;

    [Fact, Trait("tier", "long")]
    public void A_part_drawn_turned_mirrored_or_with_more_points_is_laid_as_densely()
    {
        int count = (int)Runs.Count(4);
        int same = 0;
        for (int seed = 0; seed < count; seed++)
        {
            Random random = new(seed);
            Outline part = Sized(RandomOutlines.Next(random, seed % RandomOutlines.Kinds, 16));
            double width = 90 + (60 * random.NextDouble());
            double plain = Laid(part, width);
            double mirrored = Laid(Outline.From(part.Points.Select(p => new Point2(p.X, -p.Y))), width);
            double turned = Laid(part.Turned(7 * random.NextDouble()), width);

            Assert.Equal(plain, Laid(RoughOutlines.Densified(part, 5), width), Same * plain);
            Assert.Equal(plain, mirrored, Near * plain);
            Assert.Equal(plain, turned, Near * plain);
            same += Math.Abs(plain - mirrored) < Same * plain && Math.Abs(plain - turned) < Same * plain ? 1 : 0;
        }

        Assert.True(same >= count / 2, $"{same} of {count} parts came out the same turned and mirrored");
    }

    [Theory]
    [MemberData(nameof(RoughOutlines.Names), MemberType = typeof(RoughOutlines))]
    public void A_part_drawn_as_badly_as_can_be_is_laid_and_checked(string name)
    {
        RollLayout layout =
            Shapes.Lay(Shapes.Request(RoughOutlines.Of(name), 70, gap: name.Contains("waist", StringComparison.Ordinal) ? 0 : 1, edge: 5));

        Assert.True(LayoutCheck.Verify(layout).Passed);
        Assert.True(layout.PanelsPerMetre > 1000 / 45.0, $"{layout.PanelsPerMetre}: fewer than one row of bounding boxes");
    }

    // Features of a nanometre are no features: the plate without them is laid as densely.
    [Theory]
    [InlineData("teeth of a nanometre")]
    [InlineData("corners that hardly turn")]
    [InlineData("sides of a nanometre")]
    public void Features_of_a_nanometre_cost_no_felt(string name)
    {
        Outline plate = Shapes.Of(1, -20, -10, 20, -10, 20, 10, -20, 10);
        Assert.Equal(Laid(plate, 70), Laid(RoughOutlines.Of(name), 70), 1e-3);
    }

    private static double Laid(Outline part, double width)
    {
        RollLayout layout = Shapes.Lay(Shapes.Request(part, width, gap: 1, edge: 5));
        Assert.True(LayoutCheck.Verify(layout).Passed);
        return layout.PanelsPerMetre;
    }

    private static Outline Sized(Outline part) =>
        Outline.From(part.Points.Select(p => p * (20 / part.Centred().Points.Max(q => q.Length)))).Centred();
}
