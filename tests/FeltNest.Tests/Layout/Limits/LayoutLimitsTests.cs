using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Layout.Limits;
using Xunit;

namespace FeltNest.Tests.Layout.Limits;

/// <summary>What is refused before any search.</summary>
public sealed class LayoutLimitsTests
{
    // A speck of a millimetre square: 3000 rows of it with its gap of 1 fill 6000 mm.
    private static readonly Outline Speck = Shapes.Of(1, 0, 0, 1, 0, 1, 1, 0, 1);

    [Fact]
    public void More_than_three_thousand_rows_are_refused_with_a_hint_at_the_units()
    {
        NoAnswerException error = Assert.Throws<NoAnswerException>(() => LayoutLimits.Require(Shapes.Request(Speck, 6001, gap: 1)));

        Assert.Equal(
            "the panel needs 1 mm across: more than 3000 rows would lie over 6001 mm of felt, which is the most that is searched; are "
                + "its units right?", error.Message);
    }

    [Fact]
    public void Three_thousand_rows_are_allowed() => LayoutLimits.Require(Shapes.Request(Speck, 6000, gap: 1));

    // The widest run counts, not the roll: stripes leave 2 x 5999 mm.
    [Fact]
    public void Rows_are_counted_over_the_widest_run_of_cloth_between_stripes()
    {
        LayoutRequest request = Shapes.Request(Speck, 11_999, gap: 1);

        LayoutLimits.Require(request with { Rules = request.Rules with { Forbidden = [new() { YFromMm = 5999, YToMm = 6000 }] } });
        Assert.Throws<NoAnswerException>(() =>
            LayoutLimits.Require(request with { Rules = request.Rules with { Forbidden = [new() { YFromMm = 1, YToMm = 2 }] } }));
    }
}
