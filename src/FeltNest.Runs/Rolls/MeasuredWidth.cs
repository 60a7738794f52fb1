using FeltNest.Files.Rolls;
using FeltNest.Rolls;
using static FeltNest.InvariantText;

namespace FeltNest.Runs.Rolls;

/// <summary>The width to lay out for on a roll as measured.</summary>
internal sealed record MeasuredWidth
{
    /// <summary>Least width measured, both selvedges included, mm.</summary>
    public required double WidthMm { get; init; }

    /// <summary>What is taken from the roll and what is not.</summary>
    public required string Note { get; init; }

    /// <summary>The width of a roll's file.</summary>
    /// <exception cref="InputException">A file that cannot be used.</exception>
    public static MeasuredWidth Of(string file)
    {
        FeltRoll roll = RollReader.Read(file);
        WidthReading least = roll.Widths.MinBy(w => w.WidthMm);
        return new MeasuredWidth
        {
            WidthMm = least.WidthMm,
            Note = Invariant(
                $"laid out for {least.WidthMm:0.##} mm, the least width of roll {roll.Name}, measured at {least.XMm / 1000:0.##} m (widest "
                    + $"{roll.MostWidthMm:0.##} mm); its length and faults are not used"),
        };
    }
}
