using System.Text.Json;
using FeltNest.Files.Csv;
using FeltNest.Files.Fields;
using FeltNest.Files.Json;
using FeltNest.Files.Presses;
using FeltNest.Files.Rolls;
using FeltNest.Rolls;
using FeltNest.Rolls.Orders;
using static FeltNest.Files.Orders.OrderPlanDocument;
using static FeltNest.Files.Orders.OrderQuestionFields;

namespace FeltNest.Files.Orders;

/// <summary>Reads the question that a plan of orders carries.</summary>
internal static class OrderPlanQuestion
{
    /// <summary>The question.</summary>
    /// <exception cref="InputException">Names the file, the field, the value found and what is allowed.</exception>
    public static OrderRequest Read(JsonFields top) => new()
    {
        Orders = [.. top.Objects(OrderPlanDocument.Orders).Select(Order)],
        Rolls = [.. top.Objects(Stock).Select(item => Roll(item, null))],
        Offers = [
            .. top.Objects(OrderPlanDocument.Offers)
                .Select(item => new FeltPurchase(Roll(item, item.Text(StockFields.Roll)), item.Number(OfferFields.MinimumM))),
        ],
        Dies = [.. top.Objects(Rack).Select(Die)],
        Presses = [.. top.Objects(OrderPlanDocument.Presses).Select(Press)],
        Rules = RulesOf(top),
    };

    private static OrderRules RulesOf(JsonFields top)
    {
        JsonFields item = top.Object(Rules);
        return new OrderRules
        {
            Currency = top.Currency(Currency),
            Start = Day(item, RulesFields.Start),
            HoursPerDay = item.Number(RulesFields.HoursPerDay),
            EndLossMm = item.Number(RulesFields.EndLossMm),
            RejectPercent = item.Number(RulesFields.RejectPercent),
            UnpairedPercent = item.Number(RulesFields.UnpairedPercent),
            RemnantValuePercent = item.Number(RulesFields.RemnantValuePercent),
            LeastRemnantM = item.Number(RulesFields.LeastRemnantM),
            LeastCutM = item.Number(RulesFields.LeastCutM),
            PerStrike = item.Amount(RulesFields.PerStrike),
            HourRate = item.Amount(RulesFields.HourRate),
            Nap = item.Word(RulesFields.Nap),
        };
    }

    private static CoverOrder Order(JsonFields item) => new()
    {
        Name = item.Text(OrderFields.Order),
        Ball = item.Text(OrderFields.Ball),
        Balls = item.Whole(OrderFields.Balls),
        Due = Day(item, OrderFields.Due),
        OneLot = item.Word(OrderFields.Lots) == OrdersListing.OneLot,
        Felt = item.OptionalText(OrderFields.Felt),
        ReserveBalls = item.Whole(OrderFields.ReserveBalls),
        Priority = item.Whole(OrderFields.Priority),
        Pins = item.OptionalObject(OrderFields.Pins) is { } pins ? OrderPinsFields.Read(pins) : null,
    };

    private static StockRoll Roll(JsonFields item, string? offer) => new()
    {
        Name = item.Text(StockFields.Roll),
        Felt = item.Text(StockFields.Felt),
        Lot = item.Text(StockFields.Lot),
        WidthMm = item.Number(StockFields.WidthMm),
        LengthM = item.Number(StockFields.LengthM),
        PricePerMetre = item.Amount(StockFields.PricePerMetre),
        FaultPercent = item.Number(StockFields.FaultPercent),
        Received = item.Has(StockFields.Received) ? Day(item, StockFields.Received) : null,
        Offer = offer,
        BeginM = item.Number(StockFields.BeginM),
        Nap = item.Has(StockFields.NapToward) ? NapWord.Find(item.Word(StockFields.NapToward)) : null,
        Turned = item.Flag(StockFields.Turned),
        MeasuredShares = item.ByName(StockFields.Measured, MeasuredFields.Die, part => part.Number(MeasuredFields.GoodShare)),
    };

    private static CutDie Die(JsonFields item) => new()
    {
        Name = item.Text(RackFields.Die),
        Ball = item.Text(RackFields.Ball),
        Shape = new StrikeShape
        {
            FeedMm = item.Number(RackFields.FeedMm),
            LengthMm = item.Number(RackFields.LengthMm),
            AcrossMm = item.Number(RackFields.AcrossMm),
            GapMm = item.Number(RackFields.GapMm),
            OneWay = item.Flag(RackFields.OneWay),
            LeastWidthMm = item.Number(RackFields.LeastWidthMm),
            ClassPanels = [.. item.Objects(RackFields.Classes).Select(part => part.Whole(ClassFields.Panels))],
            AlsoBall = item.Has(RackFields.AlsoBall) ? item.Text(RackFields.AlsoBall) : null,
            AlsoClasses = [.. item.OptionalObjects(RackFields.AlsoClasses).Select(part => part.Whole(ClassFields.Panels))],
        },
        MostWidthMm = item.Number(RackFields.MostWidthMm),
        StrikesLeft = item.Whole(RackFields.StrikesLeft),
        MakePrice = item.Has(RackFields.MakePrice) ? item.Amount(RackFields.MakePrice) : null,
        LifeStrikes = item.Whole(RackFields.LifeStrikes),
        ReRulePrice = item.Amount(RackFields.ReRulePrice),
        MostReRules = item.Whole(RackFields.ReRules),
        From = item.Has(RackFields.From) ? Day(item, RackFields.From) : null,
        MakeDays = item.Whole(RackFields.MakeDays),
    };

    private static PressSpec Press(JsonFields item) => new()
    {
        Name = item.Text(PressFields.Press),
        RatedForceKn = 1,
        AllowedSharePercent = 100,
        Bed = new PressBed
        {
            LengthMm = item.Number(PressFields.BoardLengthMm),
            WidthMm = item.Number(PressFields.BoardWidthMm),
            MarginMm = 0,
        },
        DaylightMm = null,
        StrokesPerMinute = item.Number(PressFields.StrokesPerMinute),
        ChangeOverMinutes = item.Number(PressFields.ChangeOverMinutes),
        Hours = item.OptionalNumber(PressFields.Hours),
        MostPlies = 1,
        FeedToleranceMm = 0,
        GuideToleranceMm = 0,
        Dies = Names(item, PressFields.Dies),
        RollChangeMinutes = item.Number(PressFields.RollChangeMinutes),
        MountedDie = item.OptionalText(PressFields.MountedDie),
        Calendar = item.OptionalObject(PressFields.Calendar) is { } calendar ? CalendarReader.Of(calendar) : null,
    };

    /// <summary>Names of a list.</summary>
    internal static IReadOnlyList<string> Names(JsonFields item, TextsField field) =>
        [.. item.Array(field).EnumerateArray().Select(name => Name(item, field, name))];

    private static string Name(JsonFields item, TextsField field, JsonElement name) => name.ValueKind == JsonValueKind.String
        ? name.GetString()!
        : throw item.Fault(field, $"holds {JsonValues.KindName(name)} where names of {field.Name} are wanted");

    /// <summary>A day.</summary>
    internal static DateOnly Day(JsonFields item, DayField field) =>
        DayText.Of(item.Text(field)) ?? throw item.Fault(field, $"'{item.Text(field)}' is not a day: write it as 2026-03-31");
}
