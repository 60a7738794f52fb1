namespace FeltNest.Layout.Free;

/// <summary>Panels anywhere on the cylinder that a repeat is, perhaps overlapping.</summary>
internal sealed class FreeLay
{
    internal FreeLay(double repeat, double[] x, double[] y, int[] angle) => (Repeat, X, Y, Angle) = (repeat, x, y, angle);

    /// <summary>Length of the repeat, mm.</summary>
    internal double Repeat { get; }

    /// <summary>Places along the roll, mm.</summary>
    internal double[] X { get; }

    /// <summary>Places across, mm.</summary>
    internal double[] Y { get; }

    /// <summary>Angles, as indices.</summary>
    internal int[] Angle { get; }

    internal int Count => X.Length;

    /// <summary>The same panels on a repeat of another length, their places stretched with it.</summary>
    internal FreeLay Stretched(double repeat) => new(repeat, [.. X.Select(x => x * repeat / Repeat)], [.. Y], [.. Angle]);
}
