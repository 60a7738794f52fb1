using System.Text.Json;
using FeltNest.Ball;
using FeltNest.Design;
using FeltNest.Files.Balls;
using FeltNest.Files.Layouts;
using FeltNest.Layout;
using FeltNest.Layout.Limits;
using FeltNest.Panel;
using FeltNest.Report;
using FeltNest.Tests.Files;
using FeltNest.Yield;
using Xunit;

namespace FeltNest.Tests.Design;

public sealed class LaidStrainTests
{
    private static readonly BallSpec Ball = BallReader.Read(RepositoryFile.PathOf("shapes", "balls", "type-2-woven.json")).Ball;

    [Fact, Trait("tier", "long")]
    public void A_panel_laid_off_its_design_needs_more_energy_than_one_designed_for_that_angle()
    {
        // The panel designed for the laid angle is the stationary one there; any other blank with the same edge rule stores more when its
        // edge is drawn to the seam.
        (FlatPanel panel, RollLayout layout) = Laid(75);

        LaidStrain laid = Assert.Single(LaidStrain.Of(Ball, panel, layout));

        Assert.Equal((30.0, 75.0), (laid.DesignAngleDeg, laid.LaidAngleDeg));
        FlatPanel right = PanelFlattener.Flatten(Ball with { Panel = Ball.Panel with { WarpAngleDeg = 75 } });
        Assert.True(laid.Wrap.EdgeHeld!.EnergyNmm > right.Strain.EnergyNmm);
        Assert.True(laid.Wrap.EdgeFree.EnergyNmm < laid.Wrap.EdgeHeld.EnergyNmm);
    }

    [Fact, Trait("tier", "long")]
    public void Laid_at_its_design_or_in_felt_without_a_warp_there_is_nothing_to_say()
    {
        (FlatPanel panel, RollLayout layout) = Laid(30);
        Assert.Empty(LaidStrain.Of(Ball, panel, layout));

        BallSpec even = Balls() with { Panel = Ball.Panel };
        FlatPanel plain = PanelFlattener.Flatten(even);
        Assert.Empty(LaidStrain.Of(even, plain, Laid(75).Layout));
    }

    [Fact, Trait("tier", "long")]
    public void The_figures_stand_in_the_file_and_the_file_is_read_again()
    {
        (FlatPanel panel, RollLayout layout) = Laid(75);
        IReadOnlyList<LaidStrain> laid = LaidStrain.Of(Ball, panel, layout);
        using TempFolder folder = new();
        File.WriteAllBytes(folder.Path("layout.json"), LayoutWriter.Write(layout, YieldAccount.Of(layout), null, laid));

        JsonElement one = Assert.Single(
            JsonDocument.Parse(File.ReadAllText(folder.Path("layout.json"))).RootElement.GetProperty("laid").EnumerateArray());

        Assert.Equal(75, one.GetProperty("laidAngleDeg").GetDouble());
        Assert.Equal(laid[0].Wrap.EdgeHeld!.MaxStretchPercent, one.GetProperty("edgeHeld").GetProperty("maxStretchPercent").GetDouble());
        Assert.Equal(laid[0].Wrap.EdgeFree.LargestGapMm, one.GetProperty("edgeFree").GetProperty("largestGapMm").GetDouble());
        Assert.Equal(
            layout.Bands[0].Repeat.Panels.Count, LayoutReader.Read(folder.Path("layout.json")).Layout.Bands[0].Repeat.Panels.Count);
    }

    [Fact, Trait("tier", "long")]
    public void A_stretch_above_the_limit_at_the_laid_angle_is_warned_of()
    {
        (FlatPanel panel, RollLayout layout) = Laid(75);
        IReadOnlyList<LaidStrain> laid = LaidStrain.Of(Ball, panel, layout);
        double found = laid[0].Wrap.EdgeHeld!.MaxStretchPercent;
        BallSpec At(double limit) => Ball with { Felt = Ball.Felt with { MaxStretchPercent = limit } };

        Assert.Empty(DesignReport.Warnings(At(found + 0.1), laid));
        Assert.Contains(
            "laid at 75 degrees to the warp instead of 30", Assert.Single(DesignReport.Warnings(At(found - 0.1), laid)),
            StringComparison.Ordinal);
    }

    private static BallSpec Balls() =>
        Ball with { Felt = Ball.Felt with { WarpModulusNPerMm = 2, WeftModulusNPerMm = 2, ShearModulusNPerMm = 2 / 2.5, Poisson = 0.25 } };

    private static (FlatPanel Panel, RollLayout Layout) Laid(double angle)
    {
        FlatPanel panel = PanelFlattener.Flatten(Ball);
        LayoutRequest request = new()
        {
            Part = CoverPart.Of(Ball, panel),
            RollWidthMm = 400,
            Trims = EdgeTrims.Both(15),
            GapMm = 4,
            Rules = new LayoutRules(angle, 0, RowRule.Same, false),
            Effort = 1,
            Seed = 1,
        };
        return (panel, LayoutSearch.Run(request, null, TestContext.Current.CancellationToken));
    }
}
