using System.Globalization;
using FeltNest.Ball;
using FeltNest.Panel;

namespace FeltNest.Report;

/// <summary>What a cutting room should look at before it trusts a panel.</summary>
internal static class PanelWarnings
{
    /// <summary>Warnings, the gravest first; empty when there is nothing to warn of.</summary>
    public static IReadOnlyList<string> Of(BallSpec ball, FlatPanel panel, MassBudget mass)
    {
        List<string> lines = [];
        if (!ball.Felt.TakesStretch(panel.Strain.MaxStretchPercent))
        {
            lines.Add(Percent("the felt is stretched by up to", panel.Strain.MaxStretchPercent, ball.Felt.MaxStretchPercent));
        }

        if (!ball.Felt.TakesAlongEdge(panel.Strain.EdgeMaxCompressionPercent))
        {
            lines.Add(
                Percent("the edge is compressed by up to", panel.Strain.EdgeMaxCompressionPercent, ball.Felt.MaxEdgeCompressionPercent)
                    + ": it may pucker");
        }

        if (!ball.Felt.TakesCompression(panel.Strain.MaxCompressionPercent))
        {
            lines.Add(Puckers(ball.Felt, panel.Strain.MaxCompressionPercent));
        }

        if (panel.Strain.HasTipSpike)
        {
            lines.Add(
                "the seam is almost straight across the panel's tips: strains read at the tips themselves are no real extremes and are "
                    + "left out; round the tips, or look at them on a trial wrap");
        }

        if (mass.FeltWarning is { } felt)
        {
            lines.Add(felt);
        }

        return lines;
    }

    private static string Puckers(FeltSpec felt, double found)
    {
        string whose = felt.MaxCompressionPercent is null
            ? "; that is the limit of its edge, felt.maxCompressionPercent is not given" : string.Empty;
        return Percent("the felt is compressed by up to", found, felt.PuckerLimitPercent)
            + $": it may pucker where the risk map says so{whose}";
    }

    private static string Percent(string what, double value, double limit) =>
        string.Create(CultureInfo.InvariantCulture, $"{what} {value:0.0} %, more than the {limit:0.0} % the ball file allows");
}
