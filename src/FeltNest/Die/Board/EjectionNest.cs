using FeltNest.Geometry;

namespace FeltNest.Die.Board;

/// <summary>Lays the pieces of ejection on sheets, box beside box.</summary>
/// <remarks>Rows of boxes by falling height, each in the first row with room (E. G. Coffman, M. R. Garey, D. S. Johnson, R. E. Tarjan,
/// <em>SIAM Journal on Computing</em> 9 (1980) 808-826; from memory). It is simple and wastes some sheet: foam is cheap. Pieces larger than
/// a sheet are parted at its length and width.</remarks>
internal static class EjectionNest
{
    /// <summary>Room between pieces and to the sheet's edge, mm.</summary>
    public const double Between = 3;

    /// <summary>The pieces at their places: sheet from 0, and rings in the frame of that sheet, a ring inside another a hole.</summary>
    public static IReadOnlyList<(int Sheet, IReadOnlyList<IReadOnlyList<Point2>> Rings)> Of(
        DieDesign design, double lengthMm, double widthMm)
    {
        IReadOnlyList<IReadOnlyList<Point2>>[] pieces =
        [
            .. PolygonSets.Parted(design.Ejection.Rings, lengthMm - (2 * Between), widthMm - (2 * Between)),
        ];
        List<Row> rows = [];
        List<double> used = [];
        List<(int Sheet, IReadOnlyList<IReadOnlyList<Point2>> Rings)> placed = [];
        foreach (IReadOnlyList<IReadOnlyList<Point2>> rings in pieces.OrderByDescending(High))
        {
            Point2 low = new(rings[0].Min(p => p.X), rings[0].Min(p => p.Y));
            double wide = rings[0].Max(p => p.X) - low.X;
            double high = High(rings);
            Row? row = rows.Find(r => r.Right + wide <= lengthMm - Between && high <= r.High);
            if (row is null)
            {
                int sheet = used.FindIndex(top => top + high <= widthMm - Between);
                if (sheet < 0)
                {
                    used.Add(Between);
                    sheet = used.Count - 1;
                }

                row = new Row { Sheet = sheet, Low = used[sheet], High = high, Right = Between };
                rows.Add(row);
                used[sheet] += high + Between;
            }

            Point2 by = new Point2(row.Right, row.Low) - low;
            placed.Add((row.Sheet, [.. rings.Select(r => (IReadOnlyList<Point2>)[.. r.Select(p => p + by)])]));
            row.Right += wide + Between;
        }

        return placed;
    }

    private static double High(IReadOnlyList<IReadOnlyList<Point2>> rings) => rings[0].Max(p => p.Y) - rings[0].Min(p => p.Y);

    private sealed class Row
    {
        public required int Sheet { get; init; }

        public required double Low { get; init; }

        public required double High { get; init; }

        public required double Right { get; set; }
    }
}
