using FeltNest.Geometry;
using FeltNest.Layout;

namespace FeltNest.Rolls.Plan;

/// <summary>A panel of a strike, placed in the strike's frame: x from the strike's first cut edge, y from the lower selvedge before any
/// shift.</summary>
public sealed class StrikePanel
{
    internal StrikePanel(LayoutPart part, PlacedPanel placed)
    {
        Placed = placed;
        Turned = part.Outline.Turned(double.DegreesToRadians(placed.AngleDeg));
        Corners = [.. Turned.Points.Select(p => p + new Point2(placed.XMm, placed.YMm))];
        (MinX, MaxX) = (Corners.Min(p => p.X), Corners.Max(p => p.X));
        (MinY, MaxY) = (Corners.Min(p => p.Y), Corners.Max(p => p.Y));
    }

    /// <summary>Part, place and angle.</summary>
    public PlacedPanel Placed { get; }

    /// <summary>Corners of its polygon.</summary>
    public IReadOnlyList<Point2> Corners { get; }

    /// <summary>Least x of a corner.</summary>
    public double MinX { get; }

    /// <summary>Greatest x of a corner.</summary>
    public double MaxX { get; }

    /// <summary>Least y of a corner.</summary>
    public double MinY { get; }

    /// <summary>Greatest y of a corner.</summary>
    public double MaxY { get; }

    /// <summary>The part turned about its own origin.</summary>
    internal Outline Turned { get; }
}
