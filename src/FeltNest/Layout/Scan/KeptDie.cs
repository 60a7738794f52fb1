using FeltNest.Geometry;

namespace FeltNest.Layout.Scan;

/// <summary>One die on rolls of other widths: its pitch, tilts and phases stay, rows drop out at an edge or, where the die continues as a
/// lattice, come in.</summary>
internal static class KeptDie
{
    // Panels whose places across differ by less than this, mm, stand in one row: a drawing rounds them.
    private const double OneRow = 0.01;

    // Steps and heights of rows that differ by less than this, mm, are equal.
    private const double Same = 1e-6;

    /// <summary>The least width of every number of rows, fewest first, up to <paramref name="mostWidthMm"/>. Of the windows of so many
    /// neighbouring rows the narrowest counts. Beyond the die's own rows only where all rows are equal and equally far apart, as they then
    /// continue.</summary>
    /// <exception cref="InputException">The layout has several bands: each is a die of its own.</exception>
    public static IReadOnlyList<DropWidth> Widths(RollLayout layout, double mostWidthMm)
    {
        if (layout.Bands.Count > 1)
        {
            throw new InputException(
                AskedFor.KeptDie, "the layout has several bands, each with a die of its own: keep a layout of one repeat");
        }

        LayoutRepeat repeat = layout.Bands[0].Repeat;
        List<Row> rows = Rows(layout, repeat);
        List<DropWidth> widths = [];
        for (int count = 1; count <= rows.Count; count++)
        {
            IEnumerable<(double Width, int Panels)> windows =
                Enumerable.Range(0, rows.Count - count + 1).Select(from => Window(rows.GetRange(from, count)));
            (double width, int panels) = windows.MinBy(w => (Math.Round(w.Width, 9), -w.Panels));
            widths.Add(new DropWidth
            {
                Rows = count,
                LeastWidthMm = width + layout.Trims.TotalMm,
                PanelsPerMetre = 1000 * panels / repeat.LengthMm,
            });
        }

        if (rows.Count > 1 && IsLattice(rows))
        {
            double step = rows[1].Y - rows[0].Y;
            for (int count = rows.Count + 1; widths[^1].LeastWidthMm + step <= mostWidthMm; count++)
            {
                widths.Add(new DropWidth
                {
                    Rows = count,
                    LeastWidthMm = widths[^1].LeastWidthMm + step,
                    PanelsPerMetre = 1000.0 * count * rows[0].Panels / repeat.LengthMm,
                });
            }
        }

        return [.. widths.Where(w => w.LeastWidthMm <= mostWidthMm)];
    }

    /// <summary>Panels per metre of the die's own rows that fit a width, the window of rows with the most of them; 0 where none does. Bands
    /// count each with its own repeat.</summary>
    public static double PanelsPerMetreAt(RollLayout layout, double widthMm)
    {
        (double Low, double High, double PerMetre)[] panels = [.. layout.Bands.SelectMany(band => band.Repeat.Panels.Select(p =>
        {
            Outline turned = layout.Parts[p.Part].Outline.Turned(double.DegreesToRadians(p.AngleDeg));
            return (p.YMm + turned.MinY, p.YMm + turned.MaxY, 1000 / band.Repeat.LengthMm);
        }))];
        double usable = widthMm - layout.Trims.TotalMm + Same;
        return panels.Max(first => panels.Where(p => p.Low >= first.Low && p.High <= first.Low + usable).Sum(p => p.PerMetre));
    }

    private static (double Width, int Panels) Window(List<Row> rows) =>
        (rows.Max(r => r.High) - rows.Min(r => r.Low), rows.Sum(r => r.Panels));

    private static bool IsLattice(List<Row> rows) =>
        rows.TrueForAll(r => r.Panels == rows[0].Panels && Math.Abs(r.High - r.Low - (rows[0].High - rows[0].Low)) < Same)
        && rows.Zip(rows.Skip(1), (a, b) => b.Y - a.Y).All(step => Math.Abs(step - (rows[1].Y - rows[0].Y)) < Same);

    private static List<Row> Rows(RollLayout layout, LayoutRepeat repeat)
    {
        List<Row> rows = [];
        foreach (PlacedPanel panel in repeat.Panels.OrderBy(p => p.YMm))
        {
            Outline turned = layout.Parts[panel.Part].Outline.Turned(double.DegreesToRadians(panel.AngleDeg));
            Row row = new() { Y = panel.YMm, Low = panel.YMm + turned.MinY, High = panel.YMm + turned.MaxY, Panels = 1 };
            if (rows.Count > 0 && row.Y - rows[^1].Y < OneRow)
            {
                rows[^1] = new Row
                {
                    Y = rows[^1].Y,
                    Low = Math.Min(rows[^1].Low, row.Low),
                    High = Math.Max(rows[^1].High, row.High),
                    Panels = rows[^1].Panels + 1,
                };
            }
            else
            {
                rows.Add(row);
            }
        }

        return rows;
    }

    private sealed record Row
    {
        public required double Y { get; init; }

        public required double Low { get; init; }

        public required double High { get; init; }

        public required int Panels { get; init; }
    }
}
