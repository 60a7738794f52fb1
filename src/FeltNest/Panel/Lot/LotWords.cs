using static FeltNest.InvariantText;

namespace FeltNest.Panel.Lot;

/// <summary>The verdict on a die against a new lot of felt, in words.</summary>
internal static class LotWords
{
    /// <summary>Sentences, the verdict first.</summary>
    public static IReadOnlyList<string> Of(LotResult lot) => [Verdict(lot), Change(lot), Next(lot)];

    /// <summary>What a felt is called: its lot, or its name where the ball states none.</summary>
    public static string NameOf(Ball.BallSpec ball) => ball.Felt.Lot is { } own ? $"lot {own.Name}" : ball.Felt.Name;

    private static string Verdict(LotResult lot)
    {
        string range = Invariant($"{lot.GlueFromMm:0.##} to {lot.GlueToMm:0.##} mm");
        double after = lot.AfterCure.After.OutsidePercent;
        double before = lot.AfterCure.Before.OutsidePercent;
        return lot.Verdict switch
        {
            LotVerdict.Within => $"The die serves: with the new lot the whole seam stays within {range} after the cure.",
            LotVerdict.NoWorse => Invariant($"No worse than before: {after:0} % of the seam is outside {range} after the cure, it was ")
                + Invariant($"{before:0} %. Neither felt is right for this die."),
            _ => Invariant($"Worse: {after:0} % of the seam is outside {range} after the cure, with the felt before it was {before:0} %."),
        };
    }

    private static string Change(LotResult lot)
    {
        string way = lot.MeanChangeMm < 0 ? "narrower" : "wider";
        string known = lot.MeanIntervalMm > 0
            ? Invariant($"; the lot's own spread leaves +- {lot.MeanIntervalMm:0.00} mm of it open (95 %)")
            : string.Empty;
        string surely = lot.MeanIntervalMm > 0 && Math.Abs(lot.MeanChangeMm) <= lot.MeanIntervalMm
            ? " The change may be none: it is within that spread." : string.Empty;
        return Invariant($"The gap after the cure is {Math.Abs(lot.MeanChangeMm):0.00} mm {way} on the mean{known}.{surely}");
    }

    private static string Next(LotResult lot) => lot.Verdict switch
    {
        LotVerdict.Within => "Wrap a trial ball all the same before the lot is cut.",
        _ => "Wrap a trial ball. If it shows the same, keep this lot off this die, or have a panel computed for the lot.",
    };
}
