namespace FeltNest.Rolls;

/// <summary>One real roll as measured. Roll frame: x along the feed from the roll's start, y across from the lower selvedge, which runs
/// along the guide.</summary>
public sealed record FeltRoll
{
    /// <summary>Name or number of the roll.</summary>
    public required string Name { get; init; }

    /// <summary>Felt, or null.</summary>
    public required string? Felt { get; init; }

    /// <summary>Shade lot, or null.</summary>
    public required string? Lot { get; init; }

    /// <summary>Length, mm.</summary>
    public required double LengthMm { get; init; }

    /// <summary>Width readings in order of x: one at least.</summary>
    public required IReadOnlyList<WidthReading> Widths { get; init; }

    /// <summary>Splices across the whole width, in order along the roll.</summary>
    public required IReadOnlyList<RollSplice> Splices { get; init; }

    /// <summary>Direction of the warp from the selvedge, degrees counter-clockwise.</summary>
    public required double SkewDeg { get; init; }

    /// <summary>Which way the nap lies, or null where it is not known.</summary>
    public required NapDirection? Nap { get; init; }

    /// <summary>Mass per area, g/m2, or null.</summary>
    public required double? MassPerAreaGsm { get; init; }

    /// <summary>Faults.</summary>
    public required IReadOnlyList<RollFault> Faults { get; init; }

    /// <summary>Least width anywhere on the roll, mm.</summary>
    public double LeastWidthMm => Widths.Min(w => w.WidthMm);

    /// <summary>Greatest width anywhere on the roll, mm.</summary>
    public double MostWidthMm => Widths.Max(w => w.WidthMm);

    /// <summary>Width at a place, mm: straight between two readings, the nearest reading outside them.</summary>
    public double WidthAt(double x)
    {
        int next = 0;
        while (next < Widths.Count && Widths[next].XMm < x)
        {
            next++;
        }

        if (next == 0 || next == Widths.Count)
        {
            return Widths[Math.Min(next, Widths.Count - 1)].WidthMm;
        }

        (WidthReading a, WidthReading b) = (Widths[next - 1], Widths[next]);
        return a.WidthMm + ((b.WidthMm - a.WidthMm) * ((x - a.XMm) / (b.XMm - a.XMm)));
    }

    /// <summary>Mean width over the length, mm.</summary>
    public double MeanWidthMm
    {
        get
        {
            double[] places = [0, .. Widths.Select(w => w.XMm).Where(x => x > 0 && x < LengthMm), LengthMm];
            return places.Zip(places.Skip(1), (a, b) => (b - a) * (WidthAt(a) + WidthAt(b)) / 2).Sum() / LengthMm;
        }
    }
}
