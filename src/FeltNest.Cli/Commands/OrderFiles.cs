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
    /// <summary>Their names.</summary>
    public static IReadOnlyList<string> Names { get; } = ["orders.json", "orders.csv", "orders.html"];

    /// <summary>Their contents.</summary>
    public static IReadOnlyList<(string Name, byte[] Content)> Make(OrderPlan plan, IReadOnlyList<(OrderCut Cut, RollPlan Strikes)> tickets) =>
    [
        (Names[0], OrderPlanWriter.Json(plan)), (Names[1], OrderPlanWriter.Csv(plan)),
        (Names[2], OrderPage.Html(plan, [.. tickets.AsParallel().AsOrdered().Select(t => SvgWriter.Write(TicketSheet.Draw(t.Strikes, t.Cut)))])),
    ];
}
