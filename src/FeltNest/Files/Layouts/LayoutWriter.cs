using FeltNest.Design;
using FeltNest.Files.Json;
using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Yield;
using static FeltNest.Files.Layouts.LayoutDocument;

namespace FeltNest.Files.Layouts;

/// <summary>Writes a layout (schema feltnest/layout/1) with every digit, so that it can be checked from the file alone.</summary>
internal static class LayoutWriter
{
    /// <summary>The file's bytes: <c>repeat</c> where one repeat serves the whole width, else <c>bands</c>.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="yields">Its yield.</param>
    /// <param name="assumed">What was assumed or healed when the outline was read; written as <c>assumptions.outline</c> when there is
    /// any.</param>
    /// <param name="laid">Strains of a panel laid off its design angle to the warp; written as <c>laid</c> when there are any.</param>
    public static byte[] Write(
        RollLayout layout, YieldFigures yields, IReadOnlyList<string>? assumed = null, IReadOnlyList<LaidStrain>? laid = null)
    {
        using JsonOutput json = new(LayoutDocument.Document);
        json.Objects(LayoutDocument.Panels, layout.Parts, WritePart);
        json.Object(LayoutDocument.Roll, roll => roll
            .Number(RollFields.WidthMm, layout.RollWidthMm)
            .Number(RollFields.EdgeMm, layout.Trims.LowerMm)
            .Number(RollFields.UpperEdgeMm, layout.Trims.UpperMm)
            .Number(RollFields.UsableWidthMm, layout.UsableWidthMm));
        json.Number(LayoutDocument.GapMm, layout.GapMm);
        json.Object(LayoutDocument.Rules, rules => LayoutRulesJson.Write(rules, layout.Rules));
        if (layout.Bands.Count == 1)
        {
            json.Object(LayoutDocument.Repeat, repeat => WriteRepeat(repeat, layout.Bands[0].Repeat));
        }
        else
        {
            json.Objects(LayoutDocument.Bands, layout.Bands, (item, band) => item
                .Number(BandFields.YFromMm, band.YFromMm)
                .Number(BandFields.YToMm, band.YToMm)
                .Object(BandFields.Repeat, repeat => WriteRepeat(repeat, band.Repeat)));
        }

        json.Object(LayoutDocument.Yield, fields => WriteYield(fields, yields));
        json.Object(LayoutDocument.Search, fields => SearchRecordJson.Write(fields, layout.Search));
        if (laid is { Count: > 0 })
        {
            json.Objects(LayoutDocument.Laid, laid, WriteLaid);
        }

        if (assumed is { Count: > 0 })
        {
            json.Assumption("outline", string.Join("; ", assumed));
        }

        return json.Finish();
    }

    private static void WritePart(JsonOutput json, LayoutPart part) => json
        .Text(PanelFields.Name, part.Name)
        .Text(PanelFields.Ball, part.Ball)
        .Number(PanelFields.AreaMm2, part.AreaMm2)
        .Number(PanelFields.PerimeterMm, part.PerimeterMm)
        .Number(PanelFields.MassPerAreaGsm, part.MassPerAreaGsm)
        .NumberOr(PanelFields.WarpAngleDeg, part.WarpAngleDeg)
        .Outline(PanelFields.Outline, part.Outline)
        .Arcs(PanelFields.Arcs, part.Arcs?.Vertices ?? part.Outline.Points.Select(p => new ArcVertex(p.X, p.Y, 0)));

    private static void WriteRepeat(JsonOutput json, LayoutRepeat repeat)
    {
        json.Number(RepeatFields.LengthMm, repeat.LengthMm)
            .Objects(RepeatFields.Panels, repeat.Panels, (item, placed) => item
                .Number(PlacedFields.Panel, placed.Part)
                .Number(PlacedFields.XMm, placed.XMm)
                .Number(PlacedFields.YMm, placed.YMm)
                .Number(PlacedFields.AngleDeg, placed.AngleDeg));
        if (repeat.Strike is { } strike)
        {
            json.Object(RepeatFields.Strike, item => item
                .Number(StrikeFields.Panels, strike.Panels)
                .Objects(
                    StrikeFields.Places, strike.Places, (place, at) => place.Number(StruckFields.XMm, at.X).Number(StruckFields.YMm, at.Y))
                .Number(StrikeFields.LengthMm, strike.LengthMm)
                .Number(StrikeFields.WidthMm, strike.WidthMm));
        }
    }

    private static void WriteYield(JsonOutput json, YieldFigures yields) => json
        .Number(YieldFields.PanelsPerMetre, yields.PanelsPerMetre)
        .Number(YieldFields.BallsPerMetre, yields.BallsPerMetre)
        .Number(YieldFields.UtilisationPercent, yields.UtilisationPercent)
        .Number(YieldFields.WastePercent, yields.WastePercent)
        .Object(YieldFields.PerThousandBalls, usage => usage
            .Number(PerThousandBallsFields.Metres, yields.PerThousandBalls.Metres)
            .Number(PerThousandBallsFields.SquareMetres, yields.PerThousandBalls.SquareMetres)
            .Number(PerThousandBallsFields.Kilograms, yields.PerThousandBalls.Kilograms))
        .Object(YieldFields.Account, account => account
            .Number(AccountFields.GoodPanelsPercent, yields.Account.GoodPanelsPercent)
            .Number(AccountFields.BetweenPanelsPercent, yields.Account.BetweenPanelsPercent)
            .Number(AccountFields.UnusedEdgePercent, yields.Account.UnusedEdgePercent)
            .Number(AccountFields.EdgeTrimPercent, yields.Account.EdgeTrimPercent));

    private static void WriteLaid(JsonOutput json, LaidStrain laid) => json
        .Number(LaidFields.DesignAngleDeg, laid.DesignAngleDeg)
        .Number(LaidFields.LaidAngleDeg, laid.LaidAngleDeg)
        .ObjectOrNull(LaidFields.EdgeHeld, laid.Wrap.EdgeHeld, (held, item) => held
            .Number(EdgeHeldFields.EnergyNmm, item.EnergyNmm)
            .Number(EdgeHeldFields.MaxStretchPercent, item.MaxStretchPercent)
            .Number(EdgeHeldFields.MaxCompressionPercent, item.MaxCompressionPercent)
            .Number(EdgeHeldFields.EdgePullNPerMm, item.EdgePullNPerMm))
        .Text(LaidFields.WhyNotHeld, laid.Wrap.WhyNotHeld)
        .Object(LaidFields.EdgeFree, free => free
            .Number(EdgeFreeFields.EnergyNmm, laid.Wrap.EdgeFree.EnergyNmm)
            .Number(EdgeFreeFields.LargestGapMm, laid.Wrap.EdgeFree.LargestGapMm)
            .Number(EdgeFreeFields.LargestOverlapMm, laid.Wrap.EdgeFree.LargestOverlapMm));
}
