using System.Globalization;
using FeltNest.Die;
using FeltNest.Die.Proof;
using FeltNest.Drawing.Charts;
using FeltNest.Drawing.Lettering;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;

namespace FeltNest.Drawing.Sheets.Dies;

/// <summary>The life of a die: worst place of each reading over strikes, the tolerance, and when to rule again.</summary>
internal static class LifeSheet
{
    private const double Width = 297;
    private const double Height = 210;
    private const double Left = 20;
    private const double Right = 287;

    private static readonly Colour Warning = Colour.Of(0xB2402A);

    private static readonly string[] Words =
    [
        "Readings are panels of each cavity, top and bottom ply, after so many strikes. A straight line is laid through "
            + "each; a knock or a re-ruling breaks it: begin a new file then.",
    ];

    /// <summary>Draws the sheet.</summary>
    public static Sheet Draw(DieLife life)
    {
        double[] strikes = Places(life);
        LineChart chart = new()
        {
            Title = "Worst place off the outline, mm",
            XTitle = "strikes",
            X = strikes,
            Series = Series(life, strikes),
            MarkX = null,
        };
        string named = life.Revision is { } r ? $"{life.Name}, revision {r}" : life.Name;
        return new Sheet
        {
            Title = $"Life of die {named}",
            Description = "Worst place of readings over strikes, with the tolerance.",
            WidthMm = Width,
            HeightMm = Height,
            Symbols = [],
            Marks =
            [
                .. Head(life, named),
                .. chart.Draw(new Box { MinX = Left, MinY = 66, MaxX = Right, MaxY = Height - 32 }),
                .. FigureTable.Draw(new Point2(Left, 63), 128, Figures(life)),
                .. TextBlock.Draw(new Point2(Left + 138, 63), 128, Words),
                .. TextBlock.Draw(new Point2(Left, 27), Right - Left, SafetyWords.Brief),
            ],
        };
    }

    // Counts of strikes with a reading, and even steps to where the line reaches the tolerance, so that it is drawn on to there.
    private static double[] Places(DieLife life)
    {
        const int steps = 40;
        double end = life.Strikes * 1.1;
        foreach (double? far in (double?[])[life.First?.LimitTo, life.DriftLimit, life.ReRuleAt])
        {
            end = Math.Max(end, Math.Min(far ?? 0, 3.0 * Math.Max(1, life.Strikes)));
        }

        return
        [
            .. life.Readings.Select(r => (double)r.Strikes).Concat(Enumerable.Range(0, steps + 1).Select(i => Math.Round(end * i / steps)))
                .Distinct()
                .Order(),
        ];
    }

    // The drift that is first at the tolerance, drawn on with its band.
    private static IEnumerable<ChartSeries> Drawn(DieLife life, double[] strikes)
    {
        if ((life.First ?? (life.Drifts.Count > 0 ? life.Drifts[0] : null)) is not { } first)
        {
            yield break;
        }

        yield return new ChartSeries($"line {first.Cavity} {first.Ply}", [.. strikes.Select(first.LineMm)], new Pen(0.25, Ink.Soft), true);
        if (first.BandMm(0) is null)
        {
            yield break;
        }

        foreach (int side in (int[])[1, -1])
        {
            yield return new ChartSeries(
                string.Empty, [.. strikes.Select(x => Math.Max(0, first.LineMm(x) + (side * first.BandMm(x)!.Value)))],
                new Pen(0.18, Ink.Soft, 1.5, 1), true);
        }
    }

    // The tolerance, and a line of the worst readings of each cavity and ply.
    private static IReadOnlyList<ChartSeries> Series(DieLife life, double[] strikes)
    {
        (int Cavity, string Ply)[] groups =
        [
            .. life.Readings.Select(r => (r.Cavity, r.Ply)).Distinct().OrderBy(g => g.Cavity).ThenBy(g => g.Ply, StringComparer.Ordinal),
        ];
        double Worst((int Cavity, string Ply) g, double at) =>
            life.Readings
                .Where(r => (r.Cavity, r.Ply) == g && r.Strikes == (int)at)
                .Select(r => r.WorstMm)
                .DefaultIfEmpty(double.NaN)
                .Max();
        Colour[] colours = [Ink.Dark, Warning, Colour.Of(0x3F6B86), Colour.Of(0x5E7A2E), Ink.Soft];
        return
        [
            new("allowed", [.. strikes.Select(_ => life.ToleranceMm / 2)], new Pen(0.35, Warning, 3, 1), true),
            .. groups.Select((g, i) =>
                new ChartSeries(
                    $"{g.Cavity} {g.Ply}", [.. strikes.Select(x => Worst(g, x))],
                    new Pen(0.35, colours[i % colours.Length]))),
            .. Drawn(life, strikes),
        ];
    }

    private static IEnumerable<Mark> Head(DieLife life, string named)
    {
        yield return new TextMark
        {
            Text = StrokeFont.Fitted($"Life of die {named}", Ink.Title, 240),
            At = new Point2(Left, Height - 18),
            HeightMm = Ink.Title,
            Colour = Ink.Dark,
        };
        if (life.SupersededBy is { } newer)
        {
            yield return new TextMark
            {
                Text = StrokeFont.Fitted($"SUPERSEDED by {newer}: do not strike with this die", Ink.Title, 260),
                At = new Point2(Left, Height - 27),
                HeightMm = Ink.Title,
                Colour = Warning,
            };
        }
    }

    private static IReadOnlyList<(string Name, string Value)> Figures(DieLife life) =>
    [
        ("strikes so far", F(life.Strikes)),
        ("drift reaches the tolerance at", F(life.DriftLimit)),
        ("between, 95 %", life.First is { LimitFrom: { } early } first ? $"{F(early)} and {F(first.LimitTo)}" : "not known"),
        ("a straight line", Fit(life.First?.Fit)),
        ("stated life", F(life.StatedLife)),
        ("re-rule at", $"{F(life.ReRuleAt)} strikes"),
        ("last readings", life.Failed ? "OUTSIDE the tolerance" : "within the tolerance"),
    ];

    private static string Fit(DriftFit? fit) => fit switch
    {
        DriftFit.Line => "fits",
        DriftFit.OneOff => "DOES NOT FIT: one reading lies off",
        DriftFit.Bends => "DOES NOT FIT: the readings bend",
        _ => "not known: fewer than four readings",
    };

    private static string F(double? value) => value is { } number ? number.ToString("0", CultureInfo.InvariantCulture) : "not known";
}
