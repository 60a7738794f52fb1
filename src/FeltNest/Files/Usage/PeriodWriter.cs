using System.Globalization;
using FeltNest.Cost.Charts;
using FeltNest.Cost.Tickets;
using FeltNest.Files.Json;
using static FeltNest.Files.Usage.PeriodDocument;

namespace FeltNest.Files.Usage;

/// <summary>Writes the tickets of a period against standard as JSON (schema feltnest/period-usage/1) and as CSV.</summary>
internal static class PeriodWriter
{
    /// <summary>The JSON file's bytes.</summary>
    public static byte[] Json(PeriodUsage usage)
    {
        using JsonOutput json = new(PeriodDocument.Document);
        json.Text(PeriodDocument.Book, usage.Book)
            .Text(Since, usage.Since)
            .Text(Until, usage.Until)
            .Text(By, EnumWord.Of(usage.By))
            .Text(PeriodDocument.Currency, usage.Currency)
            .Object(PeriodDocument.Whole, item => Group(item, usage.Whole))
            .Objects(PeriodDocument.Groups, usage.Groups, (item, group) => Group(item, group))
            .Objects(PeriodDocument.Tickets, usage.Whole.Tickets, (item, split) => Ticket(item, split))
            .Objects(PeriodDocument.Standards, usage.Standards, (item, standard) => item
                .Text(PromisedFields.Ball, standard.Ball)
                .Number(PromisedFields.Version, standard.Version)
                .Text(PromisedFields.From, standard.From)
                .Number(PromisedFields.WidthMm, (double)standard.WidthMm)
                .Number(PromisedFields.SquareMetres, (double)standard.M2PerThousandBalls)
                .Objects(PromisedFields.Causes, standard.ByCause, (part, cause) => part
                    .Text(PromisedCauseFields.Cause, cause.Cause is { } known ? EnumWord.Of(known) : "balls")
                    .Number(PromisedCauseFields.SquareMetres, (double)cause.M2)))
            .Objects(PeriodDocument.Charts, usage.Charts, (item, chart) => Chart(item, chart))
            .Texts(PeriodDocument.LeftOut, usage.LeftOut.Select(number => number.ToString(CultureInfo.InvariantCulture)));
        return json.Finish();
    }

    /// <summary>The CSV file's bytes: a line a group and cause.</summary>
    public static byte[] Csv(PeriodUsage usage) => PeriodListing.Columns.Csv(
        usage.Groups.SelectMany(group => group.Parts.Select(part => new PeriodListing.Line(group, part, usage.Currency))));

    private static void Group(JsonOutput item, TicketGroup group) => item
        .Text(GroupFields.Name, group.Name)
        .Number(GroupFields.Tickets, group.Tickets.Count)
        .Number(GroupFields.Balls, (double)group.Balls)
        .Number(GroupFields.StandardSquareMetres, (double)group.StandardM2)
        .Number(GroupFields.ActualSquareMetres, (double)group.ActualM2)
        .Number(GroupFields.MorePercent, group.MorePercent)
        .Number(GroupFields.StandardCost, (double)group.StandardMoney)
        .Number(GroupFields.ActualCost, (double)group.ActualMoney)
        .Objects(GroupFields.Parts, group.Parts, Part)
        .Objects(GroupFields.Rejects, group.Reasons, (reason, felt) => reason
            .Text(ReasonFields.Reason, felt.Key)
            .Number(ReasonFields.SquareMetres, (double)felt.Value));

    private static void Part(JsonOutput item, TicketPart part) => item
        .Text(CauseFields.Cause, EnumWord.Of(part.Cause))
        .Number(CauseFields.SquareMetres, (double)part.M2)
        .Number(CauseFields.Money, (double)part.Money);

    private static void Ticket(JsonOutput item, TicketSplit split) => item
        .Number(TicketFields.Ticket, split.Ticket.Number)
        .Number(TicketFields.Entry, split.Ticket.Entry)
        .Text(TicketFields.Day, split.Ticket.Day)
        .Text(TicketFields.Roll, split.Ticket.Roll)
        .Text(TicketFields.Lot, split.Ticket.Lot)
        .Text(TicketFields.Supplier, split.Ticket.Supplier)
        .Text(TicketFields.Press, split.Ticket.Press)
        .Text(TicketFields.Operator, split.Ticket.Operator)
        .Text(TicketFields.Shift, split.Ticket.Shift)
        .Number(TicketFields.StandardVersion, split.StandardVersion)
        .Number(TicketFields.RowsCut, split.Ticket.Rows)
        .Number(TicketFields.DrawnM, (double)split.Ticket.DrawnM)
        .Number(TicketFields.Balls, (double)split.Balls)
        .Number(TicketFields.StandardSquareMetres, (double)split.StandardM2)
        .Number(TicketFields.ActualSquareMetres, (double)split.ActualM2)
        .Number(TicketFields.StandardCost, (double)split.StandardMoney)
        .Number(TicketFields.ActualCost, (double)split.ActualMoney)
        .Objects(TicketFields.Parts, split.Parts, Part)
        .Texts(TicketFields.NotCounted, split.NotCounted);

    private static void Chart(JsonOutput item, ControlChart chart) => item
        .Text(ChartFields.Name, chart.Name)
        .Text(ChartFields.Kind, EnumWord.Of(chart.Kind))
        .Text(ChartFields.Unit, chart.Unit)
        .Number(ChartFields.Centre, chart.Centre)
        .Number(ChartFields.SigmaZ, chart.SigmaZ)
        .Flag(ChartFields.Widened, chart.IsWidened)
        .Number(ChartFields.ExpectedByNoise, chart.ExpectedByNoise)
        .Objects(ChartFields.Points, chart.Points, (at, point) => at
            .Text(PointFields.Name, point.Name)
            .Number(PointFields.Count, point.Count)
            .Number(PointFields.Size, point.Size)
            .Number(PointFields.Value, point.Value)
            .Number(PointFields.Low, point.Low)
            .Number(PointFields.High, point.High)
            .Number(PointFields.NoiseShare, point.NoiseShare)
            .Flag(PointFields.Cause, point.IsCause))
        .Objects(ChartFields.Change, Changes(chart), (at, seen) => at
            .Number(ChangeFields.Percent, seen.Percent)
            .Number(ChangeFields.Sigmas, seen.Sigmas)
            .Number(ChangeFields.Tickets, seen.Tickets)
            .Number(ChangeFields.CountingPercent, seen.CountingPercent));

    private static IEnumerable<ChangeSeen> Changes(ControlChart chart) => chart.Change is null ? [] : [chart.Change];
}
