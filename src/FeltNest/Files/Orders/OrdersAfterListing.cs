using FeltNest.Files.Csv;
using FeltNest.Rolls.Orders;

namespace FeltNest.Files.Orders;

/// <summary>Columns of <c>orders-after.csv</c> and <c>orders-now.csv</c>: those of a list of orders.</summary>
internal static class OrdersAfterListing
{
    public static readonly ResultColumns<CoverOrder> Columns = new ResultColumns<CoverOrder>("orders-after.csv")
        .Text(OrdersListing.Order, o => o.Name)
        .Text(OrdersListing.Ball, o => o.Ball)
        .Money(OrdersListing.ThousandBalls, o => o.Balls / 1000m)
        .Text(OrdersListing.Due, o => OrderPlanWriter.Day(o.Due))
        .Text(OrdersListing.Lots, o => o.OneLot ? OrdersListing.OneLot : OrdersListing.AnyLot)
        .Text(OrdersListing.Felt, o => o.Felt)
        .Number(OrdersListing.ReserveBalls, o => o.ReserveBalls)
        .Whole(OrdersListing.Priority, o => o.Priority)
        .Text(OrdersListing.Lot, o => OrderPinsColumns.Cell(o.Pins?.Lots))
        .Text(OrdersListing.Roll, o => OrderPinsColumns.Cell(o.Pins?.Rolls))
        .Text(OrdersListing.Press, o => OrderPinsColumns.Cell(o.Pins?.Presses))
        .Text(OrdersListing.Die, o => OrderPinsColumns.Cell(o.Pins?.Dies))
        .Text(OrdersListing.Day, o => o.Pins?.Day is { } day ? OrderPlanWriter.Day(day) : null)
        .Text(OrdersListing.NotLot, o => OrderPinsColumns.Cell(o.Pins?.NotLots))
        .Text(OrdersListing.NotRoll, o => OrderPinsColumns.Cell(o.Pins?.NotRolls))
        .Text(OrdersListing.NotPress, o => OrderPinsColumns.Cell(o.Pins?.NotPresses))
        .Text(OrdersListing.NotDie, o => OrderPinsColumns.Cell(o.Pins?.NotDies));
}
