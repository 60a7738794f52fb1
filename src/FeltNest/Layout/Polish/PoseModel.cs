using FeltNest.Geometry;

namespace FeltNest.Layout.Polish;

/// <summary>A periodic lay whose panels move with a few parameters: what the polisher changes and what it must keep.</summary>
/// <param name="Part">The part laid.</param>
/// <param name="Gap">Least distance, mm.</param>
/// <param name="Lower">Lowest y any panel may reach, or null in the plane.</param>
/// <param name="Upper">Highest y any panel may reach, or null in the plane.</param>
/// <param name="Panels">Panels of one repeat.</param>
/// <param name="Periods">Translations that carry the lay into itself: along the roll, and for the plane a second one.</param>
/// <param name="Parameters">Starting values.</param>
/// <param name="IsAngle">Which parameters are angles.</param>
/// <param name="Least">Least allowed values.</param>
/// <param name="Most">Greatest allowed values.</param>
internal sealed record PoseModel(
    Outline Part,
    double Gap,
    double? Lower,
    double? Upper,
    IReadOnlyList<PanelPose> Panels,
    IReadOnlyList<(AffineForm X, AffineForm Y)> Periods,
    double[] Parameters,
    bool[] IsAngle,
    double[] Least,
    double[] Most)
{
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
