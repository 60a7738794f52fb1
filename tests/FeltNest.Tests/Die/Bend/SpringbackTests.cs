using FeltNest.Die.Bend;
using FeltNest.Files;
using FeltNest.Files.Dies;
using FeltNest.Tests.Files;
using Xunit;

namespace FeltNest.Tests.Die.Bend;

public sealed class SpringbackTests
{
    // A textbook's example (S. Kalpakjian, S. R. Schmid; from memory, worked out again): radius 0.5 in, 0.0359 in thick, 40 ksi on 29 Msi:
    // 0.942, so 0.531 in are left.
    [Fact]
    public void The_textbooks_sheet_keeps_0_942_of_its_angle()
    {
        double share = Springback.ShareLeft(0.5, 40e3 / 29e6, 0.0359);

        Assert.Equal(0.942, share, 5e-4);
        Assert.Equal(0.531, 0.5 / share, 5e-4);
    }

    // Elastic, perfectly plastic bending worked out apart, by a sum over the thickness: the moment of a strip whose fibres yield at Y, over
    // E and the moment of inertia, is the curvature that springs back.
    [Theory]
    [InlineData(10, 12.56)]
    [InlineData(20, 33.33)]
    public void The_formula_is_pure_bending(double radius, double left)
    {
        const double thick = 0.71;
        const double yield = 1000;
        const double modulus = 206_000;
        const int slices = 200_000;
        double moment = 0;
        for (int i = 0; i < slices; i++)
        {
            double high = thick * (((i + 0.5) / slices) - 0.5);
            moment += Math.Clamp(modulus * high / radius, -yield, yield) * high * thick / slices;
        }

        double sprung = 1 / ((1 / radius) - (12 * moment / (modulus * thick * thick * thick)));

        Assert.Equal(left, sprung, 5e-3);
        Assert.Equal(sprung, radius / Springback.ShareLeft(radius, yield / modulus, thick), 1e-3);
    }

    // To be left with 20 mm the middle is formed to 14.23; above 0.5 E t / Y = 73.1 mm nothing is left.
    [Fact]
    public void A_bend_is_formed_tighter_so_that_it_springs_back_right()
    {
        Springback rule = new()
        {
            ThicknessMm = 0.71,
            YieldOverModulus = 1000.0 / 206_000,
            ScatterDeg = 0,
            Tests = [Test(5, 90, 80), Test(20, 90, 60)],
        };
        BendSetting set = rule.For(-90, 20 - 0.355);

        Assert.Equal(14.23, set.InsideRadiusMm + 0.355, 5e-3);
        Assert.Equal(-90 * 20 / (set.InsideRadiusMm + 0.355), set.TurnDeg, 1e-6);
        Assert.True(set.Tested);
        Assert.False(rule.For(90, 70).Tested);
        Assert.Equal(0, Springback.ShareLeft(73.2, rule.YieldOverModulus, 0.71));
        Assert.True(Springback.ShareLeft(73.0, rule.YieldOverModulus, 0.71) > 0);
    }

    // Test bends made by the formula with Y/E of 0.005 give it back; those of the demo were made with 0.0049 and half a degree of error.
    [Fact]
    public void A_fit_finds_what_the_tests_were_made_with()
    {
        BendTest[] made =
        [
            .. new[] { 3.0, 8, 15, 25 }.Select(r => Test(r, 90, 90 * Springback.ShareLeft(r + 0.355, 0.005, 0.71))),
        ];
        Springback exact = SpringbackFit.Of(made, 0.71);
        Springback demo = SpringbackFit.Of(
            BendTestsReader.Read(InputText.OfFile(RepositoryFile.PathOf("shapes", "demo", "dies", "test-bends.csv"))), 0.71);

        Assert.Equal(0.005, exact.YieldOverModulus, 1e-8);
        Assert.Equal(0, exact.ScatterDeg, 1e-4);
        Assert.Equal(0.0049, demo.YieldOverModulus, 5e-5);
        Assert.InRange(demo.ScatterDeg, 0.1, 0.5);
    }

    [Theory]
    [InlineData("insideRadiusMm,angleSetDeg,angleGotDeg\n5,90,80\n5,60,50\n", "has 2 test bends: at least 3 are needed for a fit")]
    [InlineData("insideRadiusMm,angleSetDeg,angleGotDeg\n5,90,80\n5,60,61\n5,60,50\n", "61 is more than the 60 it was formed to")]
    public void Test_bends_that_cannot_be_fitted_are_refused(string text, string told) =>
        Assert.Contains(
            told,
            Assert.Throws<InputException>(() =>
                BendTestsReader.Read(InputText.Of("bends.csv", System.Text.Encoding.UTF8.GetBytes(text)))).Message);

    private static BendTest Test(double inside, double set, double got) =>
        new() { InsideRadiusMm = inside, AngleSetDeg = set, AngleGotDeg = got };
}
