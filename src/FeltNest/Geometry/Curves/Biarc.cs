namespace FeltNest.Geometry.Curves;

/// <summary>Two arcs that join tangentially and meet a given direction at each end.</summary>
/// <remarks>Follows K. M. Bolton, "Biarc curves", <i>Computer-Aided Design</i> 7(2), 1975: of the one-parameter family the one with equal
/// tangent lengths at both ends.</remarks>
internal readonly record struct Biarc
{
    private Biarc(ArcVertex first, ArcVertex second, Point2 end)
    {
        First = first;
        Second = second;
        End = end;
    }

    /// <summary>Start and turn of the first arc.</summary>
    public ArcVertex First { get; }

    /// <summary>Joint and turn of the second arc.</summary>
    public ArcVertex Second { get; }

    /// <summary>Where the second arc ends.</summary>
    public Point2 End { get; }

    /// <summary>The biarc between two places with the given directions, of any length but 0.</summary>
    /// <remarks>Both arcs straight where the directions lie along the chord. Directions exactly against the chord give no biarc: the fit
    /// never asks for one.</remarks>
    public static Biarc Between(CurvePoint from, CurvePoint to)
    {
        Point2 a = from.Derivative * (1 / from.Derivative.Length);
        Point2 b = to.Derivative * (1 / to.Derivative.Length);
        Point2 chord = to.Place - from.Place;
        double along = chord.Dot(a + b);
        double reach = chord.Dot(chord) / (along + Math.Sqrt((along * along) + (2 * (1 - a.Dot(b)) * chord.Dot(chord))));
        Point2 joint = (from.Place + to.Place + ((a - b) * reach)) * 0.5;
        return new Biarc(
            new(from.Place.X, from.Place.Y, Turn(a, joint - from.Place)),
            new(joint.X, joint.Y, -Turn(b, to.Place - joint)),
            to.Place);
    }

    /// <summary>Distance from a point to the nearer of the two arcs.</summary>
    public double DistanceTo(Point2 point) => Math.Min(Distance(First, Second.Point, point), Distance(Second, End, point));

    /// <summary>Whether an arc rises so little over its chord that it is a straight line: no measure sees it, and its centre would be too
    /// far off to compute with.</summary>
    internal static bool IsStraight(double turn, double chord)
    {
        // Rise, mm.
        const double straight = 1e-9;
        return Math.Abs(turn) * chord < 8 * straight;
    }

    // Twice the angle from a direction to a chord is the turn of the arc that starts in that direction; at the far end the sign is the
    // other way.
    private static double Turn(Point2 direction, Point2 chord)
    {
        double turn = 2 * Math.Atan2(direction.Cross(chord), direction.Dot(chord));
        return IsStraight(turn, chord.Length) ? 0 : turn;
    }

    private static double Distance(ArcVertex from, Point2 to, Point2 point)
    {
        Point2 chord = to - from.Point;
        Point2 offset = point - from.Point;
        if (from.Turn == 0)
        {
            double share = Math.Clamp(offset.Dot(chord) / chord.Dot(chord), 0, 1);
            return (offset - (chord * share)).Length;
        }

        ArcPiece arc = ArcPiece.Between(from.Point, to, from.Turn);
        Point2 spoke = point - arc.Centre;
        double angle = Math.IEEERemainder(Math.Atan2(spoke.Y, spoke.X) - arc.StartAngle - (arc.Turn / 2), 2 * Math.PI);
        return Math.Abs(angle) <= Math.Abs(arc.Turn) / 2
            ? Math.Abs(spoke.Length - arc.Radius)
            : Math.Min(offset.Length, (point - to).Length);
    }
}
