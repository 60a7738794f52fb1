namespace FeltNest.Numerics;

/// <summary>A smooth function to be made least under smooth equations, for <see cref="ConstrainedNewton"/>.</summary>
internal abstract class ConstrainedProblem
{
    /// <summary>How many unknowns there are.</summary>
    public abstract int Unknowns { get; }

    /// <summary>How many equations hold them.</summary>
    public abstract int Equations { get; }

    /// <summary>Value and residuals of the equations; false where the function has no value.</summary>
    public abstract bool TryValue(ReadOnlySpan<double> x, out double value, Span<double> residuals);

    /// <summary>Gradient of the value, and of each equation as a row of <paramref name="jacobian"/>.</summary>
    public abstract void Linearise(ReadOnlySpan<double> x, Span<double> gradient, Span<double> jacobian);

    /// <summary>Second derivatives of value plus multipliers times equations: full rows, both triangles.</summary>
    public abstract void Curve(ReadOnlySpan<double> x, ReadOnlySpan<double> multipliers, Span<double> hessian);
}
