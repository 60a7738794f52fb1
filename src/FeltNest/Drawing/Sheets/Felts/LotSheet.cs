using FeltNest.Die;
using FeltNest.Drawing.Charts;
using FeltNest.Drawing.Lettering;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;
using FeltNest.Panel.Lot;
using static FeltNest.InvariantText;

namespace FeltNest.Drawing.Sheets.Felts;

/// <summary>The sheet of a die against a new lot of felt: the gap round the seam before and with the new lot, at fitting and after the
/// cure, with the verdict.</summary>
internal static class LotSheet
{
    // A4 lying; margin, title, the column of figures and the block of words, mm.
    private const double Width = 297;
    private const double Height = 210;
    private const double Margin = 12;
    private const double TitleRoom = 20;
    private const double FigureRoom = 70;
    private const double WordsRoom = 20;

    private static readonly Pen Old = new(0.5, Colour.Of(0x5E7A22));
    private static readonly Pen New = new(0.5, Colour.Of(0x9C4A0B));
    private static readonly Pen Glue = new(0.25, Colour.Of(0x2A66AE), 2, 1);

    /// <summary>Draws the sheet.</summary>
    public static Sheet Draw(string outline, LotResult lot)
    {
        const double high = Height - Margin - TitleRoom;
        const double low = Margin + WordsRoom;
        const double middle = (high + low) / 2;
        const double right = Width - Margin - FigureRoom;
        Box upper = new() { MinX = Margin, MinY = middle + 2, MaxX = right, MaxY = high };
        Box lower = new() { MinX = Margin, MinY = low, MaxX = right, MaxY = middle - 2 };
        string[] words = [.. LotWords.Of(lot)];
        return new Sheet
        {
            Title = $"{outline} against {LotWords.NameOf(lot.After)}",
            Description = "gap round the seam with the felt before and with the new lot",
            WidthMm = Width,
            HeightMm = Height,
            Symbols = [],
            Marks =
            [
                new GroupMark("title", [.. Title(outline, lot)]),
                new GroupMark("after-cure", [.. Chart("Gap after the cure, mm", lot, lot.AfterCure).Draw(upper)]),
                new GroupMark("at-fitting", [.. Chart("Gap at fitting, mm (below 0: overlap)", lot, lot.AtFitting).Draw(lower)]),
                new GroupMark(
                    "figures", [.. FigureTable.Draw(new Point2(right + 4, high - 2), FigureRoom - 4, [.. Figures(lot)])]),
                new GroupMark("verdict", [.. TextBlock.Draw(new Point2(Margin, low - 2), Width - (2 * Margin), words)]),
                new GroupMark("trial", [Words(SafetyWords.Trial, new Point2(Margin, Margin - 8), Ink.Note, Ink.Dark)]),
            ],
        };
    }

    private static LineChart Chart(string title, LotResult lot, LotState state) => new()
    {
        Title = title,
        XTitle = "mm round the seam from the waist",
        X = lot.RoundMm,
        Series =
        [
            new ChartSeries("before", state.Before.AtMm, Old, Level: true),
            new ChartSeries("new lot", state.After.AtMm, New, Level: true),
            new ChartSeries("glue, most", [.. lot.RoundMm.Select(_ => lot.GlueToMm)], Glue, Level: true),
            new ChartSeries("glue, least", [.. lot.RoundMm.Select(_ => lot.GlueFromMm)], Glue, Level: true),
        ],
        MarkX = null,
        Named = lot.Named,
    };

    private static IEnumerable<(string Name, string Value)> Figures(LotResult lot) =>
        [.. State("After cure: before / new", lot.AfterCure), .. State("At fitting: before / new", lot.AtFitting)];

    private static IEnumerable<(string Name, string Value)> State(string heading, LotState state)
    {
        yield return (heading, string.Empty);
        yield return ("mean", Both(state.Before.MeanMm, state.After.MeanMm));
        yield return ("waists", Both(state.Before.WaistMm, state.After.WaistMm));
        yield return ("tips", Both(state.Before.TipMm, state.After.TipMm));
        yield return ("least", Both(state.Before.LeastMm, state.After.LeastMm));
        yield return ("greatest", Both(state.Before.GreatestMm, state.After.GreatestMm));
        yield return (
            "outside glue", Invariant($"{state.Before.OutsidePercent:0.0} / {state.After.OutsidePercent:0.0} %"));
    }

    private static string Both(double? before, double? after) => Invariant($"{before:0.00} / {after:0.00} mm");

    private static IEnumerable<Mark> Title(string outline, LotResult lot)
    {
        const double top = Height - Margin;
        yield return Words(
            StrokeFont.Fitted($"{outline} against {LotWords.NameOf(lot.After)}", Ink.Title, Width - (2 * Margin)),
            new Point2(Margin, top - Ink.Title), Ink.Title, Ink.Dark);
        string words = Invariant($"on {lot.Before.Name}; before: {LotWords.NameOf(lot.Before)}; glue takes {lot.GlueFromMm:0.##} to ")
            + Invariant($"{lot.GlueToMm:0.##} mm; edge free, nothing pulls it");
        yield return Words(StrokeFont.Fitted(words, Ink.Note, Width - (2 * Margin)), new Point2(Margin, top - 12), Ink.Note, Ink.Soft);
        yield return new PathMark([Chain.Open(new Point2(Margin, top - 15), new Point2(Width - Margin, top - 15))], Ink.Wide);
    }

    private static TextMark Words(string text, Point2 at, double height, Colour colour) => new()
    {
        Text = text,
        At = at,
        HeightMm = height,
        Colour = colour,
    };
}
