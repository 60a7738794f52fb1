using FeltNest.Geometry;

namespace FeltNest.Panel.Elastic;

/// <summary>Where the mean turn must be held for the chord between the tips to lie along u: secant steps, the first one a turn of the panel
/// as a whole.</summary>
internal sealed class ChordTurn
{
    /// <summary>Angle between chord and u axis, radians, that is left to a turn of the panel as a whole: the felt's warp is then off by
    /// that angle, which no one can measure.</summary>
    public const double Met = 1e-7;

    private (double Turn, double Off)? before;

    /// <summary>The turn to try next.</summary>
    /// <param name="turn">Turn tried.</param>
    /// <param name="tip">Where the tip came to lie.</param>
    /// <param name="rate">How fast the mean turn grows when the panel is turned as a whole.</param>
    public double Next(double turn, Point2 tip, double rate)
    {
        double next = before is { } last && last.Off != tip.Y
            ? turn - (tip.Y * (turn - last.Turn) / (tip.Y - last.Off))
            : turn - (rate * tip.Y / tip.X);
        before = (turn, tip.Y);
        return next;
    }
}
