using FeltNest.Cost.Compare;
using FeltNest.Cost.Offers;
using FeltNest.Cost.Sheet;
using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Tests.Layout;
using Xunit;

namespace FeltNest.Tests.Cost.Compare;

/// <summary>A comparison that needs no search: squares of 50 mm in one layout a width, offers of every kind of price.</summary>
internal static class HandoverCases
{
    private static readonly Outline Square = Outline.From([new(-25, -25), new(25, -25), new(25, 25), new(-25, 25)]);

    public static CostInputs Costs { get; } = CostInputs.Bare("XTS") with
    {
        Rates = [new CurrencyRate("USD", 0.9m), new CurrencyRate("EUR", 1.25m)],
        Losses = FeltLosses.None with
        {
            RollLengthM = 40,
            EndLossMm = 170,
            FaultPercent = 1.3,
            RejectPercent = 0.7,
            UnpairedPercent = 0.4,
            MostPanelsPerStrike = 17,
        },
        RecoveryPerKg = 0.3m,
        AnnualBalls = 640_000,
        InterestPercent = 6,
        SurplusWorthPercent = 55,
        CoatingPerSquareMetre = 0.21m,
        PerStrike = 0.12m,
        BoardPerStrike = 0.013m,
        Die = new DieCost { Price = 1900, LifeStrikes = 60_000, ReRules = 2, ReRulePrice = 700 },
        Gang = new GangOptions { Cavities = [8], Plies = [1], PricePerCavity = 45, PricePerExtraPly = 0.04m },
        SetUp = new SetUpCost { Hours = 1.5m, RatePerHour = 38, BatchThousandBalls = 50 },
        HandlingPerThousandBalls = 3.5m,
        OverheadPercent = 12,
        Ranges = [new CostRange { Field = "strike.price", Low = 0.05m, High = 0.3m }],
    };

    public static FeltOffer[] Offers { get; } =
    [
        Offer("=1+1", 412, new FeltPrice(1.9m, PriceUnit.Metre, "XTS")) with
        {
            Tiers = [new PriceTier(1000, 1.8m), new PriceTier(4000, 1.7m), new PriceTier(900_000, 1m)],
            FreightPerRoll = 4,
            CreditDays = 30,
            MassBasis = "bare",
            MassPerAreaGsm = 790,
        },
        Offer("Felt & <b>", 500, new FeltPrice(4.1m, PriceUnit.SquareMetre, "EUR")) with
        {
            LeastWidthMm = 490,
            DutyPercent = 4,
            MinimumM = 9000,
            MassBasis = "coated",
            MassPerAreaGsm = 810,
            FaultPercent = 0.4,
        },
        Offer("-kilograms", 460, new FeltPrice(6.2m, PriceUnit.Kilogram, "USD")) with { InvoicedWidthMm = 455, MassPerAreaGsm = 760 },
    ];

    public static Comparison Of(CostInputs? costs, FeltOffer[] offers, double? thousandBalls = null)
    {
        LayoutRequest lay =
            Shapes.Request(Square, 400, gap: 0, edge: 3) with { Rules = new LayoutRules(0, 0, RowRule.Same, false) };
        return CompareStudy.Run(
            new CompareRequest(lay, [.. offers.Select(offer => CompareCase.Of(offer, lay.Trims))], false, costs, null)
            {
                ThousandBalls = thousandBalls ?? costs?.AnnualBalls / 1000,
            },
            null, (request, _) => [Rows(request)], TestContext.Current.CancellationToken);
    }

    private static FeltOffer Offer(string name, double width, FeltPrice price) => new()
    {
        Name = name,
        Felt = "felt",
        WidthMm = width,
        LengthM = 38.4,
        Price = price,
        LeastWidthMm = null,
        EdgeMm = null,
        MassPerAreaGsm = null,
        MassBasis = null,
        FaultPercent = null,
        MinimumM = null,
        Lot = null,
    };

    // As many rows as fit, every second one half a panel on, so that a strike reaches past its feed.
    private static RollLayout Rows(LayoutRequest request)
    {
        double trim = request.Trims.TotalMm / 2;
        int rows = (int)((request.RollWidthMm - (2 * trim)) / 50);
        return new RollLayout
        {
            Parts = [request.Parts[0]],
            RollWidthMm = request.RollWidthMm,
            Trims = request.Trims,
            GapMm = 0,
            Rules = request.Rules,
            Bands = [new LayoutBand
            {
                YFromMm = trim,
                YToMm = request.RollWidthMm - trim,
                Repeat = new LayoutRepeat(
                    53, [.. Enumerable.Range(0, rows).Select(i => new PlacedPanel
                    {
                        Part = 0,
                        XMm = 25 + (i % 2 * 25),
                        YMm = trim + 25 + (50 * i),
                        AngleDeg = 0,
                    })]),
            }],
            Search = Shapes.ByHand(leastGapMm: 0),
        };
    }
}
