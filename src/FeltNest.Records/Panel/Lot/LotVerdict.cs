namespace FeltNest.Panel.Lot;

/// <summary>What a die does with a new lot of felt, judged by the seam after the cure.</summary>
internal enum LotVerdict
{
    /// <summary>The whole seam stays within the glue's range.</summary>
    Within,

    /// <summary>Part of the seam is outside it, no more than with the felt before.</summary>
    NoWorse,

    /// <summary>More of the seam is outside it than with the felt before.</summary>
    Worse,
}
