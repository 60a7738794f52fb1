using FeltNest.Ball;
using FeltNest.Panel.Disc;
using FeltNest.Panel.Domain;
using FeltNest.Panel.Elastic;
using FeltNest.Panel.Felt;
using FeltNest.Panel.Flatten;
using Xunit;

namespace FeltNest.Tests.Panel.Flatten;

public sealed class CapFlatteningTests
{
    private static readonly FeltLaw Felt = FeltLaw.Isotropic(1, 0.3);

    [Theory]
    [InlineData(60, 0.009242176, 1.00482392, 1.16027072, 0.95709773)]
    [InlineData(45, 0.001762403, 0.76653851, 1.08404915, 0.97462108)]
    public void An_elastic_cap_keeps_the_values_of_the_radial_equation(
        double degrees, double energy, double radius, double hoop, double centre)
    {
        // Values: an independent solver of the ordinary differential equation (own derivation), E = 1, t = 1, nu = 0.3.
        CapDomain cap = new(degrees * Math.PI / 180);

        FlatMap map = new ElasticFlattening(Felt, EdgeRule.Free, null, 17).Flatten(cap).Map;

        double reach = map.At(1, 0).Place.X;
        Assert.Equal(energy, PanelEnergy.Of(map, Felt), 9);
        Assert.Equal(radius, reach, 8);
        Assert.Equal(hoop, reach / Math.Sin(cap.Radius), 8);
        Assert.Equal(centre, map.At(0, 0).Ux / cap.Radius, 8);
    }

    [Fact]
    public void A_shallow_cap_follows_the_closed_form_of_small_strain()
    {
        // Edge hoop strain a^2/8 and energy pi E t a^6/384: own derivation from small-strain plane stress, within 0.2 % at a = 0.1.
        const double a = 0.1;

        FlatMap map = new ElasticFlattening(Felt, EdgeRule.Free, null, 13).Flatten(new CapDomain(a)).Map;

        Assert.InRange(((map.At(1, 0).Place.X / Math.Sin(a)) - 1) / (a * a / 8), 0.998, 1.002);
        Assert.InRange(PanelEnergy.Of(map, Felt) / (Math.PI * Math.Pow(a, 6) / 384), 0.998, 1.002);
    }

    [Theory]
    [InlineData(20)]
    [InlineData(60)]
    [InlineData(85)]
    public void A_conformal_cap_has_the_radius_and_scale_of_the_stereographic_map(double degrees)
    {
        // With scale 1 on the edge the flat radius is sin a and the scale at the pole cos^2(a/2): stereographic projection.
        CapDomain cap = new(degrees * Math.PI / 180);

        FlatMap map = new ConformalFlattening(21).Flatten(cap).Map;

        Assert.Equal(Math.Sin(cap.Radius), map.At(0, 1).Place.Y, 9);
        Assert.Equal(Math.Pow(Math.Cos(cap.Radius / 2), 2), map.At(0, 0).Ux / cap.Radius, 9);
    }

    [Fact]
    public void A_felt_twice_as_stiff_holds_twice_the_energy_in_the_same_shape()
    {
        CapDomain cap = new(1);

        FlatMap soft = new ElasticFlattening(Felt, EdgeRule.Free, null, 13).Flatten(cap).Map;
        FlatMap stiff = new ElasticFlattening(Felt.Scaled(2), EdgeRule.Free, null, 13).Flatten(cap).Map;

        Assert.Equal(soft.At(1, 0).Place.X, stiff.At(1, 0).Place.X, 11);
        Assert.Equal(2 * PanelEnergy.Of(soft, Felt), PanelEnergy.Of(stiff, Felt.Scaled(2)), 12);
    }
}
