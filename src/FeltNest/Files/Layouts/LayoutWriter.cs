using FeltNest.Design;
using FeltNest.Files.Json;
using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Yield;

namespace FeltNest.Files.Layouts;

/// <summary>Writes a layout (schema feltnest/layout/1) with every digit, so that it can be checked from the file alone.</summary>
public static class LayoutWriter
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
        using JsonOutput json = new();
        json.Text("schema", SchemaName.Layout);
        json.Objects("panels", layout.Parts, WritePart);
        json.Object("roll", roll => roll
            .Number("widthMm", layout.RollWidthMm)
            .Number("edgeMm", layout.Trims.LowerMm)
            .Number("upperEdgeMm", layout.Trims.UpperMm)
            .Number("usableWidthMm", layout.UsableWidthMm));
        json.Number("gapMm", layout.GapMm);
        json.Object("rules", rules => RulesFields.Write(rules, layout.Rules));
        if (layout.Bands.Count == 1)
        {
            json.Object("repeat", repeat => WriteRepeat(repeat, layout.Bands[0].Repeat));
        }
        else
        {
            json.Objects("bands", layout.Bands, (item, band) => item
                .Number("yFromMm", band.YFromMm)
                .Number("yToMm", band.YToMm)
                .Object("repeat", repeat => WriteRepeat(repeat, band.Repeat)));
        }

        json.Object("yield", fields => WriteYield(fields, yields));
        json.Object("search", fields => SearchFields.Write(fields, layout.Search));
        if (laid is { Count: > 0 })
        {
            json.Objects("laid", laid, WriteLaid);
        }

        if (assumed is { Count: > 0 })
        {
            json.Object("assumptions", item => item.Text("outline", string.Join("; ", assumed)));
        }

        return json.Finish();
    }

    private static void WritePart(JsonOutput json, LayoutPart part) => json
        .Text("name", part.Name)
        .Text("ball", part.Ball)
        .Number("areaMm2", part.AreaMm2)
        .Number("perimeterMm", part.PerimeterMm)
        .Number("massPerAreaGsm", part.MassPerAreaGsm)
        .NumberOr("warpAngleDeg", part.WarpAngleDeg, "any")
        .Outline("outline", part.Outline)
        .Arcs("arcs", part.Arcs?.Vertices ?? part.Outline.Points.Select(p => new ArcVertex(p.X, p.Y, 0)));

    private static void WriteRepeat(JsonOutput json, LayoutRepeat repeat)
    {
        json.Number("lengthMm", repeat.LengthMm)
            .Objects("panels", repeat.Panels, (item, placed) => item
                .Number("panel", placed.Part)
                .Number("xMm", placed.XMm)
                .Number("yMm", placed.YMm)
                .Number("angleDeg", placed.AngleDeg));
        if (repeat.Strike is { } strike)
        {
            json.Object("strike", item => item
                .Number("panels", strike.Panels)
                .Objects("places", strike.Places, (place, at) => place.Number("xMm", at.X).Number("yMm", at.Y))
                .Number("lengthMm", strike.LengthMm)
                .Number("widthMm", strike.WidthMm));
        }
    }

    private static void WriteYield(JsonOutput json, YieldFigures yields) => json
        .Number("panelsPerMetre", yields.PanelsPerMetre)
        .Number("ballsPerMetre", yields.BallsPerMetre)
        .Number("utilisationPercent", yields.UtilisationPercent)
        .Number("wastePercent", yields.WastePercent)
        .Object("perThousandBalls", usage => usage
            .Number("metres", yields.PerThousandBalls.Metres)
            .Number("squareMetres", yields.PerThousandBalls.SquareMetres)
            .Number("kilograms", yields.PerThousandBalls.Kilograms))
        .Object("account", account => account
            .Number("goodPanelsPercent", yields.Account.GoodPanelsPercent)
            .Number("betweenPanelsPercent", yields.Account.BetweenPanelsPercent)
            .Number("unusedEdgePercent", yields.Account.UnusedEdgePercent)
            .Number("edgeTrimPercent", yields.Account.EdgeTrimPercent));

    private static void WriteLaid(JsonOutput json, LaidStrain laid) => json
        .Number("designAngleDeg", laid.DesignAngleDeg)
        .Number("laidAngleDeg", laid.LaidAngleDeg)
        .ObjectOrNull("edgeHeld", laid.Wrap.EdgeHeld, (held, item) => held
            .Number("energyNmm", item.EnergyNmm)
            .Number("maxStretchPercent", item.MaxStretchPercent)
            .Number("maxCompressionPercent", item.MaxCompressionPercent)
            .Number("edgePullNPerMm", item.EdgePullNPerMm))
        .Text("whyNotHeld", laid.Wrap.WhyNotHeld)
        .Object("edgeFree", free => free
            .Number("energyNmm", laid.Wrap.EdgeFree.EnergyNmm)
            .Number("largestGapMm", laid.Wrap.EdgeFree.LargestGapMm)
            .Number("largestOverlapMm", laid.Wrap.EdgeFree.LargestOverlapMm));
}
