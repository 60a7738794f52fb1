using FeltNest.Geometry;

namespace FeltNest.Die.Check;

/// <summary>What a die file says of its board for the laser.</summary>
internal sealed record StatedLaser
{
    /// <summary>Kerf taken off, mm.</summary>
    public required double KerfMm { get; init; }

    /// <summary>Slot when cut, mm.</summary>
    public required double SlotMm { get; init; }

    /// <summary>Length of a bridge, mm.</summary>
    public required double BridgeMm { get; init; }

    /// <summary>Whether it is drawn from the die's side.</summary>
    public required bool Mirrored { get; init; }

    /// <summary>Where it is split, the other number 0, mm.</summary>
    public required IReadOnlyList<(double X, double Y)> Splits { get; init; }

    /// <summary>Distance at which the pieces of a split board are drawn, mm.</summary>
    public const double ApartMm = 20;

    /// <summary>Moves a place of the drawing back to the board in one piece.</summary>
    public Point2 Together(Point2 drawn)
    {
        foreach ((int i, (double x, double y)) in Splits.Index().Reverse())
        {
            bool along = x > 0;
            double by = (i + 1) * ApartMm;
            if ((along ? drawn.X : drawn.Y) > (along ? x : y) + by - (ApartMm / 2))
            {
                return along ? new Point2(drawn.X - by, drawn.Y) : new Point2(drawn.X, drawn.Y - by);
            }
        }

        return drawn;
    }
}
