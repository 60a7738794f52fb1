namespace FeltNest.Geometry.Curves;

/// <summary>A closed smooth curve in the plane, counter-clockwise, mm.</summary>
internal interface IPlaneCurve
{
    /// <summary>Parameter after which the curve is back at its start.</summary>
    public double Period { get; }

    /// <summary>Place and derivative; the derivative is nowhere zero.</summary>
    public CurvePoint At(double parameter);
}
