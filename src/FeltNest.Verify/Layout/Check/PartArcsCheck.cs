using FeltNest.Geometry;
using NetTopologySuite.Algorithm.Locate;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Distance;
using static FeltNest.InvariantText;

namespace FeltNest.Layout.Check;

/// <summary>Holds the polygon of a part against its arcs: it must contain them, at most 0.01 mm outside.</summary>
internal static class PartArcsCheck
{
    /// <summary>What is violated, in one line; null where nothing is, or the part has no arcs.</summary>
    public static string? Violation(LayoutPart part)
    {
        if (part.Arcs is not { } arcs)
        {
            return null;
        }

        // The curve is walked in chords within 1e-5 mm of it, so that is what the two limits may be off by.
        const double most = 0.01 + 2e-5;
        const double inside = 2e-5;
        Polygon polygon = PlacedShape.Of(part.Outline, 0, 0, 0);
        Coordinate[] curve = [.. arcs.Vertices.SelectMany((from, i) => Along(from, arcs.Vertices[(i + 1) % arcs.Vertices.Count]))];
        IndexedFacetDistance toPolygon = new(polygon.Shell);
        IndexedFacetDistance toCurve = new(PlacedShape.Factory.CreateLineString([.. curve, curve[0].Copy()]));
        IndexedPointInAreaLocator locator = new(polygon);
        foreach (Coordinate at in curve)
        {
            if (locator.Locate(at) == Location.Exterior
                && toPolygon.Distance(PlacedShape.Factory.CreatePoint(at)) is var off
                && off > inside)
            {
                return Invariant($"part \"{part.Name}\": its arcs leave its polygon by {off:0.#####} mm near ({at.X:0.##}, {at.Y:0.##})");
            }
        }

        foreach (Coordinate at in polygon.Coordinates)
        {
            double away = toCurve.Distance(PlacedShape.Factory.CreatePoint(at));
            if (away > most)
            {
                return Invariant(
                    $"part \"{part.Name}\": its polygon lies {away:0.#####} mm off its arcs near ({at.X:0.##}, {at.Y:0.##}), at "
                        + $"most 0.01 is allowed");
            }
        }

        return null;
    }

    // Own arc arithmetic, apart from the geometry stage's: chords from the start, each at half its turn to the tangent there.
    private static IEnumerable<Coordinate> Along(ArcVertex from, ArcVertex to)
    {
        double chordX = to.X - from.X;
        double chordY = to.Y - from.Y;
        double half = from.Turn / 2;
        double chord = Math.Sqrt((chordX * chordX) + (chordY * chordY));
        if (Math.Abs(half) < 1e-12)
        {
            yield return new Coordinate(from.X, from.Y);
            yield break;
        }

        double radius = chord / 2 / Math.Sin(half);
        double heading = Math.Atan2(chordY, chordX) - half;
        int count = 1 + (int)Math.Min(100_000, Math.Abs(half) / Math.Acos(Math.Max(-1, 1 - (1e-5 / Math.Abs(radius)))));
        for (int k = 0; k < count; k++)
        {
            double turned = from.Turn * k / count;
            double reach = 2 * radius * Math.Sin(turned / 2);
            yield return new Coordinate(
                from.X + (reach * Math.Cos(heading + (turned / 2))), from.Y + (reach * Math.Sin(heading + (turned / 2))));
        }
    }
}
