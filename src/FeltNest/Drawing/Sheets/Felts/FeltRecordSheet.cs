using FeltNest.Drawing.Parts;
using FeltNest.Geometry;
using static FeltNest.Drawing.Sheets.Felts.FeltTestPage;
using static FeltNest.InvariantText;

namespace FeltNest.Drawing.Sheets.Felts;

/// <summary>The third sheet for the tests of felt: the record to fill in.</summary>
internal static class FeltRecordSheet
{
    private const double RowStep = 5;

    // Per cents at which forces are read, and the length between the jaws, mm.
    private static readonly int[] Percents = [1, 2, 3, 4, 5, 6, 7, 8];
    private const double Gauge = 200;

    /// <summary>Draws the sheet.</summary>
    public static Sheet Draw(FeltTestPlan plan)
    {
        double width = Width - (2 * Margin);
        string[][] forces = [Head("strip: N at"), .. Rows("W"), .. Rows("F"), .. Rows("B")];
        string[][] narrow = [Head("narrower, mm"), .. Rows("W")];
        double[] wide = [26, .. Percents.Select(_ => (width - 26) / Percents.Length)];
        double second = Top - 2 - BlankTable.Height(forces.Length, RowStep) - 3;
        double third = second - BlankTable.Height(narrow.Length, RowStep) - 3;
        double fourth = third - BlankTable.Height(plan.Discs.Count + 1, RowStep) - 3;
        return Of(
            "Felt tests: record", "tables to fill in with the readings of one lot",
            "felt __________________  lot ____________  date ____________  by ____________",
            [
                new GroupMark("strips", [.. BlankTable.Draw(new Point2(Margin, Top - 2), wide, RowStep, forces)]),
                new GroupMark("narrowing", [.. BlankTable.Draw(new Point2(Margin, second), wide, RowStep, narrow)]),
                new GroupMark("wraps", [.. Wraps(third)]),
                new GroupMark("discs", [.. Discs(third, plan)]),
                new GroupMark("squares", [.. Squares(fourth)]),
                new GroupMark("thickness", [.. Thickness(fourth)]),
                new GroupMark("words", [.. TextBlock.Draw(new Point2(Margin, fourth - BlankTable.Height(7, RowStep) - 4), width, Words)]),
            ]);
    }

    private static readonly string[] Words =
    [
        "Disc: ring F for flat, P for puckered. Air: ______ C, ______ %. Foot of the gauge: ______ kPa. Strips: ______ mm wide, ______ mm "
            + "between the jaws, pretension ______ N, ______ mm/min.",
        "Write the list with one line a reading: felt, lot, date, test, specimen and the columns of that test (page of fields, "
            + "felt-readings).",
    ];

    private static string[] Head(string first) =>
        [first, .. Percents.Select(percent => Invariant($"{percent * Gauge / 100:0} mm"))];

    private static IEnumerable<string[]> Rows(string letter) =>
        Enumerable.Range(1, 5).Select(i => new[] { Invariant($"{letter}{i}") });

    private static IEnumerable<Mark> Wraps(double top) => BlankTable.Draw(
        new Point2(Margin, top), [12, 20, 20, 20, 20], RowStep,
        [
            ["wrap", "core mm", "width", "thick", "closes at"],
            .. Enumerable.Range(1, 6).Select(i => new[] { Invariant($"N{i}") }),
        ]);

    private static IEnumerable<Mark> Discs(double top, FeltTestPlan plan) => BlankTable.Draw(
        new Point2(Margin + 96, top), [16, 18, 18, 18, 20], RowStep,
        [
            ["disc", "first", "second", "third", "thick"],
            .. plan.Discs.Select(disc => new[] { Invariant($"{disc.DiameterMm:0} mm"), "F      P", "F      P", "F      P" }),
        ]);

    private static IEnumerable<Mark> Squares(double top) => BlankTable.Draw(
        new Point2(Margin, top), [20, 18, 18, 18, 18], RowStep,
        [
            ["square", "before", "after", "before", "after"],
            .. Enumerable.Range(1, 3).SelectMany(i => new[] { new[] { Invariant($"S{i} warp") }, [Invariant($"S{i} weft")] }),
        ]);

    private static IEnumerable<Mark> Thickness(double top) => BlankTable.Draw(
        new Point2(Margin + 96, top), [20, 14, 14, 14, 14, 14], RowStep,
        [
            ["thick mm", "T1", "T2", "T3", "T4", "T5"],
            [],
            ["mass", "length", "width", "g"],
            .. Enumerable.Range(1, 3).Select(i => new[] { Invariant($"M{i}") }),
        ]);
}
