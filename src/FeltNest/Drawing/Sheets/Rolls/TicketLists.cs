using FeltNest.Drawing.Parts;
using FeltNest.Geometry;
using FeltNest.Rolls.Plan;
using static FeltNest.Drawing.Sheets.Rolls.TicketPage;
using static FeltNest.InvariantText;

namespace FeltNest.Drawing.Sheets.Rolls;

/// <summary>The lists of a ticket: runs of strikes over its width; below them faults and splices, and strikes that lose panels, side by
/// side.</summary>
internal static class TicketLists
{
    /// <summary>Step from line to line, mm.</summary>
    public const double Step = 4.6;

    /// <summary>Space under the line below a list's head, mm.</summary>
    public const double UnderHead = 0.8;

    // Where the columns of each list end, mm.
    private static readonly double[] RunColumns = [Left + 24, Left + 62, Left + 96, Left + 130, Left + 154, Right];
    private static readonly double[] ThingColumns = [Left + 12, Left + 33, Left + 53, Left + 74, Left + 98];
    private const double LossLeft = Left + 106;
    private static readonly double[] LossColumns = [Left + 118, Left + 141, Left + 158, Right];

    /// <summary>The runs of strikes below a height, at most so many; where they end.</summary>
    public static (double Y, IReadOnlyList<Mark> Marks) Runs(RollPlan plan, int most, string where, double y)
    {
        IReadOnlyList<StrikeRun> runs = StrikeRun.Of(plan);
        return List(
            Left, RunColumns, ["strikes", "first begins at mm", "advance to it mm", "across mm", "good", "lost"],
            [.. runs.Select(Cells)], most, $"more runs: {where}", y);
    }

    /// <summary>Faults and splices in the piece below a height; where they end.</summary>
    public static (double Y, IReadOnlyList<Mark> Marks) Things(TicketPiece piece, int most, double y) => List(
        Left, ThingColumns, ["", "from piece m", "from roll m", "across mm", "size mm"],
        [
            .. piece.Things.Select(t => new[]
            {
                t.Name, Invariant($"{(t.XMm - piece.FromMm) / 1000:0.00}"), Invariant($"{t.XMm / 1000:0.00}"), t.Across, t.Size,
            }),
        ], most, "more faults", y);

    /// <summary>Strikes that lose panels below a height; where they end.</summary>
    public static (double Y, IReadOnlyList<Mark> Marks) Losses(TicketPiece piece, int most, double y) => List(
        LossLeft, LossColumns, ["strikes", "from piece m", "lost each", "cause"],
        [
            .. piece.Losses.Select(l => new[]
            {
                Numbers(l.First, l.Last), Invariant($"{(l.XMm - piece.FromMm) / 1000:0.00}"), Invariant($"{l.Each}"), Causes(l.Causes),
            }),
        ], most, "more lose panels", y);

    private static string[] Cells(StrikeRun run) =>
    [
        Numbers(run.First, run.First + run.Count - 1),
        Invariant($"{run.XMm:0.00}"), Invariant($"{run.AdvanceMm:0.00}"), Invariant($"{run.ShiftYMm:+0.##;-0.##;0}"),
        Invariant($"{run.GoodPanels}"), Invariant($"{run.LostPanels}"),
    ];

    private static string Numbers(int first, int last) => first == last ? Invariant($"{first}") : Invariant($"{first} - {last}");

    private static string Causes(TicketPiece.LossCauses causes) => string.Join(
        ", ", Enum.GetValues<TicketPiece.LossCauses>().Where(cause => causes.HasFlag(cause)).Select(CauseOf));

    private static string CauseOf(TicketPiece.LossCauses cause) => cause switch
    {
        TicketPiece.LossCauses.RollEnd => "roll end",
        TicketPiece.LossCauses.Splice => "splice",
        TicketPiece.LossCauses.Width => "width",
        _ => "fault",
    };

    // A line of names, then as many rows as have room, the last of them saying how many are missing.
    private static (double Y, IReadOnlyList<Mark> Marks) List(
        double left, double[] columns, string[] names, IReadOnlyList<string[]> rows, int most, string more, double y)
    {
        List<Mark> marks =
        [
            .. Row(columns, y, Ink.Soft, names),
            new PathMark([Chain.Open(new Point2(left, y - 1.4), new Point2(columns[^1], y - 1.4))], Ink.Narrow),
        ];
        y -= UnderHead;
        int shown = rows.Count <= most ? rows.Count : most - 1;
        foreach (string[] row in rows.Take(shown))
        {
            y -= Step;
            marks.AddRange(Row(columns, y, Ink.Dark, row));
        }

        if (rows.Count > shown || rows.Count == 0)
        {
            y -= Step;
            string words = rows.Count == 0 ? "none" : $"and {rows.Count - shown} {more}";
            marks.Add(Words(words, new Point2(left, y), Ink.Note, Ink.Dark));
        }

        return (y, marks);
    }

    // One line, each cell ending at its column.
    private static IEnumerable<Mark> Row(double[] columns, double y, Colour colour, string[] cells) =>
        cells.Select((cell, i) => Words(cell, new Point2(columns[i], y), Ink.Note, colour, TextAnchor.End));
}
