using FeltNest.Geometry;

namespace FeltNest.Layout.Polish;

/// <summary>A periodic lay whose panels move with a few parameters: what the polisher changes and what it must keep.</summary>
internal sealed record PoseModel
{
    /// <summary>The part laid.</summary>
    public required Outline Part { get; init; }

    /// <summary>Least distance, mm.</summary>
    public required double Gap { get; init; }

    /// <summary>Lowest y any panel may reach, or null in the plane.</summary>
    public required double? Lower { get; init; }

    /// <summary>Highest y any panel may reach, or null in the plane.</summary>
    public required double? Upper { get; init; }

    /// <summary>Panels of one repeat.</summary>
    public required IReadOnlyList<PanelPose> Panels { get; init; }

    /// <summary>Translations that carry the lay into itself: along the roll, and for the plane a second one.</summary>
    public required IReadOnlyList<(AffineForm X, AffineForm Y)> Periods { get; init; }

    /// <summary>Starting values.</summary>
    public required double[] Parameters { get; init; }

    /// <summary>Which parameters are angles.</summary>
    public required bool[] IsAngle { get; init; }

    /// <summary>Least allowed values.</summary>
    public required double[] Least { get; init; }

    /// <summary>Greatest allowed values.</summary>
    public required double[] Most { get; init; }

    /// <summary>Lowest and highest y a panel may reach, or null in the plane.</summary>
    internal (double Lower, double Upper)? Limits(PanelPose panel) =>
        panel.Within ?? (Lower is { } lower && Upper is { } upper ? (lower, upper) : null);

    /// <summary>Length along the roll (one period), or the area of the cell (two): what the polisher makes small.</summary>
    internal double Cost(double[] at)
    {
        (AffineForm x, AffineForm y) = Periods[0];
        return Periods.Count == 1 ? x.At(at) : (x.At(at) * Periods[1].Y.At(at)) - (y.At(at) * Periods[1].X.At(at));
    }

    /// <summary>Gradient of <see cref="Cost"/>.</summary>
    internal double[] CostGradient(double[] at)
    {
        double[] gradient = new double[Parameters.Length];
        (AffineForm x, AffineForm y) = Periods[0];
        if (Periods.Count == 1)
        {
            x.AddTo(gradient, 1);
            return gradient;
        }

        (AffineForm secondX, AffineForm secondY) = Periods[1];
        x.AddTo(gradient, secondY.At(at));
        secondY.AddTo(gradient, x.At(at));
        y.AddTo(gradient, -secondX.At(at));
        secondX.AddTo(gradient, -y.At(at));
        return gradient;
    }
}
