namespace FeltNest.Ball;

/// <summary>A point of a seam given as points: centre of the ball at 0, z through the pole of one panel, x through one of its two tips; any
/// unit, as only the direction counts.</summary>
/// <param name="X">Towards the tip.</param>
/// <param name="Y">Across the panel.</param>
/// <param name="Z">Through the panel's pole.</param>
public readonly record struct SeamPoint(double X, double Y, double Z);
