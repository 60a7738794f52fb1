using FeltNest.Ball;
using FeltNest.Panel;
using FeltNest.Panel.Disc;
using FeltNest.Panel.Domain;
using FeltNest.Panel.Elastic;
using FeltNest.Panel.Felt;
using FeltNest.Panel.Flatten;
using FeltNest.Seam;
using Xunit;

namespace FeltNest.Tests.Panel.Flatten;

public sealed class StrainSamplerTests
{
    private static readonly FlatMap Map =
        new ElasticFlattening(FeltLaw.Isotropic(1, 0.3), EdgeRule.Free, null, 17).Flatten(new SeamDomain(TwoHarmonicSeam.ForWaist(1))).Map;

    [Theory]
    [InlineData(0.5, 0.4)]
    [InlineData(-0.7, 0.6)]
    [InlineData(0.1, -0.9)]
    public void A_short_step_in_a_principal_direction_is_stretched_as_stated(double x, double y)
    {
        StrainSample sample = new StrainSampler(Map, 1).At(x, y);

        Assert.Equal(1 + (sample.MajorPercent / 100), Stretch(sample.MajorAngle), 1e-6);
        Assert.Equal(1 + (sample.MinorPercent / 100), Stretch(sample.MajorAngle + (Math.PI / 2)), 1e-6);
        Assert.True(Stretch(sample.MajorAngle) > Stretch(sample.MajorAngle + 0.5));

        double Stretch(double angle)
        {
            // The step of the disc that moves the flat place by a short length in this direction.
            const double length = 1e-5;
            FlatJet flat = Map.At(x, y);
            double det = (flat.Ux * flat.Vy) - (flat.Uy * flat.Vx);
            double du = length * Math.Cos(angle);
            double dv = length * Math.Sin(angle);
            double dx = ((flat.Vy * du) - (flat.Uy * dv)) / det;
            double dy = ((flat.Ux * dv) - (flat.Vx * du)) / det;
            return (Map.Domain.At(
                x + dx,
                y + dy).Point - Map.Domain.At(
                    x - dx, y - dy).Point).Length / (Map.At(x + dx, y + dy).Place - Map.At(x - dx, y - dy).Place).Length;
        }
    }

    [Fact]
    public void The_greatest_value_is_found_between_the_samples()
    {
        StrainSampler sampler = new(Map, 1);

        double coarse = sampler.Greatest(sampler.Field(9, 16), sample => sample.MajorPercent);
        double fine = sampler.Greatest(sampler.Field(61, 240), sample => sample.MajorPercent);

        Assert.Equal(fine, coarse, 1e-9);
    }
}
