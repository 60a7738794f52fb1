using FeltNest.Die;
using FeltNest.Die.Check;
using FeltNest.Die.Proof;
using FeltNest.Files;
using FeltNest.Files.Dies;
using FeltNest.Geometry;
using FeltNest.Layout;

namespace FeltNest.Tests.Die.Proof;

/// <summary>Made-up measurements of dies: every point of every edge is known.</summary>
internal static class MadeDieCases
{
    /// <summary>The die for panels, as its file states it.</summary>
    public static StatedDie Panels { get; } = Stated(DieCases.Panels);

    /// <summary>The rings of a die: points on its edges, moved.</summary>
    /// <param name="die">The die.</param>
    /// <param name="move">Where a point of a cavity, by its number, goes.</param>
    /// <param name="named">Whether the rings say which cavity they are.</param>
    public static MeasuredRing[] Rings(StatedDie die, Func<int, Point2, Point2> move, bool named = true) =>
    [
        .. die.Cavities.Select((placed, i) => new MeasuredRing
        {
            Cavity = named ? i + 1 : null,
            Points = [.. Edge(die, placed).Select(p => move(i + 1, p))],
        }),
    ];

    private static StatedDie Stated(DieDesign design) =>
        DieReader.Read(InputText.Of("die.json", DieWriter.Write(design))).Die;

    // Places a millimetre apart along the edge's polygon.
    private static IEnumerable<Point2> Edge(StatedDie die, PlacedPanel placed)
    {
        IReadOnlyList<Point2> p = die.Edges[placed.Part].ContainingPolygon(0.001).Points;
        double left = 0;
        for (int i = 0; i < p.Count; i++)
        {
            Point2 way = p[(i + 1) % p.Count] - p[i];
            for (; left < way.Length; left++)
            {
                yield return (p[i] + (way * (left / way.Length))).Turned(double.DegreesToRadians(placed.AngleDeg))
                    + new Point2(placed.XMm, placed.YMm);
            }

            left -= way.Length;
        }
    }
}
