using FeltNest.Cost.Charts;

namespace FeltNest.Cost.Tickets;

/// <summary>The control charts of a period: rejects, panels lost to faults, faults a metre, felt a thousand balls.</summary>
internal static class TicketCharts
{
    // The change that the chart of felt is asked about, %.
    private const double Asked = 2;

    /// <summary>The charts that the tickets have figures for.</summary>
    /// <param name="points">Days, or the groups asked for: one point each.</param>
    /// <param name="tickets">The tickets one by one, for the felt.</param>
    public static IReadOnlyList<ControlChart> Of(IReadOnlyList<TicketGroup> points, IReadOnlyList<TicketSplit> tickets)
    {
        ControlChart?[] counted =
        [
            ChartLimits.Shares("rejects", [.. points.Select(p => Sum(
                p, t => t is { RejectedPanels: not null, GoodPanels: not null },
                s => s.Ticket.RejectedPanels!.Value, s => s.Ticket.GoodPanels!.Value + s.Ticket.RejectedPanels!.Value))]),
            ChartLimits.Shares("panels lost to faults", [.. points.Select(p => Sum(
                p, t => t is { FaultPanels: not null, Strikes: not null }, s => s.Ticket.FaultPanels!.Value,
                s => (double)s.StruckPanels))]),
            ChartLimits.Rates("faults a metre", "1/m", [.. points.Select(p => Sum(
                p, t => t.FaultsSeen is not null, s => s.Ticket.FaultsSeen!.Value, s => (double)s.Ticket.DrawnM))]),
        ];
        return [.. counted.OfType<ControlChart>(), .. Felt(tickets)];
    }

    private static (string, double, double) Sum(
        TicketGroup group, Func<CutTicket, bool> told, Func<TicketSplit, double> count, Func<TicketSplit, double> size)
    {
        TicketSplit[] with = [.. group.Tickets.Where(t => told(t.Ticket))];
        return (group.Name, with.Sum(count), with.Sum(size));
    }

    private static IEnumerable<ControlChart> Felt(IReadOnlyList<TicketSplit> tickets)
    {
        TicketSplit[] counted = [.. tickets.Where(t => t.Ticket.GoodPanels is not null)];
        IReadOnlyList<ControlChart> charts = ChartLimits.Individuals(
            "felt a thousand balls", "m2", [.. counted.Select(t => (NameOf(t), (double)(1000 * t.ActualM2 / t.Balls)))]);
        return charts.Select(chart => chart.Kind == ChartKind.Individuals ? chart with { Change = ChangeOf(chart, counted) } : chart);
    }

    private static string NameOf(TicketSplit split) => FormattableString.Invariant($"{split.Ticket.Number}");

    // How the felt of a ticket varies by counting alone: of so many panels struck a share comes to a ball, each by its own chance.
    private static ChangeSeen? ChangeOf(ControlChart chart, TicketSplit[] tickets)
    {
        double sigma = (chart.Points[0].High - chart.Centre) / 3;
        if (sigma <= 0)
        {
            return null;
        }

        double counting = tickets.Average(t =>
        {
            double share = Math.Min(1, (double)(2 * t.Balls / t.StruckPanels));
            return (1 - share) / (share * (double)t.StruckPanels);
        });
        double sigmas = Asked / 100 * chart.Centre / sigma;
        return new ChangeSeen
        {
            Percent = Asked,
            Sigmas = sigmas,
            Tickets = ChartLimits.RunLength(sigmas),
            CountingPercent = 100 * Math.Sqrt(counting),
        };
    }
}
