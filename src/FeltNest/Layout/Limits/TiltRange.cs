using FeltNest.Geometry;

namespace FeltNest.Layout.Limits;

/// <summary>Tilts a panel may have, radians: from <see cref="Least"/> to <see cref="Most"/>, and all of these turned by half a
/// turn unless one way is asked for.</summary>
internal readonly record struct TiltRange
{
    /// <summary>Least tilt.</summary>
    public required double Least { get; init; }

    /// <summary>Greatest tilt.</summary>
    public required double Most { get; init; }

    /// <summary>True when every tilt is allowed; the range then spans half a turn and wraps round.</summary>
    public required bool IsFree { get; init; }

    /// <summary>The range that a layout's rules allow.</summary>
    internal static TiltRange Of(LayoutRules rules)
    {
        if (rules.WarpAngleDeg is not { } angle || rules.WarpToleranceDeg >= 90)
        {
            return new TiltRange { Least = double.NegativeInfinity, Most = double.PositiveInfinity, IsFree = true };
        }

        double middle = double.DegreesToRadians(Math.IEEERemainder(angle, 180));
        double tolerance = double.DegreesToRadians(rules.WarpToleranceDeg);
        return new TiltRange { Least = middle - tolerance, Most = middle + tolerance, IsFree = false };
    }

    /// <summary>Least extent of a part across the roll at any allowed tilt, and the tilt that has it.</summary>
    internal (double Height, double Tilt) Flattest(Outline part) =>
        IsFree ? OutlineWidth.Least(part, 0, Math.PI) : OutlineWidth.Least(part, Least, Most);

    /// <summary>Tilts about <paramref name="stepDeg"/> degrees apart over the range, ends included; a free range starts at 0 and leaves out
    /// its far end.</summary>
    internal double[] Grid(double stepDeg)
    {
        if (IsFree)
        {
            int whole = (int)Math.Round(180 / stepDeg);
            return [.. Enumerable.Range(0, whole).Select(i => Math.PI * i / whole)];
        }

        (double least, double span) = (Least, Most - Least);
        int count = (int)Math.Ceiling((span / double.DegreesToRadians(stepDeg)) - 1e-9);
        return count == 0 ? [least] : [.. Enumerable.Range(0, count + 1).Select(i => least + (span * i / count))];
    }
}
