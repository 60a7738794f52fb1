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
        double[] strikes = [.. life.Readings.Select(r => (double)r.Strikes).Distinct().Order()];
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
                .. FigureTable.Draw(new Point2(Left, 60), 128, Figures(life)),
                .. TextBlock.Draw(new Point2(Left + 138, 60), 128, Words),
                .. TextBlock.Draw(new Point2(Left, 30), Right - Left, SafetyWords.Brief),
            ],
        };
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
                    double.IsFinite(Worst(g, strikes[^1])) ? $"{g.Cavity} {g.Ply}" : string.Empty, [.. strikes.Select(x => Worst(g, x))],
                    new Pen(0.35, colours[i % colours.Length]))),
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
        ("stated life", F(life.StatedLife)),
        ("re-rule at", $"{F(life.ReRuleAt)} strikes"),
        ("last readings", life.Failed ? "OUTSIDE the tolerance" : "within the tolerance"),
    ];

    private static string F(double? value) => value is { } number ? number.ToString("0", CultureInfo.InvariantCulture) : "not known";
}
