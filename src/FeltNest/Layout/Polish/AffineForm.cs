namespace FeltNest.Layout.Polish;

/// <summary>A constant and a few parameters with their factors: constant + sum of factor times parameter.</summary>
internal sealed record AffineForm(double Constant, params (int Parameter, double Factor)[] Terms)
{
    /// <summary>A form that is one parameter.</summary>
    internal static AffineForm Of(int parameter) => new(0, (parameter, 1));

    /// <summary>Value at the given parameters.</summary>
    internal double At(double[] parameters)
    {
        double sum = Constant;
        foreach ((int parameter, double factor) in Terms)
        {
            sum += factor * parameters[parameter];
        }

        return sum;
    }

    /// <summary>Adds <paramref name="weight"/> times the factors to a gradient.</summary>
    internal void AddTo(double[] gradient, double weight)
    {
        foreach ((int parameter, double factor) in Terms)
        {
            gradient[parameter] += weight * factor;
        }
    }
}
