using FeltNest.Cost.Compare;
using FeltNest.Cost.Compare.Handover;
using FeltNest.Drawing.Lettering;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;

namespace FeltNest.Drawing.Sheets;

/// <summary>A comparison for the one who decides, on one A4 page.</summary>
internal static class SummarySheet
{
    // A4 upright; margin and the space before a part, mm.
    private const double Width = 210;
    private const double Height = 297;
    private const double Margin = 18;
    private const double Before = 6;
    private const double Wide = Width - (2 * Margin);
    private const double AdviceStep = 5.6;

    // Rank, name, width, felt, cost, above the best, mm.
    private static readonly double[] Columns = [12, 62, 22, 22, 28, 28];

    /// <summary>Draws the sheet.</summary>
    public static Sheet Draw(Comparison comparison)
    {
        CompareSummary summary = CompareSummary.Of(comparison);
        List<Mark> marks = [];
        double y = Height - Margin - Ink.Title;
        marks.Add(Words(StrokeFont.Fitted(summary.Title, Ink.Title, Wide), y, Ink.Title));
        y -= 3;
        marks.Add(new PathMark([Chain.Open(new Point2(Margin, y), new Point2(Width - Margin, y))], Ink.Wide));
        y -= 3;
        foreach (string line in TextBlock.Lines(summary.Recommendation, Wide, Ink.Label))
        {
            y -= AdviceStep;
            marks.Add(Words(line, y, Ink.Label));
        }

        y = Part(marks, y, "It holds as long as", summary.Conditions);
        y = Ranking(marks, y, comparison);
        y = Part(marks, y, "Money at stake", summary.Stake);
        y = Part(marks, y, "Risks", summary.Risks);
        Part(marks, y, "What is missing", summary.Missing);
        return new Sheet
        {
            Title = summary.Title,
            Description = summary.Recommendation,
            WidthMm = Width,
            HeightMm = Height,
            Symbols = [],
            Marks = marks,
        };
    }

    private static double Ranking(List<Mark> marks, double y, Comparison comparison)
    {
        string[][] rows = [.. CompareSummary.Ranking(comparison)];
        y -= Before + Ink.Label;
        marks.Add(Words("Ranking, a thousand good balls", y, Ink.Label));
        (string, double)[] columns = [.. CompareSummary.RankingNames(comparison).Zip(Columns)];
        marks.AddRange(CellTable.Draw(new Point2(Margin, y - 1), columns, rows));
        return y - 1 - CellTable.Height(rows.Length);
    }

    private static double Part(List<Mark> marks, double y, string title, IReadOnlyList<string> sentences)
    {
        if (sentences.Count == 0)
        {
            return y;
        }

        y -= Before + Ink.Label;
        marks.Add(Words(title, y, Ink.Label));
        string[] dashed = [.. sentences.Select(sentence => "-  " + sentence)];
        marks.AddRange(TextBlock.Draw(new Point2(Margin, y - 1.5), Wide, dashed));
        return y - 1.5 - TextBlock.Height(dashed, Wide);
    }

    private static TextMark Words(string text, double y, double height) =>
        new() { Text = text, At = new Point2(Margin, y), HeightMm = height, Colour = Ink.Dark };
}
