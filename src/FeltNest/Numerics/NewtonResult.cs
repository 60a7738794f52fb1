namespace FeltNest.Numerics;

/// <summary>Where a constrained minimum was found, with its certificate.</summary>
/// <param name="X">The unknowns.</param>
/// <param name="Multipliers">One for each equation: gradient + multipliers times equation gradients = 0.</param>
/// <param name="Value">Value at the minimum.</param>
/// <param name="Residual">Greatest of the gradient along the equations and of the equations' own residuals.</param>
/// <param name="Iterations">Newton steps taken.</param>
internal sealed record NewtonResult(double[] X, double[] Multipliers, double Value, double Residual, int Iterations);
