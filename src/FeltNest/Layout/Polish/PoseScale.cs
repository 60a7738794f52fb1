using FeltNest.Geometry;

namespace FeltNest.Layout.Polish;

/// <summary>Brings a model to the size of a ball's panel and its parameters back, so that the polish, whose solver knows absolute
/// tolerances only, works alike on parts of every size.</summary>
/// <remarks>The factor is a power of two: scaling is exact, and a lay twice as large is polished to twice the same digits.</remarks>
internal static class PoseScale
{
    // Power of two just below the radius of a ball's panel, mm.
    private const int UsualRadius = 64;

    /// <summary>The factor that brings a part's radius to between 64 and 128 mm.</summary>
    internal static double Of(double radius) => UsualRadius * Math.Pow(2, -Math.Floor(Math.Log2(radius)));

    /// <summary>The model with all lengths times <paramref name="factor"/>.</summary>
    internal static PoseModel Scaled(PoseModel model, double factor) => model with
    {
        Part = Outline.From(model.Part.Points.Select(p => p * factor)),
        Gap = model.Gap * factor,
        Lower = model.Lower * factor,
        Upper = model.Upper * factor,
        Panels = [.. model.Panels.Select(p => new PanelPose
        {
            X = Scaled(p.X, factor),
            Y = Scaled(p.Y, factor),
            Angle = p.Angle,
            Within = p.Within is var (lower, upper) ? (lower * factor, upper * factor) : null,
        })],
        Periods = [.. model.Periods.Select(p => (Scaled(p.X, factor), Scaled(p.Y, factor)))],
        Parameters = Scaled(model, model.Parameters, factor),
        Least = Scaled(model, model.Least, factor),
        Most = Scaled(model, model.Most, factor),
    };

    /// <summary>Values of the parameters with all lengths times <paramref name="factor"/>.</summary>
    internal static double[] Scaled(PoseModel model, double[] values, double factor) =>
        [.. values.Select((v, i) => model.IsAngle[i] ? v : v * factor)];

    private static AffineForm Scaled(AffineForm form, double factor) => form with { Constant = form.Constant * factor };
}
