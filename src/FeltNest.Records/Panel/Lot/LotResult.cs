using FeltNest.Ball;

namespace FeltNest.Panel.Lot;

/// <summary>A die that is there against a new lot of felt.</summary>
internal sealed record LotResult
{
    /// <summary>The ball with the felt before.</summary>
    public required BallSpec Before { get; init; }

    /// <summary>The ball with the new lot.</summary>
    public required BallSpec After { get; init; }

    /// <summary>Least gap of the glue's range, mm.</summary>
    public required double GlueFromMm { get; init; }

    /// <summary>Greatest gap of it.</summary>
    public required double GlueToMm { get; init; }

    /// <summary>Figures that the new lot brings.</summary>
    public required IReadOnlyList<LotChange> Changes { get; init; }

    /// <summary>Places round the seam that are met in every state, mm from the waist on.</summary>
    public required IReadOnlyList<double> RoundMm { get; init; }

    /// <summary>Share of the seam that each of them stands for; what is left of 1 is met in no state or not in all.</summary>
    public required IReadOnlyList<double> Shares { get; init; }

    /// <summary>Gap as cut, at fitting.</summary>
    public required LotState AtFitting { get; init; }

    /// <summary>Gap after the cure.</summary>
    public required LotState AfterCure { get; init; }

    /// <summary>Waists and tips with their places, mm round the seam.</summary>
    public required IReadOnlyList<(string Name, double At)> Named { get; init; }

    /// <summary>Half of the 95 % interval of the mean gap after the cure that the new lot's own spread leaves, mm.</summary>
    public double MeanIntervalMm => Math.Sqrt(Changes.Sum(change => change.MeanGapMm * change.MeanGapMm ?? 0));

    /// <summary>Change of the mean gap after the cure, mm.</summary>
    public double MeanChangeMm => AfterCure.After.MeanMm - AfterCure.Before.MeanMm;

    /// <summary>What the die does with the new lot.</summary>
    public LotVerdict Verdict
    {
        get
        {
            // Shares of a seam that differ by less differ by rounding.
            const double rounding = 1e-6;
            if (AfterCure.After.OutsidePercent <= rounding)
            {
                return LotVerdict.Within;
            }

            return AfterCure.After.OutsidePercent <= AfterCure.Before.OutsidePercent + rounding ? LotVerdict.NoWorse : LotVerdict.Worse;
        }
    }
}
