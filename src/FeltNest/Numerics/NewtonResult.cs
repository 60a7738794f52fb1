namespace FeltNest.Numerics;

/// <summary>Where a constrained minimum was found, with its certificate.</summary>
internal sealed record NewtonResult
{
    /// <summary>The unknowns.</summary>
    public required double[] X { get; init; }

    /// <summary>One for each equation: gradient + multipliers times equation gradients = 0.</summary>
    public required double[] Multipliers { get; init; }

    /// <summary>Value at the minimum.</summary>
    public required double Value { get; init; }

    /// <summary>Greatest of the gradient along the equations and of the equations' own residuals.</summary>
    public required double Residual { get; init; }

    /// <summary>Newton steps taken.</summary>
    public required int Iterations { get; init; }
}
