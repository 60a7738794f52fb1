using FeltNest.Seam;

namespace FeltNest.Panel.Budget;

/// <summary>How far a panel is off its place on the ball, as angles: its frame has the pole on +z and the long axis along x.</summary>
internal readonly record struct PanelPlacing
{
    /// <summary>Along the long axis, radians.</summary>
    public double Along { get; init; }

    /// <summary>Across it, to the left, radians.</summary>
    public double Across { get; init; }

    /// <summary>Counter-clockwise about the pole, seen from outside, radians.</summary>
    public double Turn { get; init; }

    /// <summary>Both together, as small moves add.</summary>
    public static PanelPlacing operator +(PanelPlacing a, PanelPlacing b) =>
        new() { Along = a.Along + b.Along, Across = a.Across + b.Across, Turn = a.Turn + b.Turn };

    /// <summary>An edge moved so.</summary>
    public IReadOnlyList<SpherePoint> Of(IReadOnlyList<SpherePoint> edge)
    {
        SpherePoint axis = new(-Across, Along, Turn);
        double angle = axis.Length;
        if (angle == 0)
        {
            return edge;
        }

        SpherePoint unit = 1 / angle * axis;
        (double sin, double cos) = Math.SinCos(angle);
        return [.. edge.Select(p => (cos * p) + (sin * unit.Cross(p)) + ((1 - cos) * unit.Dot(p) * unit))];
    }
}
