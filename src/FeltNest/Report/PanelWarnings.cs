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

    private static string Percent(string what, double value, double limit) =>
        string.Create(CultureInfo.InvariantCulture, $"{what} {value:0.0} %, more than the {limit:0.0} % the ball file allows");
}
