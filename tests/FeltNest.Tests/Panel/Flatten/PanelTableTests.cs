using FeltNest.Ball;
using FeltNest.Panel;
using FeltNest.Panel.Felt;
using FeltNest.Seam;
using Xunit;

namespace FeltNest.Tests.Panel.Flatten;

/// <summary>Flat panels of the two-harmonic seam at unit radius against values of independent solvers (spectral elements and Newton,
/// settled to 7 digits; own derivation): E = 1, t = 1, nu = 0.3.</summary>
public sealed class PanelTableTests
{
    // The sphere is taken large, so that the arcs' 0.01 mm is nothing beside the digits compared.
    private const double Radius = 1000;

    private const double Digits = 1e-5;

    [Theory]
    [InlineData(0.25, FlatteningMethod.Conformal, EdgeRule.Free, 4.8061398, 4.3354848, 1.341995, 0.9295171)]
    [InlineData(0.25, FlatteningMethod.Elastic, EdgeRule.Free, 6.322744, 4.975796, 1.539712, 1.055083)]
    [InlineData(0.25, FlatteningMethod.Elastic, EdgeRule.Mated, 6.326902, 4.959262, 1.543676, 1.065561)]
    [InlineData(0.25, FlatteningMethod.Elastic, EdgeRule.True, 5.409545, 4.298132, 1.463840, 1.202750)]
    [InlineData(1.0 / 3, FlatteningMethod.Conformal, EdgeRule.Free, 4.9874419, 4.7940055, 1.374027, 0.6451650)]
    [InlineData(1.0 / 3, FlatteningMethod.Elastic, EdgeRule.Free, 6.317284, 5.367614, 1.564302, 0.682752)]
    [InlineData(1.0 / 3, FlatteningMethod.Elastic, EdgeRule.Mated, 6.317655, 5.366137, 1.565957, 0.682311)]
    [InlineData(1.0 / 3, FlatteningMethod.Elastic, EdgeRule.True, 5.536236, 4.755017, 1.473796, 0.805926)]
    public void Area_length_width_and_waist_agree(
        double beta, FlatteningMethod method, EdgeRule edge, double area, double length, double width, double waist)
    {
        FlatPanel panel = Flat(beta, method, edge);

        Near(area, panel.AreaMm2 / (Radius * Radius), Digits);
        Near(length, panel.LengthMm / Radius, Digits);
        Near(width, panel.WidthMm / Radius, Digits);
        Near(waist, panel.WaistMm / Radius, Digits);
    }

    [Theory]
    [InlineData(0.25, EdgeRule.Free, 0.012205157, 0.9398, 1.2010)]
    [InlineData(0.25, EdgeRule.Mated, 0.013686604, 0.9293, 1.1728)]
    [InlineData(0.25, EdgeRule.True, 0.117259550, 0.7886, 1.1624)]
    [InlineData(1.0 / 3, EdgeRule.Free, 0.010527067, 0.9449, 1.1825)]
    [InlineData(1.0 / 3, EdgeRule.Mated, 0.010643307, 0.9449, 1.1745)]
    [InlineData(1.0 / 3, EdgeRule.True, 0.09293033, 0.8371, 1.2318)]
    public void Energy_and_the_range_of_flat_over_sphere_agree(double beta, EdgeRule edge, double energy, double least, double greatest)
    {
        FlatPanel panel = Flat(beta, FlatteningMethod.Elastic, edge);

        Near(energy, panel.Strain.EnergyNmm / (Radius * Radius), 1e-6);
        Assert.Equal(least, 1 / (1 + (panel.Strain.MaxStretchPercent / 100)), 4);
        Assert.Equal(greatest, 1 / (1 - (panel.Strain.MaxCompressionPercent / 100)), 4);
    }

    [Theory]
    [InlineData(0.25, 1.1110)]
    [InlineData(1.0 / 3, 1.0625)]
    public void Mated_edges_are_pushed_alike_at_waist_and_tip(double beta, double ratio)
    {
        FlatPanel panel = Flat(beta, FlatteningMethod.Elastic, EdgeRule.Mated);

        Assert.Equal(ratio, 1 / (1 + (panel.EdgeMap[0].StretchPercent / 100)), 4);
        Assert.Equal(ratio, 1 / (1 + (panel.EdgeMap[panel.EdgeMap.Count / 4].StretchPercent / 100)), 4);
        Assert.InRange(panel.Strain.EdgeMismatchPercent, 0, 1e-3);
    }

    [Theory]
    [InlineData(0.25, 0.7820304)]
    [InlineData(1.0 / 3, 0.7914160)]
    public void The_conformal_panel_has_scale_1_on_the_edge_and_the_stated_least_scale(double beta, double least)
    {
        FlatPanel panel = Flat(beta, FlatteningMethod.Conformal, EdgeRule.Free);

        Near(least, 1 / (1 + (panel.Strain.MaxStretchPercent / 100)), Digits);
        Assert.All(panel.EdgeMap, place => Assert.Equal(0, place.StretchPercent, 3));
        Assert.All(panel.Field.Samples, sample => Assert.Equal(sample.MajorPercent, sample.MinorPercent, 1));
    }

    [Theory, Trait("tier", "long")]
    [InlineData(22)]
    [InlineData(47)]
    [InlineData(60)]
    [InlineData(88)]
    public void More_asked_of_the_edge_costs_more_energy_and_every_method_more_than_the_free_one(double waistDeg)
    {
        double Energy(FlatteningMethod method, EdgeRule edge) =>
            PanelFlattener.Flatten(Request(TwoHarmonicSeam.ForWaist(waistDeg * Math.PI / 180), method, edge)).Strain.EnergyNmm;
        double free = Energy(FlatteningMethod.Elastic, EdgeRule.Free);
        double mated = Energy(FlatteningMethod.Elastic, EdgeRule.Mated);
        double kept = Energy(FlatteningMethod.Elastic, EdgeRule.True);

        Assert.True(free < mated && mated < kept, $"{free} {mated} {kept}");
        Assert.True(kept < Energy(FlatteningMethod.Conformal, EdgeRule.Free));
        Assert.True(free < Energy(FlatteningMethod.Equidistant, EdgeRule.Free));
    }

    [Fact]
    public void The_equidistant_panel_keeps_axis_waist_and_width()
    {
        TwoHarmonicSeam seam = TwoHarmonicSeam.ForWaist(Math.PI / 3);

        FlatPanel panel = PanelFlattener.Flatten(Request(seam, FlatteningMethod.Equidistant, EdgeRule.Free));

        Near(seam.LengthAngle, panel.LengthMm / Radius, 1e-9);
        Near(seam.WaistAngle, panel.WaistMm / Radius, 1e-9);
        Near(seam.WidthAngle, panel.WidthMm / Radius, 1e-9);
    }

    internal static PanelRequest Request(SeamCurve seam, FlatteningMethod method, EdgeRule edge) =>
        new()
        {
            RadiusMm = Radius,
            Seam = seam,
            Method = method,
            Edge = edge,
            Law = FeltLaw.Isotropic(1, 0.3),
            SeamGapMm = 0,
            ShrinkWarp = 0,
            ShrinkWeft = 0,
            WarpAngle = null,
        };

    private static FlatPanel Flat(double beta, FlatteningMethod method, EdgeRule edge) =>
        PanelFlattener.Flatten(Request(TwoHarmonicSeam.ForWaist(2 * Math.Asin(1 - (2 * beta))), method, edge));

    private static void Near(double expected, double actual, double relative) =>
        Assert.InRange(actual / expected, 1 - relative, 1 + relative);
}
