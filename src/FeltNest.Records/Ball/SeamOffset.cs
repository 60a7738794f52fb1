namespace FeltNest.Ball;

/// <summary>One wave by which a shaped seam lies beside the two-harmonic seam: the amount times sin k(s - pi/4).</summary>
/// <param name="Order">k, even: 2, 6, 10, ... keep both mirrors of the panel, 4, 8, 12, ... keep its half-turn alone.</param>
/// <param name="AmountMm">Greatest offset of the wave on the fitted sphere, mm, positive into the panel that holds the pole.</param>
public readonly record struct SeamOffset(int Order, double AmountMm);
