using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Layout.Limits;
using Xunit;

namespace FeltNest.Tests.Layout.Limits;

/// <summary>Both ends of every range of a request, asked without a search: a bar of 30 by 10 on a roll of 100 with trims of 5 and a gap of
/// 4.</summary>
public sealed class LayoutLimitRangeTests
{
    private static readonly Outline Bar = Shapes.Of(1, 0, 0, 30, 0, 30, 10, 0, 10);
    private static readonly LayoutRequest Request = Shapes.Request(Bar, 100, gap: 4, edge: 5);

    [Theory]
    [InlineData("width", AskedFor.RollWidth, 0.1, 100_000)]
    [InlineData("lower edge", AskedFor.EdgeTrims, 0, 100_000)]
    [InlineData("upper edge", AskedFor.EdgeTrims, 0, 100_000)]
    [InlineData("gap", AskedFor.Gap, 0, 100_000)]
    [InlineData("warp-tolerance", AskedFor.WarpTolerance, 0, 90)]
    [InlineData("least-repeat", AskedFor.LeastRepeat, 0, 100_000)]
    [InlineData("warp-angle", AskedFor.WarpAngle, -360, 360)]
    public void Numbers_are_allowed_from_the_least_to_the_greatest(string field, AskedFor asked, double least, double most)
    {
        foreach (double outside in new[] { least - 0.01, most + 0.01, double.NaN })
        {
            InputException error = Assert.Throws<InputException>(() => LayoutLimits.Require(With(field, outside)));
            Assert.Equal(asked, error.Asked);
            Assert.Contains("is outside", error.Message, StringComparison.Ordinal);
        }

        // A number within its range may still ask for what has no answer, as a trim of 100 m does.
        foreach (double inside in new[] { least, most })
        {
            Exception? told = Record.Exception(() => LayoutLimits.Require(With(field, inside)));
            Assert.True(told is null or FeltNestException, $"{told}");
            Assert.DoesNotContain("is outside", told?.Message ?? string.Empty, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("bands", 4)]
    [InlineData("plies", 100)]
    [InlineData("effort", 1000)]
    public void Counts_are_allowed_from_one_on(string field, int most)
    {
        Assert.Equal(field, Assert.Throws<InputException>(() => LayoutLimits.Require(With(field, 0))).Field);
        Assert.Equal(field, Assert.Throws<InputException>(() => LayoutLimits.Require(With(field, most + 1))).Field);
        LayoutLimits.Require(With(field, 1));
        LayoutLimits.Require(With(field, most));
    }

    [Fact]
    public void Trims_that_leave_nothing_are_refused()
    {
        InputException error = Assert.Throws<InputException>(() =>
            LayoutLimits.Require(Request with { Trims = new EdgeTrims { LowerMm = 40, UpperMm = 60 } }));
        Assert.Equal((AskedFor.EdgeTrims, "edge trims of 40 and 60 mm leave nothing of a 100 mm roll"), (error.Asked, error.Problem));
        LayoutLimits.Require(Request with { Trims = new EdgeTrims { LowerMm = 40, UpperMm = 50 } });
    }

    [Theory]
    [InlineData(-1, 5, false)]
    [InlineData(5, 5, false)]
    [InlineData(6, 5, false)]
    [InlineData(90, 100.001, false)]
    [InlineData(double.NaN, 5, false)]
    [InlineData(0, 5, true)]
    [InlineData(90, 100, true)]
    public void A_stripe_lies_on_the_roll_lower_side_first(double from, double to, bool allowed)
    {
        Exception? error = Record.Exception(() => LayoutLimits.Require(Forbidding(Request, from, to)));
        Assert.Equal(allowed ? null : AskedFor.ForbiddenStripes, (error as InputException)?.Asked);
    }

    [Theory]
    [InlineData(0.0, false)]
    [InlineData(100.0, false)]
    [InlineData(double.NaN, false)]
    [InlineData(0.001, true)]
    [InlineData(99.999, true)]
    [InlineData(null, true)]
    public void A_second_part_has_a_share_between_none_and_all(double? share, bool allowed)
    {
        LayoutRequest two = Request with { Second = new SecondPart(Shapes.Part(Bar), share) };
        Assert.Equal(allowed ? null : AskedFor.SecondShare, (Record.Exception(() => LayoutLimits.Require(two)) as InputException)?.Asked);
        Assert.Equal(AskedFor.SecondPart, Assert.Throws<InputException>(() => LayoutLimits.Require(Forbidding(two, 90, 100))).Asked);
    }

    [Fact]
    public void A_gap_as_wide_as_the_part_is_thick_is_the_widest()
    {
        LayoutLimits.Require(Request with { GapMm = 10 });
        Assert.StartsWith(
            "10.001 mm swallows the part, which is only 10 mm across",
            Assert.Throws<InputException>(() => LayoutLimits.Require(Request with { GapMm = 10.001 })).Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void A_part_as_high_as_the_cloth_fits_and_a_higher_one_is_told_the_width_it_needs()
    {
        // Upright the bar is 30 high; with trims of 5 and 7 it needs 42, rounded up to a hundredth where it is 30.003.
        LayoutRequest upright =
            Request with
            {
                RollWidthMm = 42,
                Trims = new EdgeTrims { LowerMm = 5, UpperMm = 7 },
                Rules = Request.Rules with { WarpAngleDeg = 90 },
            };
        LayoutLimits.Require(upright);
        LayoutRequest higher = upright with { Part = Shapes.Part(Shapes.Of(1, 0, 0, 30.003, 0, 30.003, 10, 0, 10)) };
        Assert.EndsWith(
            "needs 30.003 mm across (tilted 90 degrees), the usable width is 30 mm: the least roll width that works is 42.01 mm",
            Assert.Throws<NoAnswerException>(() => LayoutLimits.Require(higher)).Message, StringComparison.Ordinal);
        LayoutLimits.Require(higher with { RollWidthMm = 42.01 });

        // Free to turn it lies flat: 10 is enough.
        LayoutLimits.Require(Request with { RollWidthMm = 20 });
        Assert.Throws<NoAnswerException>(() => LayoutLimits.Require(Request with { RollWidthMm = 19.999 }));
    }

    [Fact]
    public void A_stripe_must_leave_a_run_as_high_as_the_part()
    {
        LayoutRequest upright = Request with { Rules = Request.Rules with { WarpAngleDeg = 90 } };
        LayoutLimits.Require(Forbidding(upright, 35, 70));
        Assert.Equal(
            "the forbidden stripes leave no room: the panel needs 30 mm across (tilted 90 degrees), the widest run of felt between "
                + "stripes and trims is 27 mm",
            Assert.Throws<NoAnswerException>(() => LayoutLimits.Require(Forbidding(upright, 30, 68))).Message);
        Assert.Contains(
            "widest run of felt between stripes and trims is 0 mm",
            Assert.Throws<NoAnswerException>(() => LayoutLimits.Require(Forbidding(upright, 0, 100))).Message, StringComparison.Ordinal);

        // Where even the whole cloth is too narrow the stripe is not to blame.
        Assert.Contains(
            "the usable width is 29 mm",
            Assert.Throws<NoAnswerException>(() => LayoutLimits.Require(Forbidding(upright, 20, 22) with { RollWidthMm = 39 })).Message,
            StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0.0, 30.0, 10.0, true)]
    [InlineData(0.0, 29.99, 10.0, false)]
    [InlineData(0.0, 30.0, 9.99, false)]
    [InlineData(0.0, null, 10.0, true)]
    [InlineData(0.0, 30.0, null, true)]
    [InlineData(0.0, null, 9.99, false)]
    [InlineData(0.0, 29.99, null, false)]
    [InlineData(90.0, 10.0, 30.0, true)]
    [InlineData(90.0, 30.0, 10.0, false)]
    [InlineData(null, 10.0, 30.0, true)]
    [InlineData(null, 28.3, 28.3, true)]
    [InlineData(null, 28.2, 28.2, false)]
    public void A_bed_holds_the_panel_at_an_allowed_tilt_or_none(double? warp, double? length, double? width, bool allowed)
    {
        // At 45 degrees the bar is (30 + 10)/sqrt 2 = 28.284 both ways.
        LayoutRequest request =
            Request with
            {
                Rules = Request.Rules with
                {
                    WarpAngleDeg = warp,
                    Die = new DieLimit { MostPanels = null, BedLengthMm = length, BedWidthMm = width },
                },
            };
        Exception? error = Record.Exception(() => LayoutLimits.Require(request));
        Assert.Equal(allowed, error is null);
        Assert.True(allowed || error is NoAnswerException);
    }

    [Fact]
    public void The_nearest_tilt_for_a_bed_is_told() => Assert.EndsWith(
        "the nearest needs 28.284 mm along and 28.284 mm across",
        Assert.Throws<NoAnswerException>(() =>
            LayoutLimits.Require(
                Request with
                {
                    Rules = Request.Rules with { Die = new DieLimit { MostPanels = null, BedLengthMm = 28, BedWidthMm = 28 } },
                })).Message,
            StringComparison.Ordinal);

    // Tilts +a and -a are both allowed where the range holds a tilt that is its own mirror: along or across the roll.
    [Theory]
    [InlineData(30, 0, false)]
    [InlineData(30, 29.999, false)]
    [InlineData(30, 30, true)]
    [InlineData(60, 30, true)]
    [InlineData(60, 29.999, false)]
    [InlineData(120, 30, true)]
    [InlineData(120, 29.999, false)]
    [InlineData(150, 30, true)]
    [InlineData(0, 0, true)]
    [InlineData(90, 0, true)]
    [InlineData(-90, 0, true)]
    [InlineData(180, 0, true)]
    [InlineData(30, 90, true)]
    public void Alternate_rows_ask_for_a_tilt_and_its_mirror(double warp, double tolerance, bool allowed)
    {
        LayoutRules rules = Request.Rules with { WarpAngleDeg = warp, WarpToleranceDeg = tolerance, Rows = RowRule.Alternate };
        Assert.Equal(allowed, Record.Exception(() => LayoutLimits.Require(Request with { Rules = rules })) is null);
        LayoutLimits.Require(Request with { Rules = rules with { Rows = RowRule.Any } });
        LayoutLimits.Require(Request with { Rules = rules with { WarpAngleDeg = null } });
    }

    private static LayoutRequest Forbidding(LayoutRequest request, double from, double to) =>
        request with { Rules = request.Rules with { Forbidden = [new ForbiddenStrip { YFromMm = from, YToMm = to }] } };

    private static LayoutRequest With(string field, double value) => field switch
    {
        "width" => Request with { RollWidthMm = value },
        "lower edge" => Request with { Trims = Request.Trims with { LowerMm = value } },
        "upper edge" => Request with { Trims = Request.Trims with { UpperMm = value } },
        "gap" => Request with { GapMm = value },
        "effort" => Request with { Effort = (int)value },
        "warp-tolerance" => Request with { Rules = Request.Rules with { WarpAngleDeg = 0, WarpToleranceDeg = value } },
        "warp-angle" => Request with { Rules = Request.Rules with { WarpAngleDeg = value } },
        "bands" => Request with { Rules = Request.Rules with { Bands = (int)value } },
        "plies" => Request with { Rules = Request.Rules with { Plies = new Plies((int)value, false) } },
        "least-repeat" => Request with { Rules = Request.Rules with { LeastRepeatMm = value } },
        _ => throw new ArgumentOutOfRangeException(nameof(field), field, null),
    };
}
