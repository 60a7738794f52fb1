using FeltNest.Ball.Ranges;
using static FeltNest.InvariantText;

namespace FeltNest.Ball.Passport;

/// <summary>Gathers the figures of a lot, each within what a ball file takes.</summary>
internal sealed class FeltValues
{
    private readonly Dictionary<FeltQuantity, FeltValue> all = [];
    private readonly List<string> remarks = [];

    /// <summary>The figures.</summary>
    public IReadOnlyDictionary<FeltQuantity, FeltValue> All => all;

    /// <summary>What had to be moved to an end of its range.</summary>
    public IReadOnlyList<string> Remarks => remarks;

    /// <summary>Adds a figure and gives it back as it counts; null where there is none. One outside its range whose interval holds the end
    /// of the range counts as that end, and this is told.</summary>
    /// <exception cref="NoAnswerException">It is outside its range for certain.</exception>
    public FeltValue? Add(FeltQuantity quantity, FeltValue? value)
    {
        if (value is null)
        {
            return null;
        }

        FieldRange range = RangeOf(quantity);
        double end = Math.Clamp(value.Value, range.Low, range.High);
        if (Math.Abs(value.Value - end) > (value.Interval ?? 0))
        {
            string unit = range.Unit.Length > 0 ? " " + range.Unit : string.Empty;
            throw new NoAnswerException(
                Invariant($"{range.Field} comes out at {value.Value:0.####} +- {value.Interval ?? 0:0.####}{unit}, and a ball takes ")
                    + Invariant($"{range.Low:0.####} to {range.High:0.####}: {range.Reason}; look at these readings"));
        }

        if (end != value.Value)
        {
            remarks.Add(
                Invariant($"{range.Field} comes out at {value.Value:0.####} +- {value.Interval:0.####}: {end:0.####} is taken, the ")
                    + "nearest that a ball takes.");
        }

        all[quantity] = value with { Value = end };
        return all[quantity];
    }

    /// <summary>What a ball takes of a figure.</summary>
    public static FieldRange RangeOf(FeltQuantity quantity) => quantity switch
    {
        FeltQuantity.Thickness => BallRanges.FeltThickness,
        FeltQuantity.MassPerArea => BallRanges.FeltMass,
        FeltQuantity.WarpModulus => BallRanges.WarpModulus,
        FeltQuantity.WeftModulus => BallRanges.WeftModulus,
        FeltQuantity.ShearModulus => BallRanges.ShearModulus,
        FeltQuantity.Poisson => BallRanges.Poisson,
        FeltQuantity.NeutralLayer => BallRanges.NeutralLayer,
        FeltQuantity.EdgeLimit => BallRanges.MaxEdgeCompression,
        FeltQuantity.ShrinkWarp => BallRanges.ShrinkWarp,
        FeltQuantity.ShrinkWeft => BallRanges.ShrinkWeft,
        _ => throw new ArgumentOutOfRangeException(nameof(quantity), quantity, "has no range"),
    };
}
