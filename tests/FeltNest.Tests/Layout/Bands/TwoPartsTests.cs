using FeltNest.Layout;
using FeltNest.Layout.Check;
using Xunit;

namespace FeltNest.Tests.Layout.Bands;

/// <summary>Two parts in one width.</summary>
public sealed class TwoPartsTests
{
    private static readonly LayoutPart Small = Shapes.Part(Shapes.DogBone(2.3, 0.7, 16, 12));
    private static readonly LayoutRequest Request = Shapes.Request(Shapes.DogBone(2.3, 0.7, 24, 25), 500, gap: 3, edge: 10);

    [Theory]
    [InlineData(50)]
    [InlineData(70)]
    public void A_wanted_share_is_met(double share)
    {
        RollLayout layout = Shapes.Lay(Request with { Second = new SecondPart(Small, share) });
        double second = layout.Bands.Sum(b => b.Repeat.Panels.Count(p => p.Part == 1) / b.Repeat.LengthMm * 1000);
        Assert.Equal(share, 100 * second / layout.PanelsPerMetre, 0.06);
        Assert.Empty(LayoutCheck.Verify(layout).Violations);
    }

    [Fact]
    public void Filling_never_covers_less_than_the_first_part_alone_and_takes_no_more_than_a_row_of_it()
    {
        double alone = Utilisation(Shapes.Lay(Request));
        RollLayout filled = Shapes.Lay(Request with { Second = new SecondPart(Small, null) });
        Assert.True(Utilisation(filled) >= alone * (1 - 1e-9));
        Assert.All(filled.Bands.Where(b => b.Repeat.Panels[0].Part == 1), b => Assert.InRange(b.YToMm - b.YFromMm, 0, 50));
    }

    [Fact]
    public void A_share_that_one_row_already_passes_is_refused_with_the_nearest() =>
        Assert.Contains(
            "nearest", Assert.Throws<NoAnswerException>(() => Shapes.Lay(Request with { Second = new SecondPart(Small, 0.1) })).Message,
            StringComparison.Ordinal);

    [Fact]
    public void Two_parts_too_wide_for_each_other_are_refused() =>
        Assert.Contains(
            "side by side",
            Assert.Throws<NoAnswerException>(() =>
                Shapes.Lay(Request with { RollWidthMm = 85, Second = new SecondPart(Small, 50) })).Message, StringComparison.Ordinal);

    private static double Utilisation(RollLayout layout) =>
        layout.Bands.Sum(b => b.Repeat.Panels.Sum(p => layout.Parts[p.Part].AreaMm2) / b.Repeat.LengthMm);
}
