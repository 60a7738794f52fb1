namespace FeltNest.Rolls;

/// <summary>One real roll as measured. Roll frame: x along the feed from the roll's start, y across from the lower selvedge, which runs
/// along the guide.</summary>
/// <param name="Name">Name or number of the roll.</param>
/// <param name="Felt">Felt, or null.</param>
/// <param name="Lot">Shade lot, or null.</param>
/// <param name="LengthMm">Length, mm.</param>
/// <param name="Widths">Width readings in order of x: one at least.</param>
/// <param name="JointsMm">Places of joints across the whole width, in order, mm.</param>
/// <param name="SkewDeg">Direction of the warp from the selvedge, degrees counter-clockwise.</param>
/// <param name="Nap">Which way the nap lies, or null where it is not known.</param>
/// <param name="MassPerAreaGsm">Mass per area, g/m2, or null.</param>
/// <param name="Faults">Faults.</param>
public sealed record FeltRoll(
    string Name, string? Felt, string? Lot, double LengthMm, IReadOnlyList<WidthReading> Widths, IReadOnlyList<double> JointsMm,
    double SkewDeg, NapDirection? Nap,
    double? MassPerAreaGsm, IReadOnlyList<RollFault> Faults)
{
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
