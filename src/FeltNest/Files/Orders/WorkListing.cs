using FeltNest.Files.Csv;
using FeltNest.Files.Fields;
using FeltNest.Files.Presses;
using FeltNest.Rolls.Orders;
using FeltNest.Rolls.Orders.Planned;
using static FeltNest.Files.Orders.OrderPlanDocument;

namespace FeltNest.Files.Orders;

/// <summary>Columns of the work list <c>orders.csv</c>: a line a piece of work, press by press in the order of cutting.</summary>
internal static class WorkListing
{
    public static readonly ResultColumns<Line> Columns = new ResultColumns<Line>("orders.csv")
        .Whole(AssignmentFields.Number, l => l.Cut.Number)
        .Text(AssignmentFields.Order, l => l.Cut.Order.Name)
        .Text(AssignmentFields.Roll, l => l.Cut.Roll.Name)
        .Text(new TextField("lot", "shade lot of the roll"), l => l.Cut.Roll.Lot)
        .Text(AssignmentFields.Die, l => l.Cut.Die.Name)
        .Text(AssignmentFields.Press, l => l.Cut.Press.Name)
        .Whole(AssignmentFields.Strikes, l => l.Cut.Strikes)
        .Number(AssignmentFields.Metres, l => Fine(l.Cut.Metres))
        .Number(AssignmentFields.FromM, l => Fine(l.Cut.FromM))
        .Whole(AssignmentFields.GoodBalls, l => l.Cut.GoodBalls)
        .Number(AssignmentFields.StartHour, l => Fine(l.Cut.StartHour))
        .Text(AssignmentFields.Start, l => MomentText.Of(l.Start))
        .Text(AssignmentFields.End, l => MomentText.Of(l.End))
        .Text(AssignmentFields.Day, l => OrderPlanWriter.Day(l.EndDay))
        .Text(new DayField("due", "day on which the order is due"), l => OrderPlanWriter.Day(l.Cut.Order.Due));

    // A micrometre of felt, and less than a hundredth of a second.
    private static double Fine(double value) => Math.Round(value, 6);

    /// <summary>A piece of work, and when it is done.</summary>
    /// <param name="Cut">The piece.</param>
    /// <param name="Rules">The plan's first day.</param>
    internal readonly record struct Line(OrderCut Cut, OrderRules Rules)
    {
        /// <summary>When its strikes begin.</summary>
        public DateTime Start => Rules.MomentOf(Cut.StartHour);

        /// <summary>When they end.</summary>
        public DateTime End => Rules.MomentOf(Cut.EndHour);

        /// <summary>Day in which they end.</summary>
        public DateOnly EndDay => Rules.DayOf(Cut.EndHour);
    }
}
