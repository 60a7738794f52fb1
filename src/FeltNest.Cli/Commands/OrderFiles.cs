using FeltNest.Drawing.Sheets.Rolls;
using FeltNest.Drawing.Writers;
using FeltNest.Files.Orders;
using FeltNest.Report.Orders;
using FeltNest.Rolls.Orders.Planned;
using FeltNest.Rolls.Plan;

namespace FeltNest.Cli.Commands;

/// <summary>Files that a plan of orders writes; the cutting tickets stand in the page, one a sheet.</summary>
internal static class OrderFiles
{
    // A ticket takes some hundredths of a second to draw.
    private const int MostInAHurry = 20;

    /// <summary>Their names.</summary>
    public static IReadOnlyList<string> Names { get; } = ["orders.json", "orders.csv", "orders.html"];

    /// <summary>Their contents; the tickets of a run that is interrupted are drawn only while they are few, as the run has to
    /// end.</summary>
    public static IReadOnlyList<(string Name, byte[] Content)> Make(
        OrderPlan plan, IReadOnlyList<(OrderCut Cut, RollPlan Strikes)> tickets, CancellationToken stop)
    {
        bool drawn = !stop.IsCancellationRequested || tickets.Count <= MostInAHurry;
        byte[][] pictures = drawn
            ? [.. tickets.AsParallel().AsOrdered().Select(ticket => SvgWriter.Write(TicketSheet.Draw(ticket.Strikes, ticket.Cut)))]
            : [];
        return
        [
            (Names[0], OrderPlanWriter.Json(plan)), (Names[1], OrderPlanWriter.Csv(plan)),
            (Names[2], OrderPage.Html(plan, pictures, drawn)),
        ];
    }
}
