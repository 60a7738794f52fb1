using FeltNest.Ball.Passport;
using Xunit;

namespace FeltNest.Tests.Ball.Passport;

public sealed class PassportStudyTests
{
    private const int Seeds = 400;

    // Four standard deviations of a share of 95 % over the seeds.
    private const double Room = 0.0436;

    [Fact]
    public void Readings_without_noise_give_the_known_felt_back()
    {
        FeltPassport felt = Study(KnownFelt.Exact);

        Assert.Equal(2.4, felt.Values[FeltQuantity.WarpModulus].Value, 9);
        Assert.Equal(1.8, felt.Values[FeltQuantity.WeftModulus].Value, 9);
        Assert.Equal(0.65, felt.Values[FeltQuantity.ShearModulus].Value, 9);
        Assert.Equal(0.28, felt.Values[FeltQuantity.Poisson].Value, 9);
        Assert.Equal(0.42, felt.Values[FeltQuantity.NeutralLayer].Value, 9);
        Assert.Equal(1.2, felt.Values[FeltQuantity.ShrinkWarp].Value, 9);
        Assert.All(felt.Curves, curve => Assert.False(curve.Bends));
        Assert.Equal(new("L", "2026-03-02"), (felt.Lot.Name, felt.Lot.Date));
    }

    [Fact]
    public void A_bent_law_without_noise_gives_modulus_and_bend_back_and_the_straight_one_the_slope_in_the_middle()
    {
        FeltPassport felt = Study(KnownFelt.Exact with { WarpBend = 3 });

        FeltCurve curve = Assert.Single(felt.Curves, one => one.Direction == FeltDirection.Warp);
        Assert.True(curve.Bends);
        Assert.Equal(2.4, curve.Initial.Value, 9);
        Assert.Equal(3, curve.Bend.Value, 9);

        // The line of least squares through a parabola at equal steps has its slope in the middle: 2.4 (1 + 2 x 3 x 0.045).
        Assert.Equal(2.4 * 1.27, curve.Straight.Value, 9);
        Assert.True(felt.Lot.CurveBends);
    }

    [Fact]
    public void Ninety_five_of_a_hundred_intervals_hold_the_known_figure()
    {
        KnownFelt known = new();
        (FeltQuantity Quantity, double True)[] wanted =
        [
            (FeltQuantity.WarpModulus, known.Warp), (FeltQuantity.WeftModulus, known.Weft), (FeltQuantity.ShearModulus, known.Shear),
            (FeltQuantity.Poisson, known.Poisson), (FeltQuantity.NeutralLayer, known.NeutralLayer),
            (FeltQuantity.ShrinkWarp, known.ShrinkWarp),
        ];
        FeltPassport[] felts = [.. Enumerable.Range(1, Seeds).Select(seed => Study(known, seed))];
        foreach ((FeltQuantity quantity, double truth) in wanted)
        {
            double held = felts.Average(felt => Holds(felt.Values[quantity], truth) ? 1.0 : 0);
            Assert.InRange(held, 0.95 - Room, 0.95 + Room);
        }
    }

    [Fact]
    public void A_straight_curve_is_seldom_called_bent_and_a_bend_is_found_with_its_size()
    {
        double wrongly = Enumerable.Range(1, Seeds).Average(seed => Curve(Study(new KnownFelt(), seed)).Bends ? 1.0 : 0);
        FeltCurve[] bent = [.. Enumerable.Range(1, Seeds).Select(seed => Curve(Study(new KnownFelt { WarpBend = 3 }, seed)))];

        Assert.InRange(wrongly, 0, 0.05 + Room);
        Assert.True(bent.Average(curve => curve.Bends ? 1.0 : 0) > 0.95);
        Assert.InRange(bent.Average(curve => Holds(curve.Bend, 3) ? 1.0 : 0), 0.95 - Room, 0.95 + Room);
    }

    [Fact]
    public void Tension_and_compression_have_laws_apart_and_the_ball_gets_that_of_tension()
    {
        FeltReadings readings = KnownFelt.Exact.Readings(1);
        readings = readings with { Strips = [.. readings.Strips, .. KnownFelt.Exact.Pushed(1.1, 1)] };

        FeltPassport felt = PassportStudy.Run(readings, FitRange.Usual);

        FeltCurve pushed = Assert.Single(felt.Curves, curve => !curve.InTension);
        Assert.Equal(1.1, pushed.Straight.Value, 9);
        Assert.Equal(2.4, felt.Values[FeltQuantity.WarpModulus].Value, 9);
        Assert.Contains(felt.Remarks, remark => remark.Contains("Moduli in compression are told and not used", StringComparison.Ordinal));
    }

    [Fact]
    public void Only_strains_of_the_range_are_fitted()
    {
        FeltReadings readings = KnownFelt.Exact.Readings(1);
        StripReading[] slack =
        [
            .. readings.Strips.Select(r => r.Strain < 0.035 ? r with { ForceN = 0 } : r),
        ];

        FeltPassport felt = PassportStudy.Run(readings with { Strips = slack }, new FitRange { FromPercent = 4, ToPercent = 8 });

        Assert.Equal(2.4, felt.Values[FeltQuantity.WarpModulus].Value, 9);
    }

    [Fact]
    public void Marks_of_one_square_count_as_one_specimen()
    {
        FeltValue shrink = Study(new KnownFelt()).Values[FeltQuantity.ShrinkWarp];

        Assert.Equal(3, shrink.Specimens);
        Assert.Equal(2, shrink.Freedom);
    }

    [Fact]
    public void A_shrinkage_a_little_below_none_counts_as_none_and_this_is_told()
    {
        KnownFelt none = new() { ShrinkWarp = -0.02 };
        FeltPassport felt = Study(none, 3);
        FeltValue shrink = felt.Values[FeltQuantity.ShrinkWarp];

        Assert.True(PassportStudyTests.RawShrink(none, 3) < 0, "the seed has to give a shrinkage below 0");
        Assert.Equal(0, shrink.Value);
        Assert.Contains(felt.Remarks, remark => remark.StartsWith("felt.cureShrinkWarpPercent comes out at -", StringComparison.Ordinal));
    }

    [Fact]
    public void Felt_that_grows_for_certain_has_no_figure_that_a_ball_takes()
    {
        NoAnswerException error = Assert.Throws<NoAnswerException>(() => Study(KnownFelt.Exact with { ShrinkWarp = -2 }));

        Assert.Contains("felt.cureShrinkWarpPercent comes out at -2", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_strips_or_three_places_are_too_few()
    {
        FeltReadings all = KnownFelt.Exact.Readings(1);
        StripReading[] two = [.. all.Strips.Where(r => r.Specimen is not ("Warp 0" or "Warp 1" or "Warp 2"))];
        StripReading[] three = [.. all.Strips.Where(r => r.Specimen != "Weft 2" || r.Strain < 0.035)];

        Assert.Equal("warp in tension", Assert.Throws<InputException>(() =>
            PassportStudy.Run(all with { Strips = two }, FitRange.Usual)).Field);
        Assert.Equal("strip 'Weft 2'", Assert.Throws<InputException>(() =>
            PassportStudy.Run(all with { Strips = three }, FitRange.Usual)).Field);
    }

    private static double RawShrink(KnownFelt known, int seed) => known.Readings(seed).Squares.Average(r => r.ShrinkPercent);

    private static FeltPassport Study(KnownFelt known, int seed = 1) => PassportStudy.Run(known.Readings(seed), FitRange.Usual);

    private static FeltCurve Curve(FeltPassport felt) => felt.Curves.First(curve => curve.Direction == FeltDirection.Warp);

    private static bool Holds(FeltValue value, double truth) => Math.Abs(value.Value - truth) <= value.Interval;
}
