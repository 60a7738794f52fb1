using FeltNest.Geometry;

namespace FeltNest.Die.Edge;

/// <summary>One arc or straight piece of a cutting edge.</summary>
public readonly record struct EdgePiece
{
    /// <summary>Where it begins, mm.</summary>
    public required Point2 Start { get; init; }

    /// <summary>Where it ends, mm.</summary>
    public required Point2 End { get; init; }

    /// <summary>Signed included angle, radians, counter-clockwise positive; 0 is straight.</summary>
    public required double Turn { get; init; }

    /// <summary>Centre of the arc, mm; the middle of a straight piece.</summary>
    public required Point2 Centre { get; init; }

    /// <summary>Radius; infinite for a straight piece.</summary>
    public required double RadiusMm { get; init; }

    /// <summary>Length along the piece, mm.</summary>
    public double LengthMm => Turn == 0 ? (End - Start).Length : RadiusMm * Math.Abs(Turn);

    /// <summary>Place half way along.</summary>
    public Point2 Middle => At(0.5);

    /// <summary>The piece from a vertex to the next place.</summary>
    public static EdgePiece Of(ArcVertex from, Point2 to)
    {
        if (from.Turn == 0)
        {
            return new EdgePiece
            {
                Start = from.Point,
                End = to,
                Turn = 0,
                Centre = (from.Point + to) * 0.5,
                RadiusMm = double.PositiveInfinity,
            };
        }

        ArcPiece arc = ArcPiece.Between(from.Point, to, from.Turn);
        return new EdgePiece
        {
            Start = from.Point,
            End = to,
            Turn = from.Turn,
            Centre = arc.Centre,
            RadiusMm = arc.Radius,
        };
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
