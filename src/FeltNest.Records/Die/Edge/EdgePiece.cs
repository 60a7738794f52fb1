using FeltNest.Geometry;

namespace FeltNest.Die.Edge;

/// <summary>One arc or straight piece of a cutting edge.</summary>
/// <param name="Start">Where it begins, mm.</param>
/// <param name="End">Where it ends, mm.</param>
/// <param name="Turn">Signed included angle, radians, counter-clockwise positive; 0 is straight.</param>
/// <param name="Centre">Centre of the arc, mm; the middle of a straight piece.</param>
/// <param name="RadiusMm">Radius; infinite for a straight piece.</param>
public readonly record struct EdgePiece(Point2 Start, Point2 End, double Turn, Point2 Centre, double RadiusMm)
{
    /// <summary>Length along the piece, mm.</summary>
    public double LengthMm => Turn == 0 ? (End - Start).Length : RadiusMm * Math.Abs(Turn);

    /// <summary>Place half way along.</summary>
    public Point2 Middle => At(0.5);

    /// <summary>The piece from a vertex to the next place.</summary>
    public static EdgePiece Of(ArcVertex from, Point2 to)
    {
        if (from.Turn == 0)
        {
            return new EdgePiece(from.Point, to, 0, (from.Point + to) * 0.5, double.PositiveInfinity);
        }

        ArcPiece arc = ArcPiece.Between(from.Point, to, from.Turn);
        return new EdgePiece(from.Point, to, from.Turn, arc.Centre, arc.Radius);
    }

    /// <summary>Place at a share of the length.</summary>
    public Point2 At(double share) => Turn == 0 ? Start + ((End - Start) * share) : Centre + (Start - Centre).Turned(Turn * share);

    /// <summary>Unit direction at a share of the length.</summary>
    public Point2 Direction(double share)
    {
        if (Turn == 0)
        {
            return (End - Start) * (1 / (End - Start).Length);
        }

        Point2 spoke = (Start - Centre).Turned(Turn * share) * (1 / RadiusMm);
        return Turn > 0 ? spoke.Left : -spoke.Left;
    }

    /// <summary>The piece between two shares of the length.</summary>
    public EdgePiece Part(double first, double last) => Of(new ArcVertex(At(first).X, At(first).Y, Turn * (last - first)), At(last));

    /// <summary>Share of the length at the place of the piece nearest to another, from 0 to 1.</summary>
    public double ShareAt(Point2 place)
    {
        Point2 way = End - Start;
        Point2 start = Start - Centre;
        Point2 spoke = place - Centre;
        if (Turn == 0)
        {
            return Math.Clamp((place - Start).Dot(way) / way.Dot(way), 0, 1);
        }

        // Measured from the middle, so that a place just before the start is no full turn away.
        Point2 middle = start.Turned(Turn / 2);
        return Math.Clamp(0.5 + (Math.Atan2(middle.Cross(spoke), middle.Dot(spoke)) / Turn), 0, 1);
    }

    /// <summary>Distance from a place to the piece, mm.</summary>
    public double DistanceTo(Point2 place)
    {
        if (Turn == 0)
        {
            Point2 way = End - Start;
            return (Start + (way * Math.Clamp((place - Start).Dot(way) / way.Dot(way), 0, 1)) - place).Length;
        }

        Point2 spoke = place - Centre;
        Point2 start = Start - Centre;
        double angle = Math.Atan2(start.Cross(spoke), start.Dot(spoke)) * Math.Sign(Turn);
        angle = angle < 0 ? angle + (2 * Math.PI) : angle;
        return angle <= Math.Abs(Turn) ? Math.Abs(spoke.Length - RadiusMm) : Math.Min((place - Start).Length, (place - End).Length);
    }
}
