using FeltNest.Ball.Passport;
using Xunit;

namespace FeltNest.Tests.Ball.Passport;

/// <summary>The formulas of the felt's tests against worked figures.</summary>
public sealed class FeltFormulaTests
{
    // Worked from Jones (Mechanics of Composite Materials, 2nd ed. 1999, section 2.6): isotropic sheet has G = E/2(1 + nu) and E45 = E;
    // glass and epoxy 38.6, 8.27, 0.26 and 4.14 GPa have E45 = 10.6695.
    [Theory]
    [InlineData(1, 1, 0.3, 1, 0.384615, 1e-6)]
    [InlineData(3, 2, 0.3, 2.2, 0.84399, 1e-5)]
    [InlineData(38.6, 8.27, 0.26, 10.6695, 4.14, 1e-4)]
    public void The_shear_modulus_follows_from_strips_at_0_45_and_90_degrees(
        double warp, double weft, double poisson, double bias, double shear, double room)
    {
        (FeltValue value, double gain) = ShearFit.Of(Figure(warp), Figure(weft), Figure(bias), Figure(poisson));

        Assert.Equal(shear, value.Value, room);
        Assert.Equal(4 / bias * shear, gain, 10 * room);
    }

    [Fact]
    public void The_spread_of_the_shear_modulus_is_that_of_its_parts_by_differences()
    {
        FeltValue[] parts = [Figure(3, 0.02), Figure(2, 0.03), Figure(2.2, 0.01), Figure(0.3, 0.004)];
        double[] means = [.. parts.Select(part => part.Value)];
        double variance = 0;
        for (int i = 0; i < parts.Length; i++)
        {
            const double step = 1e-6;
            double[] up = [.. means];
            up[i] += step;
            double slope = (Shear(up) - Shear(means)) / step;
            variance += slope * slope * parts[i].Spread!.Value * parts[i].Spread!.Value;
        }

        Assert.Equal(Math.Sqrt(variance), ShearFit.Of(parts[0], parts[1], parts[2], parts[3]).Value.Spread!.Value, 1e-6);

        static double Shear(double[] of) => 1 / ((4 / of[2]) - ((1 - of[3]) / of[0]) - ((1 - (of[3] * of[1] / of[0])) / of[1]));
    }

    [Fact]
    public void Freedoms_of_like_spreads_add()
    {
        // Satterthwaite 1946: (s2 + s2)^2 / (s4/f + s4/f) = 2f.
        FeltValue joined = SpecimenMean.Joined(0, [(Figure(1, 0.1), 1), (Figure(2, 0.1), -1)]);

        Assert.Equal(8, joined.Freedom!.Value, 9);
        Assert.Equal(0.1 * Math.Sqrt(2), joined.Spread!.Value, 9);
    }

    [Fact]
    public void A_mean_of_five_has_the_t_interval_of_the_tables()
    {
        // Student's t, two-sided 5 %, 4 freedoms: 2.776 (Abramowitz and Stegun 1964, table 26.10). 1 to 5: standard deviation root 2.5.
        FeltValue mean = SpecimenMean.Of([1, 2, 3, 4, 5]);

        Assert.Equal(3, mean.Value);
        Assert.Equal(Math.Sqrt(2.5), mean.SpecimenSpread!.Value, 12);
        Assert.Equal(2.776 * Math.Sqrt(0.5), mean.Interval!.Value, 3);
    }

    // A strip that closes on a cylinder of radius 32, 3 thick: L = 2 pi (R + n t).
    [Theory]
    [InlineData(201.06, 0)]
    [InlineData(206.72, 0.3)]
    [InlineData(210.49, 0.5)]
    public void The_neutral_layer_follows_from_the_length_that_closes(double length, double layer) =>
        Assert.Equal(layer, Wrap(length, CoreShape.Cylinder).NeutralLayer, 3);

    [Fact]
    public void On_a_ball_a_strip_ten_wide_closes_eight_tenths_sooner()
    {
        // 1 - w2/24R2 of the length, 0.41 % with w = 10 and R = 32; 1 mm of length is 0.053 of n.
        const double closing = 206.72;
        double shortened = closing * (1 - (100 / (24 * 32.0 * 32)));

        Assert.Equal(0.84, closing - shortened, 2);
        Assert.Equal(0.3, Wrap(shortened, CoreShape.Ball).NeutralLayer, 3);
        Assert.Equal(
            0.053, Wrap(closing + 1, CoreShape.Cylinder).NeutralLayer - Wrap(closing, CoreShape.Cylinder).NeutralLayer, 3);
    }

    // Edge strain -a2/8R2 on R = 32, own derivation from least energy.
    [Theory]
    [InlineData(20, 1.2)]
    [InlineData(30, 2.7)]
    [InlineData(40, 4.9)]
    [InlineData(50, 7.6)]
    [InlineData(60, 11.0)]
    public void A_disc_is_pressed_together_along_its_edge(double diameter, double percent) =>
        Assert.Equal(percent, Disc(diameter, false).EdgePercent(0), 1);

    [Fact]
    public void The_edge_limit_lies_between_the_greatest_flat_and_the_least_puckered_disc()
    {
        FeltEdge edge = EdgeBracket.Of(
            [Disc(30, false), Disc(40, false), Disc(40, false), Disc(50, true), Disc(60, true)], 0);

        Assert.Equal((40, 50), (edge.Flat.DiscDiameterMm, edge.Puckered!.DiscDiameterMm));
        Assert.Equal(100.0 * 20 * 20 / (8 * 32 * 32), edge.FlatPercent, 9);
        Assert.False(edge.Contradict);

        // 2 of 2 flat: with a share p puckering that has the chance (1 - p)^2 = 0.05.
        Assert.Equal(2, edge.FlatDiscs);
        Assert.Equal(0.05, Math.Pow(1 - (edge.PuckerShareAtMostPercent / 100), 2), 9);
    }

    [Fact]
    public void Discs_that_contradict_widen_the_bracket()
    {
        FeltEdge edge = EdgeBracket.Of([Disc(30, false), Disc(40, true), Disc(50, false), Disc(60, true)], 0);

        Assert.True(edge.Contradict);
        Assert.Equal((30, 60), (edge.Flat.DiscDiameterMm, edge.Puckered!.DiscDiameterMm));
    }

    [Fact]
    public void Discs_that_all_pucker_have_no_limit_and_discs_that_all_lie_flat_an_open_one()
    {
        Assert.Throws<NoAnswerException>(() => EdgeBracket.Of([Disc(30, true), Disc(40, true)], 0));
        Assert.Null(EdgeBracket.Of([Disc(30, false), Disc(40, false)], 0).PuckeredPercent);
    }

    private static FeltValue Figure(double value, double spread = 0.01) => new()
    {
        Value = value,
        SpecimenSpread = null,
        Spread = spread,
        Interval = 3 * spread,
        Freedom = 4,
        Specimens = 5,
    };

    private static WrapReading Wrap(double length, CoreShape shape) => new()
    {
        Specimen = "N",
        LengthMm = length,
        WidthMm = 10,
        Shape = shape,
        CoreDiameterMm = 64,
        ThicknessMm = 3,
    };

    private static DiscReading Disc(double diameter, bool puckered) => new()
    {
        Specimen = "D",
        DiscDiameterMm = diameter,
        CoreDiameterMm = 64,
        ThicknessMm = 3,
        Puckered = puckered,
    };
}
