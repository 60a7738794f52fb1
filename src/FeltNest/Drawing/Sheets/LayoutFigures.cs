using System.Globalization;
using FeltNest.Layout;
using FeltNest.Yield;

namespace FeltNest.Drawing.Sheets;

/// <summary>The column of figures of a layout sheet.</summary>
internal static class LayoutFigures
{
    /// <summary>Names and values, headings among them.</summary>
    public static IReadOnlyList<(string Name, string Value)> Lines(RollLayout layout, YieldFigures yields, ClothView view)
    {
        WasteAccount account = yields.Account;
        FeltUsage felt = yields.PerThousandBalls;
        List<(string, string)> lines =
        [
            ("Layout", string.Empty),
            ("roll width", F(layout.RollWidthMm, "0.##", "mm")),
            ("usable width", F(layout.UsableWidthMm, "0.##", "mm")),
            layout.Trims.AreEqual
                ? ("edge trim, each side", F(layout.Trims.LowerMm, "0.##", "mm"))
                : ("edge trims, lower and upper", string.Create(
                    CultureInfo.InvariantCulture, $"{layout.Trims.LowerMm:0.##}, {layout.Trims.UpperMm:0.##} mm")),
            ("gap, least found", string.Create(CultureInfo.InvariantCulture, $"{layout.GapMm:0.##}, {layout.Search.LeastGapMm:0.0000} mm")),
        ];
        lines.AddRange(
            layout.Rules.Forbidden.Select(s =>
                ("forbidden stripe", string.Create(CultureInfo.InvariantCulture, $"{s.YFromMm:0.##} to {s.YToMm:0.##} mm"))));
        if (layout.Parts.Count > 1)
        {
            lines.AddRange(
                layout.Parts.Select((part, n) =>
                    ($"panels a metre, part {n + 1}", F(
                        1000 * layout.Bands.Sum(b => b.Repeat.Panels.Count(p => p.Part == n) / b.Repeat.LengthMm), "0.00", string.Empty))));
        }

        foreach (LayoutBand band in layout.Bands)
        {
            string place = layout.Bands.Count > 1
                ? string.Create(CultureInfo.InvariantCulture, $" at {band.YFromMm:0} to {band.YToMm:0}")
                : string.Empty;
            lines.Add(
                ($"repeat{place}", string.Create(
                    CultureInfo.InvariantCulture, $"{band.Repeat.LengthMm:0.00} mm, {Panels(band.Repeat.Panels.Count)}")));
        }

        for (int k = 0; k < view.Classes.Count; k++)
        {
            string name = view.Classes.Count > 1 ? $"tilt of pairing group {k + 1} ({ClassColour(k)})" : "tilt to the warp";
            lines.Add((name, F(PanelTilt.Shown(view.Classes[k]), "0.00", string.Empty) + "\u00B0"));
        }

        lines.AddRange(
        [
            ("Yield: full width, before roll ends and faults", string.Empty),
            ("panels per metre (cuts per metre)", F(yields.PanelsPerMetre, "0.00", string.Empty)),
            ("balls per metre (pairs)", F(yields.BallsPerMetre, "0.00", string.Empty)),
            ("felt per thousand balls, before losses", F(felt.Metres, "0.00", "m")),
            (" ", F(felt.SquareMetres, "0.00", "m\u00B2")),
            (" ", felt.Kilograms is { } kilograms ? F(kilograms, "0.0", "kg") : "kg not known"),
            ("Where the felt goes", string.Empty),
            ("good panels", F(account.GoodPanelsPercent, "0.00", "%")),
            ("web between panels", F(account.BetweenPanelsPercent, "0.00", "%")),
            ("unused edge", F(account.UnusedEdgePercent, "0.00", "%")),
            ("edge trim", F(account.EdgeTrimPercent, "0.00", "%")),
            ("waste (last three)", F(yields.WastePercent, "0.00", "%")),
            ("Search", string.Empty),
            ("effort, seed", $"{layout.Search.Effort}, {layout.Search.Seed}{(layout.Search.CutShort ? ", cut short" : string.Empty)}"),
            ("best without edges, for reference", F(layout.Search.PlaneUtilisationPercent, "0.00", "%")),
            .. layout.Search.UpperBoundPercent > 0
                ? [("no layout can exceed", F(layout.Search.UpperBoundPercent, "0.00", "%"))]
                : Array.Empty<(string, string)>(),
        ]);
        return lines;
    }

    private static string Panels(int count) => count == 1 ? "1 panel" : $"{count} panels";

    private static string ClassColour(int k) => (k % 4) switch
    {
        0 => "moss",
        1 => "red-brown",
        2 => "slate",
        _ => "plum",
    };

    private static string F(double value, string format, string unit) =>
        double.IsFinite(value) ? (value.ToString(format, CultureInfo.InvariantCulture) + " " + unit).TrimEnd() : "none";
}
