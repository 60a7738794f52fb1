using System.Text.Json;
using FeltNest.Files.Fields;
using FeltNest.Files.Json;
using FeltNest.Rolls;
using FeltNest.Rolls.Orders;
using static FeltNest.Files.Orders.OrderPlanDocument;

namespace FeltNest.Files.Orders;

/// <summary>Reads the question that a plan of orders carries.</summary>
internal static class OrderPlanQuestion
{
    /// <summary>The question.</summary>
    /// <exception cref="InputException">Names the file, the field, the value found and what is allowed.</exception>
    public static OrderQuestion Read(JsonFields top) => new(
        [.. top.Objects(OrderPlanDocument.Orders).Select(Order)],
        [.. top.Objects(Stock).Select(item => Roll(item, null))],
        [
            .. top.Objects(OrderPlanDocument.Offers)
                .Select(item => new FeltPurchase(Roll(item, item.Text(StockFields.Roll)), item.Number(OfferFields.MinimumM))),
        ],
        [.. top.Objects(Rack).Select(Die)],
        [.. top.Objects(OrderPlanDocument.Presses).Select(Press)],
        RulesOf(top));

    private static OrderRules RulesOf(JsonFields top)
    {
        JsonFields item = top.Object(Rules);
        return new OrderRules(
            top.Currency(Currency), Day(item, RulesFields.Start), item.Number(RulesFields.HoursPerDay), item.Number(RulesFields.EndLossMm),
            item.Number(RulesFields.RejectPercent), item.Number(RulesFields.UnpairedPercent), item.Number(RulesFields.RemnantValuePercent),
            item.Number(RulesFields.LeastRemnantM), item.Number(RulesFields.LeastCutM), item.Amount(RulesFields.PerStrike),
            item.Amount(RulesFields.HourRate));
    }

    private static CoverOrder Order(JsonFields item) => new(
        item.Text(OrderFields.Order), item.Text(OrderFields.Ball), item.Whole(OrderFields.Balls), Day(item, OrderFields.Due),
        item.Word(OrderFields.Lots) == OrdersListing.OneLot, item.OptionalText(OrderFields.Felt), item.Whole(OrderFields.ReserveBalls));

    private static StockRoll Roll(JsonFields item, string? offer) => new(
        item.Text(StockFields.Roll), item.Text(StockFields.Felt), item.Text(StockFields.Lot), item.Number(StockFields.WidthMm),
        item.Number(StockFields.LengthM), item.Amount(StockFields.PricePerMetre), item.Number(StockFields.FaultPercent),
        item.Has(StockFields.Received) ? Day(item, StockFields.Received) : null, offer)
    {
        BeginM = item.Number(StockFields.BeginM),
        MeasuredShares = item.ByName(StockFields.Measured, MeasuredFields.Die, part => part.Number(MeasuredFields.GoodShare)),
    };

    private static CutDie Die(JsonFields item) => new(
        item.Text(RackFields.Die), item.Text(RackFields.Ball),
        new StrikeShape(
            item.Number(RackFields.FeedMm), item.Number(RackFields.LengthMm), item.Number(RackFields.AcrossMm),
            item.Number(RackFields.GapMm), item.Number(RackFields.LeastWidthMm),
            [.. item.Objects(RackFields.Classes).Select(part => part.Whole(ClassFields.Panels))]),
        item.Number(RackFields.MostWidthMm), item.Whole(RackFields.StrikesLeft),
        item.Has(RackFields.MakePrice) ? item.Amount(RackFields.MakePrice) : null, item.Whole(RackFields.LifeStrikes),
        item.Amount(RackFields.ReRulePrice), item.Whole(RackFields.ReRules));

    private static PressSpec Press(JsonFields item) => new(
        item.Text(PressFields.Press), 1, 100,
        new PressBed(item.Number(PressFields.BoardLengthMm), item.Number(PressFields.BoardWidthMm), 0), null,
        item.Number(PressFields.StrokesPerMinute), item.Number(PressFields.ChangeOverMinutes), item.OptionalNumber(PressFields.Hours), 1, 0,
        0, [.. item.Array(PressFields.Dies).EnumerateArray().Select(name => DieName(item, name))]);

    private static string DieName(JsonFields item, JsonElement name) => name.ValueKind == JsonValueKind.String
        ? name.GetString()!
        : throw item.Fault(PressFields.Dies, $"holds {JsonFields.KindName(name)} where names of dies are wanted");

    private static DateOnly Day(JsonFields item, DayField field) =>
        OrdersReader.DayOf(item.Text(field)) ?? throw item.Fault(field, $"'{item.Text(field)}' is not a day: write it as 2026-03-31");
}
