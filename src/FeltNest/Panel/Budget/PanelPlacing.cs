using FeltNest.Seam;

namespace FeltNest.Panel.Budget;

/// <summary>How far a panel is off its place on the ball, as angles: its frame has the pole on +z and the long axis along x.</summary>
/// <param name="Along">Along the long axis, radians.</param>
/// <param name="Across">Across it, to the left, radians.</param>
/// <param name="Turn">Counter-clockwise about the pole, seen from outside, radians.</param>
internal readonly record struct PanelPlacing(double Along, double Across, double Turn)
{
    /// <summary>Both together, as small moves add.</summary>
    public static PanelPlacing operator +(PanelPlacing a, PanelPlacing b) => new(a.Along + b.Along, a.Across + b.Across, a.Turn + b.Turn);

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
