using System.Globalization;
using FeltNest.Layout;
using FeltNest.Yield;
using static FeltNest.InvariantText;

namespace FeltNest.Drawing.Sheets;

/// <summary>The column of figures of a layout sheet.</summary>
internal static class LayoutFigures
{
    /// <summary>Names and values, headings among them.</summary>
    public static IReadOnlyList<(string Name, string Value)> Lines(RollLayout layout, YieldFigures yields, ClothView view) =>
    [
        .. Cloth(layout),
        .. layout.Parts.Count > 1 ? layout.Parts.Select((_, n) => PartShare(layout, n)) : [],
        .. layout.Bands.Select(band => Repeat(band, layout.Bands.Count)),
        .. view.Classes.Select((_, k) => Tilt(view, k)),
        .. Yield(yields),
        .. WhereItGoes(yields),
        .. Search(layout.Search),
    ];

    private static IEnumerable<(string, string)> Cloth(RollLayout layout) =>
    [
        ("Layout", string.Empty),
        ("roll width", F(layout.RollWidthMm, "0.##", "mm")),
        ("usable width", F(layout.UsableWidthMm, "0.##", "mm")),
        layout.Trims.AreEqual
            ? ("edge trim, each side", F(layout.Trims.LowerMm, "0.##", "mm"))
            : ("edge trims, lower and upper", Invariant($"{layout.Trims.LowerMm:0.##}, {layout.Trims.UpperMm:0.##} mm")),
        ("gap, least found", Invariant($"{layout.GapMm:0.##}, {layout.Search.LeastGapMm:0.0000} mm")),
        .. layout.Rules.Forbidden.Select(s => ("forbidden stripe", Invariant($"{s.YFromMm:0.##} to {s.YToMm:0.##} mm"))),
    ];

    private static (string, string) PartShare(RollLayout layout, int part)
    {
        double panels = 1000 * layout.Bands.Sum(b => b.Repeat.Panels.Count(p => p.Part == part) / b.Repeat.LengthMm);
        return ($"panels a metre, part {part + 1}", F(panels, "0.00", string.Empty));
    }

    private static (string, string) Repeat(LayoutBand band, int bands)
    {
        string place = bands > 1 ? Invariant($" at {band.YFromMm:0} to {band.YToMm:0}") : string.Empty;
        return ($"repeat{place}", Invariant($"{band.Repeat.LengthMm:0.00} mm, {Panels(band.Repeat.Panels.Count)}"));
    }

    private static (string, string) Tilt(ClothView view, int group)
    {
        string name = view.Classes.Count > 1 ? $"tilt of pairing group {group + 1} ({ClassColour(group)})" : "tilt to the warp";
        return (name, F(PanelTilt.Shown(view.Classes[group]), "0.00", string.Empty) + "\u00B0");
    }

    private static IEnumerable<(string, string)> Yield(YieldFigures yields)
    {
        FeltUsage felt = yields.PerThousandBalls;
        return
        [
            ("Yield: full width, before roll ends and faults", string.Empty),
            ("panels per metre (cuts per metre)", F(yields.PanelsPerMetre, "0.00", string.Empty)),
            ("balls per metre (pairs)", F(yields.BallsPerMetre, "0.00", string.Empty)),
            ("felt per thousand balls, before losses", F(felt.Metres, "0.00", "m")),
            (" ", F(felt.SquareMetres, "0.00", "m\u00B2")),
            (" ", felt.Kilograms is { } kilograms ? F(kilograms, "0.0", "kg") : "kg not known"),
        ];
    }

    private static IEnumerable<(string, string)> WhereItGoes(YieldFigures yields)
    {
        WasteAccount account = yields.Account;
        return
        [
            ("Where the felt goes", string.Empty),
            ("good panels", F(account.GoodPanelsPercent, "0.00", "%")),
            ("web between panels", F(account.BetweenPanelsPercent, "0.00", "%")),
            ("unused edge", F(account.UnusedEdgePercent, "0.00", "%")),
            ("edge trim", F(account.EdgeTrimPercent, "0.00", "%")),
            ("waste (last three)", F(yields.WastePercent, "0.00", "%")),
        ];
    }

    private static IEnumerable<(string, string)> Search(SearchRecord search) =>
    [
        ("Search", string.Empty),
        ("effort, seed", $"{search.Effort}, {search.Seed}{(search.CutShort ? ", cut short" : string.Empty)}"),
        ("best without edges, for reference", F(search.PlaneUtilisationPercent, "0.00", "%")),
        .. search.UpperBoundPercent > 0
            ? [("no layout can exceed", F(search.UpperBoundPercent, "0.00", "%"))]
            : Array.Empty<(string, string)>(),
    ];

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
