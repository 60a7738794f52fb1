using FeltNest.Drawing;
using FeltNest.Drawing.Strain;
using Xunit;

namespace FeltNest.Tests.Drawing;

public sealed class StrainScaleTests
{
    [Theory]
    // OKLab of the sRGB primaries as CSS Color Module Level 4 lists them (from memory).
    [InlineData(0xFFFFFF, 1, 0, 0)]
    [InlineData(0x000000, 0, 0, 0)]
    [InlineData(0xFF0000, 0.62796, 0.22486, 0.12585)]
    [InlineData(0x00FF00, 0.86644, -0.23389, 0.17950)]
    [InlineData(0x0000FF, 0.45201, -0.03246, -0.31153)]
    public void Oklab_primaries_come_out_as_published(int rgb, double lightness, double a, double b) =>
        Assert.Equal(Colour.Of(rgb), Colour.FromOkLab(lightness, a, b));

    [Theory]
    [InlineData(0.7, 0.1, 7)]
    [InlineData(7.9, 1, 8)]
    [InlineData(8.1, 2, 5)]
    [InlineData(14.7, 2, 8)]
    [InlineData(30, 5, 6)]
    [InlineData(0, 0.1, 1)]
    public void Bands_are_of_round_width_and_reach_the_greatest_strain(double greatest, double step, int bands)
    {
        StrainScale scale = StrainScale.Reaching(greatest);

        Assert.Equal((step, bands), (scale.Step, scale.Bands));
    }

    [Fact]
    public void Steps_of_one_side_look_equally_far_apart()
    {
        StrainScale scale = StrainScale.Reaching(16);
        for (int side = -1; side <= 0; side++)
        {
            double[] steps = [.. Enumerable.Range(0, 7).Select(k => OkLab.Distance(At(scale, side, k), At(scale, side, k + 1)))];
            // Rounding to 8 bits moves a step by up to about 2e-3.
            Assert.All(steps, step => Assert.Equal(steps.Average(), step, 4e-3));
            Assert.True(steps.Average() > 0.05);
        }
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Stretch_and_compression_stay_apart_for_colour_blind_readers(bool deuteranope)
    {
        StrainScale scale = StrainScale.Reaching(16);
        for (int k = 0; k < scale.Bands; k++)
        {
            // Blue to yellow is what these readers keep: the two sides lie on either side of it, and further apart the greater the strain.
            double stretch = OkLab.Seen(scale.OfBand(k), deuteranope).B;
            double push = OkLab.Seen(scale.OfBand(-k - 1), deuteranope).B;
            Assert.True(stretch > 0 && push < 0, $"band {k}: {stretch:0.000}, {push:0.000}");
            Assert.True(stretch - push > 0.018 * (k + 1), $"band {k}: {stretch - push:0.000}");
        }
    }

    [Fact]
    public void Greater_strain_is_darker_on_both_sides()
    {
        StrainScale scale = StrainScale.Reaching(16);
        for (int k = 0; k < scale.Bands - 1; k++)
        {
            Assert.True(OkLab.Of(scale.OfBand(k)).L > OkLab.Of(scale.OfBand(k + 1)).L);
            Assert.True(OkLab.Of(scale.OfBand(-k - 1)).L > OkLab.Of(scale.OfBand(-k - 2)).L);
        }
    }

    private static (double L, double A, double B) At(StrainScale scale, int side, int k) => OkLab.Of(scale.OfBand(side < 0 ? -k - 1 : k));
}
