namespace FeltNest.Panel;

/// <summary>One wave by which a cut edge is moved along its normal, against the seam parameter s of the edge: the amount times cos ks or
/// sin ks.</summary>
/// <param name="Order">k, even, 0 for a move that is the same all round.</param>
/// <param name="IsSine">Whether it is the sine, which no mirrored panel has.</param>
/// <param name="AmountMm">mm, positive outwards.</param>
public readonly record struct EdgeWave(int Order, bool IsSine, double AmountMm)
{
    /// <summary>The move at a place, mm outwards.</summary>
    public double At(double s) => AmountMm * ShapeAt(s);

    /// <summary>Its change with the seam parameter, mm a radian.</summary>
    public double SlopeAt(double s) => AmountMm * Order * (IsSine ? Math.Cos(Order * s) : -Math.Sin(Order * s));

    /// <summary>The wave of amount 1 at a place.</summary>
    public double ShapeAt(double s) => IsSine ? Math.Sin(Order * s) : Math.Cos(Order * s);
}
