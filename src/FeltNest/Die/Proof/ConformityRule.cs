using FeltNest.Numerics;

namespace FeltNest.Die.Proof;

/// <summary>What a measured value proves against a limit.</summary>
/// <remarks>ISO 14253-1:2017, as a public calibration procedure quotes it: a value is accepted where it lies within the limit by a guard of
/// 1.65 standard uncertainties, which leaves a chance of 5 per cent to be wrong. It is rejected where it lies beyond by the same rule; the
/// worst of many points is looked at there, so the 5 per cent are shared among them (bound of Bonferroni). Between the two nothing is
/// proved.</remarks>
internal static class ConformityRule
{
    /// <summary>Coverage factor of the expanded uncertainty that is entered.</summary>
    public const double Coverage = 2;

    // Standard uncertainties that leave 5 per cent on one side, as the standard rounds them.
    private const double OneSide = 1.65;
    private const double Risk = 0.05;

    /// <summary>Room that an accepted value must keep from the limit, mm; none where the uncertainty is unknown.</summary>
    public static double AcceptGuard(double? expandedMm) => OneSide * (expandedMm ?? 0) / Coverage;

    /// <summary>Room beyond the limit that a rejected value needs, mm, when it is the worst of so many points.</summary>
    public static double RejectGuard(double? expandedMm, int points) =>
        expandedMm is { } known ? Math.Max(OneSide, -NormalDistribution.Quantile(Risk / points)) * known / Coverage : 0;

    /// <summary>Chance that a value lies within two limits, by the normal distribution.</summary>
    /// <remarks>JCGM 106:2012, clause 7, with no knowledge before the measurement.</remarks>
    public static double Chance(double value, double standardMm, double lower, double upper) =>
        NormalDistribution.Below((upper - value) / standardMm) - NormalDistribution.Below((lower - value) / standardMm);

    /// <summary>What is proved.</summary>
    /// <param name="worstMm">Greatest distance measured, without sign.</param>
    /// <param name="hiddenMm">Greatest distance that may hide between the points.</param>
    /// <param name="limitMm">Distance allowed.</param>
    /// <param name="guardMm">Room to keep inside.</param>
    /// <param name="rejectGuardMm">Room to be beyond.</param>
    public static Conformity Of(double worstMm, double hiddenMm, double limitMm, double guardMm, double rejectGuardMm)
    {
        if (worstMm > limitMm + rejectGuardMm)
        {
            return Conformity.DoesNotConform;
        }

        return Math.Max(worstMm, hiddenMm) <= limitMm - guardMm ? Conformity.Conforms : Conformity.Undecided;
    }
}
