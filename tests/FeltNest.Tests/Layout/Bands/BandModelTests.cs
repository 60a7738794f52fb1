using FeltNest.Layout.Bands;
using FeltNest.Layout.Rows.Tables;
using Xunit;

namespace FeltNest.Tests.Layout.Bands;

/// <summary>Pitches of rows of discs by circle geometry, and the knapsack of bands against all choices.</summary>
public sealed class BandModelTests
{
    // Discs of 40 with a gap of 2: centres at least 42 apart, loose rows 36.37 apart.
    private static readonly PitchCurve Curve = new(new TiltRows(TurnedPart.Make(Shapes.Polygon(1000, 20), 0, 0.05, 2)));

    [Theory]
    [InlineData(45, "1")]
    [InlineData(77, "1 2")]
    [InlineData(190, "1 5 6 7 8")]
    public void A_width_takes_one_row_and_every_count_from_the_loose_one_on(double width, string counts) =>
        Assert.StartsWith(counts, string.Join(' ', Curve.Fits(width).Select(f => f.Rows)), StringComparison.Ordinal);

    [Theory]
    [InlineData(190)]
    [InlineData(150)]
    [InlineData(101)]
    public void Pitches_are_those_of_rows_that_touch(double width)
    {
        // Rows a step s apart: 2 sqrt(42^2 - s^2), at least 42, as long as rows next but one pass each other (s above 21).
        foreach ((int rows, double pitch) in Curve.Fits(width).Where(f => f.Rows > 1 && (width - 40) / (f.Rows - 1) > 21.5))
        {
            double step = (width - 40) / (rows - 1);
            Assert.Equal(Math.Max(42, 2 * Math.Sqrt(Math.Max(0, (42 * 42) - (step * step)))), pitch, 0.35);
        }

        (int best, double density) = Curve.Best(width);
        Assert.Equal(Curve.Fits(width).Max(f => f.Rows / f.Pitch), density);
        Assert.Contains(Curve.Fits(width), f => f.Rows == best && f.Rows / f.Pitch == density);
    }

    [Fact]
    public void Nothing_fits_below_the_height_of_a_row()
    {
        Assert.Empty(Curve.Fits(39.9));
        Assert.Equal((0, 0), Curve.Best(39.9));
    }

    [Theory]
    [InlineData(260, 2, 2)]
    [InlineData(260, 11, 2)]
    [InlineData(260, 2, 3)]
    [InlineData(230, 25, 3)]
    public void The_first_choice_is_the_best_of_all(double room, double gap, int most)
    {
        BandWidths widths = BandWidths.Of([Curve], room, 130);
        double[] first = BandModel.Best(widths, room, gap, most, 1, 5).First();
        Assert.InRange(first.Length, 2, most);
        Assert.True(first.Sum() + ((first.Length - 1) * gap) <= room + 1e-9);
        double best = 0;
        Extend(0, 0, 0, 0);
        Assert.Equal(best, first.Sum(w => widths.Densities[(int)Math.Round(w / widths.Spacing)]), 1e-8);

        // Bands of growing width, one gap less than there are bands.
        void Extend(int bands, int least, double used, double density)
        {
            best = bands >= 2 ? Math.Max(best, density) : best;
            for (int i = least; bands < most && i <= 130 && used + (i * widths.Spacing) <= room + 1e-9; i++)
            {
                if (widths.Densities[i] > 0)
                {
                    Extend(bands + 1, i, used + (i * widths.Spacing) + gap, density + widths.Densities[i]);
                }
            }
        }
    }

    [Fact]
    public void A_later_choice_leaves_the_neighbourhood_of_the_earlier_ones()
    {
        BandWidths widths = BandWidths.Of([Curve], 260, 130);
        double[][] choices = [.. BandModel.Best(widths, 260, 2, 2, 4, 9)];
        Assert.Equal(4, choices.Length);
        for (int n = 1; n < 4; n++)
        {
            Assert.All(choices.Take(n), earlier => Assert.Contains(choices[n], width => earlier.All(w => Math.Abs(w - width) >= 9)));
            Assert.True(Worth(choices[n]) <= Worth(choices[n - 1]) + 1e-8);
        }

        double Worth(double[] choice) => choice.Sum(w => widths.Densities[(int)Math.Round(w / widths.Spacing)]);
    }

    [Fact]
    public void Widths_give_their_rows()
    {
        BandWidths widths = BandWidths.Of([Curve], 260, 130);
        Assert.Equal((2, 131), (widths.Spacing, widths.Densities.Length));
        Assert.Equal(0, widths.Densities[19]);
        Assert.Equal(1 / 42.0, widths.Densities[21], 1e-3);
        Assert.Null(widths.Rows(39));
        Assert.Equal(2, widths.Rows(77)!.Rows);
        Assert.Equal(42, widths.Rows(77)!.Pitch, 0.2);
    }
}
