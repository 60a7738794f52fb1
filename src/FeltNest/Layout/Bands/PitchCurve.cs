using FeltNest.Layout.Rows.Tables;

namespace FeltNest.Layout.Bands;

/// <summary>Least pitch of parallel rows at one tilt against the step from row to row: what a width gives follows from it for every row
/// count without a new search.</summary>
internal sealed class PitchCurve
{
    // Samples of the curve, and the deepest step as a share of the loose one: between them the curve is smooth enough to be drawn straight.
    private const int Samples = 60;

    // Rows enough that every row has all the neighbours it can meet; two rows alone are asked for by themselves.
    private const int Many = 12;
    private const double Deepest = 0.3;

    private readonly TiltRows rows;
    private readonly double loose;
    private readonly double spacing;
    private readonly double[] pitches;

    internal PitchCurve(TiltRows rows)
    {
        this.rows = rows;
        loose = Math.Max(rows.Plane().Step, 1e-3 * rows.Height);
        double least = Deepest * loose;
        spacing = (loose - least) / (Samples - 1);
        pitches = [.. Enumerable.Range(0, Samples).Select(i =>
            rows.Fit(Many, rows.Height + ((Many - 1) * (least + (i * spacing))), rows.WidestPitch) is { } fit
                && fit.Pitch <= rows.WidestPitch
                ? fit.Pitch
                : double.PositiveInfinity)];
    }

    /// <summary>Tilt, radians.</summary>
    internal double Tilt => rows.Tilt;

    /// <summary>Height of one row, mm.</summary>
    internal double Height => rows.Height;

    /// <summary>The densest parallel rows in a width: how many rows, and panels per mm; no rows where none fits.</summary>
    internal (int Rows, double Density) Best(double width)
    {
        (int Rows, double Density) best = (0, 0);
        foreach ((int count, double pitch) in Fits(width))
        {
            best = count / pitch > best.Density ? (count, count / pitch) : best;
        }

        return best;
    }

    /// <summary>Least pitch of every row count worth a look in a width: from the last that leaves the rows loose on.</summary>
    internal IEnumerable<(int Rows, double Pitch)> Fits(double width)
    {
        double room = width - rows.Height;
        if (room < 0)
        {
            yield break;
        }

        yield return (1, rows.OwnPitch);
        int first = Math.Max(2, 1 + (int)Math.Floor(room / loose));
        int last = 1 + (int)Math.Floor(room / (Deepest * loose));
        for (int count = first; count <= last; count++)
        {
            if ((count == 2
                ? rows.Fit(2, width, rows.WidestPitch)?.Pitch ?? double.PositiveInfinity
                : Pitch(room / (count - 1))) is var pitch
                && !double.IsInfinity(pitch))
            {
                yield return (count, pitch);
            }
        }
    }

    /// <summary>The rows themselves, as a start for the polisher; null where they do not fit.</summary>
    internal RowLattice? Lattice(int count, double width) => rows.Fit(count, width, rows.WidestPitch);

    private double Pitch(double step)
    {
        if (step >= loose)
        {
            return rows.OwnPitch;
        }

        double place = (step - (Deepest * loose)) / spacing;
        int i = Math.Clamp((int)place, 0, Samples - 2);
        return place < 0 ? double.PositiveInfinity : pitches[i] + ((pitches[i + 1] - pitches[i]) * (place - i));
    }
}
