using System.Text.Json;
using FeltNest.Ball;
using FeltNest.Design;
using FeltNest.Design.SeamDesign;
using FeltNest.Files;
using FeltNest.Files.Balls;
using FeltNest.Files.Check;
using FeltNest.Files.Studies;
using FeltNest.Layout;
using FeltNest.Layout.Limits;
using FeltNest.Tests.Files;
using Xunit;

namespace FeltNest.Tests.Design.SeamDesign;

public sealed class SeamFrontStudyTests
{
    private static readonly BallSpec Ball = BallReader.Read(RepositoryFile.PathOf("shapes", "balls", "type-2.json")).Ball;

    [Fact, Trait("tier", "long")]
    public void Shaped_seams_take_less_felt_than_the_best_of_many_blind_trials()
    {
        // The best of 2,500 blind trials at the same limits, m2 for a thousand balls (an earlier search of our own, four numbers): in the
        // plane, and on a roll of 1500 mm.
        (double Limit, double Plane, double Roll)[] bar = [(6.5, 14.65, 15.04), (8, 14.50, 14.94)];

        SeamFront front = SeamFrontStudy.Run(Question([6.5, 8]), Lay, null, TestContext.Current.CancellationToken);

        SeamMark[] shaped = [.. front.Of(SeamFamily.Shaped)];
        Assert.Equal(bar.Length, shaped.Length);
        Assert.All(bar, (wanted, i) =>
        {
            Assert.Equal(wanted.Limit, shaped[i].StretchLimitPercent);
            Assert.InRange(shaped[i].Plane.PlaneSquareMetres, 0, wanted.Plane);
            Assert.InRange(shaped[i].Roll.RollSquareMetres, 0, wanted.Roll);
        });
        Assert.All(front.Marks, mark => Assert.All(new[] { mark.Plane, mark.Roll }, choice =>
        {
            Assert.InRange(choice.Panel.Strain.MaxStretchPercent, 0, mark.StretchLimitPercent);
            Assert.InRange(choice.Panel.Strain.MaxCompressionPercent, 0, 16);
            Assert.InRange(choice.Panel.Strain.EdgeMaxCompressionPercent, 0, 15.01);
            Assert.False(choice.Panel.Strain.HasTipSpike);
        }));
        using JsonDocument json = JsonDocument.Parse(SeamDesignWriter.Json(front));
        StatedFile stated = new("seam-design.json", SchemaName.SeamDesign, json.RootElement);
        FigureCheck.Run(stated);
        Assert.Empty(stated.Violations);
    }

    [Fact, Trait("tier", "long")]
    public void Six_numbers_that_keep_the_fitter_s_gap_take_less_felt_than_the_best_of_many_blind_trials()
    {
        // The best of the same blind trials with a gap of at most 0.45 mm felt by the fitter, m2 for a thousand balls.
        const double plane = 14.69;
        const double roll = 15.06;
        SeamQuestion question = Question([8]) with
        {
            Waves = 5,
            Limits = new SeamLimits { StretchPercent = 0, CompressionPercent = 16, MostGapMm = 0.45 },
        };

        SeamMark mark = SeamFrontStudy.Run(question, Lay, null, TestContext.Current.CancellationToken)
            .Of(SeamFamily.Shaped).Single();

        Assert.InRange(mark.Plane.PlaneSquareMetres, 0, plane);
        Assert.InRange(mark.Roll.RollSquareMetres, 0, roll);
        Assert.All(new[] { mark.Plane, mark.Roll }, choice => Assert.InRange(choice.Panel.Fit!.LargestGapMm!.Value, 0, 0.45));
    }

    [Fact, Trait("tier", "long")]
    public void An_angle_to_the_warp_that_is_free_costs_no_felt_and_the_panels_lie_at_it()
    {
        BallSpec woven = BallReader.Read(RepositoryFile.PathOf("shapes", "balls", "type-2-woven.json")).Ball;
        SeamQuestion question = Question([12]) with { Ball = woven, Waves = 2, Limits = new SeamLimits { StretchPercent = 0 } };

        SeamFront held = SeamFrontStudy.Run(question, AsDesigned, null, TestContext.Current.CancellationToken);
        SeamFront free =
            SeamFrontStudy.Run(question with { TurnsWarp = true }, AsDesigned, null, TestContext.Current.CancellationToken);

        SeamMark best = free.Of(SeamFamily.Shaped).Single();
        Assert.InRange(best.Plane.PlaneSquareMetres, 0, held.Of(SeamFamily.Shaped).Single().Plane.PlaneSquareMetres * (1 + 1e-4));
        Assert.InRange(best.Roll.RollSquareMetres, 0, held.Of(SeamFamily.Shaped).Single().Roll.RollSquareMetres * (1 + 1e-4));
        Assert.NotEqual(woven.Panel.WarpAngleDeg!.Value, best.Roll.Ball.Panel.WarpAngleDeg!.Value, 0.1);
        RollLayout laid = LayoutSearch.Of(
            AsDesigned(CoverPart.Of(best.Roll.Ball, best.Roll.Panel)), TestContext.Current.CancellationToken);
        Assert.All(laid.Bands[0].Repeat.Panels, panel =>
            Assert.Equal(0, Math.IEEERemainder(panel.AngleDeg - best.Roll.Ball.Panel.WarpAngleDeg.Value, 180), 1e-6));
    }

    [Fact]
    public void An_angle_that_does_not_matter_is_not_sought() =>
        Assert.Equal(AskedFor.WarpAngle, Assert.Throws<InputException>(() =>
            SeamFrontStudy.Run(Question([8]) with { TurnsWarp = true }, Lay, null, TestContext.Current.CancellationToken)).Asked);

    [Fact]
    public void A_panel_without_strains_is_refused()
    {
        BallSpec ball = Ball with { Panel = Ball.Panel with { Flattening = FlatteningMethod.Conformal } };

        Assert.Equal(
            "panel.flattening",
            Assert.Throws<InputException>(() =>
                SeamFrontStudy.Run(Question([8]) with { Ball = ball }, Lay, null, TestContext.Current.CancellationToken)).Field);
    }

    [Theory]
    [InlineData(3, false, new[] { 6, 10, 14 })]
    [InlineData(4, true, new[] { 4, 6, 8, 10 })]
    public void Waves_are_those_that_keep_the_symmetry_asked_for(int waves, bool unmirrored, int[] orders) =>
        Assert.Equal(orders, SeamFrontStudy.Orders(waves, unmirrored));

    private static SeamQuestion Question(double[] limits) => new()
    {
        Ball = Ball,
        StretchLimitsPercent = limits,
        Limits = new SeamLimits { StretchPercent = 0, CompressionPercent = 16 },
        Waves = 3,
        Unmirrored = false,
        TurnsWarp = false,
    };

    private static LayoutRequest Lay(LayoutPart part) => new()
    {
        Part = part,
        RollWidthMm = 1500,
        Trims = EdgeTrims.Both(15),
        GapMm = 4,
        Rules = new LayoutRules(null, 0, RowRule.Same, false),
        Effort = 1,
        Seed = 1,
    };

    private static LayoutRequest AsDesigned(LayoutPart part) =>
        Lay(part) with { Rules = new LayoutRules(part.WarpAngleDeg, 0, RowRule.Same, false) };
}
