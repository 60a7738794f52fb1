using FeltNest.Geometry;

namespace FeltNest.Panel.Trace;

/// <summary>A closed line round an area of a picture, in pixels between the pixels' centres.</summary>
internal sealed record Contour
{
    /// <summary>Its places: counter-clockwise round an area, clockwise round a hole.</summary>
    public required Point2[] Places { get; init; }

    /// <summary>Area inside, pixels; below 0 for a hole.</summary>
    public required double Area { get; init; }

    /// <summary>Whether it runs along the picture's border, so that the area is not whole.</summary>
    public required bool IsAtBorder { get; init; }

    /// <summary>Centroid of the area inside.</summary>
    public Point2 Centroid
    {
        get
        {
            Point2 moment = default;
            for (int i = 0; i < Places.Length; i++)
            {
                (Point2 a, Point2 b) = (Places[i] - Places[0], Places[(i + 1) % Places.Length] - Places[0]);
                moment += (a + b) * (a.Cross(b) / (6 * Area));
            }

            return Places[0] + moment;
        }
    }

    /// <summary>Whether a place lies inside the line.</summary>
    public bool Holds(Point2 place)
    {
        bool inside = false;
        for (int i = 0; i < Places.Length; i++)
        {
            (Point2 a, Point2 b) = (Places[i], Places[(i + 1) % Places.Length]);
            if (a.Y > place.Y != b.Y > place.Y && place.X < a.X + ((b.X - a.X) * (place.Y - a.Y) / (b.Y - a.Y)))
            {
                inside = !inside;
            }
        }

        return inside;
    }
}
