using System.Text.Json;
using FeltNest.Files.Json;
using FeltNest.Files.Offers;
using FeltNest.Rolls;
using FeltNest.Rolls.Orders;

namespace FeltNest.Files.Orders;

/// <summary>Reads the question that a plan of orders carries.</summary>
internal static class OrderPlanQuestion
{
    /// <summary>Longest roll, m, as in a list of stock.</summary>
    internal const double MostMetres = 100_000;

    // A week for a change of dies.
    private const double MostMinutes = 10_000;

    // New rules of one die, panels of one strike and kinds of them: far above what dies and layouts have.
    private const int MostReRules = 1000;
    private const int MostPanels = 1_000_000;
    private const int MostClasses = 1000;

    // More presses than any one room has.
    private const int MostPresses = 100;

    private static readonly string[] RollNames =
    [
        "roll", "felt", "lot", "widthMm", "lengthM", "beginM", "pricePerMetre", "faultPercent", "received", "measured",
    ];

    /// <summary>The question.</summary>
    /// <exception cref="InputException">Names the file, the field, the value found and what is allowed.</exception>
    public static OrderQuestion Read(JsonFields top) => new(
        [
            .. top
                .ObjectsUpTo(OrdersReader.MostOrders, "orders", "order", "ball", "balls", "due", "lots", "felt", "reserveBalls")
                .Select(Order),
        ],
        [.. top.ObjectsUpTo(StockReader.MostRolls, "stock", RollNames).Select(item => Roll(item, null))],
        [
            .. top
                .ObjectsUpTo(OffersReader.MostOffers, "offers", [.. RollNames, "minimumM"])
                .Select(item => new FeltPurchase(Roll(item, item.Text("roll")), item.Number("minimumM"))),
        ],
        [.. top.ObjectsUpTo(
            DiesReader.MostDies, "rack", "die", "ball", "feedMm", "lengthMm", "acrossMm", "gapMm", "leastWidthMm", "mostWidthMm", "classes",
            "strikesLeft", "makePrice", "lifeStrikes", "reRulePrice", "reRules").Select(
                Die)],
        [
            .. top
                .ObjectsUpTo(
                    MostPresses, "presses", "press", "boardLengthMm", "boardWidthMm", "strokesPerMinute", "changeOverMinutes", "hours",
                    "dies")
                .Select(Press),
        ],
        Rules(top));

    private static OrderRules Rules(JsonFields top)
    {
        JsonFields item = top.Object(
            "rules", "start", "hoursPerDay", "endLossMm", "rejectPercent", "unpairedPercent", "remnantValuePercent", "leastRemnantM",
            "leastCutM", "perStrike", "hourRate");
        return new OrderRules(
            top.Text("currency"), Day(item, "start"), item.Within("hoursPerDay", 0.1, 24), item.Number("endLossMm"),
            item.Within("rejectPercent", 0, 100), item.Within("unpairedPercent", 0, 100), item.Within("remnantValuePercent", 0, 100),
            item.Number("leastRemnantM"), item.Number("leastCutM"),
            item.Amount("perStrike"), item.Amount("hourRate"));
    }

    private static CoverOrder Order(JsonFields item) => new(
        item.Text("order"), item.Text("ball"), item.Count("balls"), Day(item, "due"), item.Text("lots") == "one",
        item.Has("felt") ? item.Text("felt") : null, item.Count("reserveBalls"));

    private static StockRoll Roll(JsonFields item, string? offer) => new(
        item.Text("roll"), item.Text("felt"), item.Text("lot"), item.Number("widthMm"), item.Within("lengthM", 0, MostMetres),
        item.Amount("pricePerMetre"), item.Within("faultPercent", 0, 100),
        item.Has("received") ? Day(item, "received") : null, offer)
    {
        BeginM = item.Within("beginM", 0, MostMetres),
        MeasuredShares = item.ByName(DiesReader.MostDies, "measured", part => part.Within("goodShare", 0, 1), "die", "goodShare"),
    };

    private static CutDie Die(JsonFields item) => new(
        item.Text("die"), item.Text("ball"),
        new StrikeShape(
            item.Number("feedMm") is > 0 and var feed ? feed : throw item.Fault("feedMm", "is not above 0"), item.Number("lengthMm"),
            item.Number("acrossMm"), item.Number("gapMm"),
            item.Number("leastWidthMm"),
            [.. item.ObjectsUpTo(MostClasses, "classes", "panels").Select(part => part.WholeWithin("panels", 0, MostPanels))]),
        item.Number("mostWidthMm"), item.Count("strikesLeft"), item.Has("makePrice") ? item.Amount("makePrice") : null,
        item.Count("lifeStrikes"), item.Amount("reRulePrice"),
        item.WholeWithin("reRules", 0, MostReRules));

    private static PressSpec Press(JsonFields item) => new(
        item.Text("press"), 1, 100, new PressBed(item.Number("boardLengthMm"), item.Number("boardWidthMm"), 0), null,
        item.Number("strokesPerMinute"), item.Within("changeOverMinutes", 0, MostMinutes),
        item.OptionalNumber("hours"), 1, 0, 0,
        [
            .. item
                .Array("dies")
                .EnumerateArray()
                .Select(name =>
                    name.ValueKind == JsonValueKind.String
                        ? name.GetString()!
                        : throw item.Fault("dies", $"holds {JsonFields.KindName(name)} where names of dies are wanted")),
        ]);

    private static DateOnly Day(JsonFields item, string name) =>
        OrdersReader.DayOf(item.Text(name)) ?? throw item.Fault(name, $"'{item.Text(name)}' is not a day: write it as 2026-03-31");
}
