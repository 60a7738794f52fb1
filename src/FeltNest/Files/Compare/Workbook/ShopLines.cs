using FeltNest.Cost.Compare;
using FeltNest.Cost.Offers;
using FeltNest.Cost.Sheet;
using FeltNest.Files.Workbooks;

namespace FeltNest.Files.Compare.Workbook;

/// <summary>The sheet of what holds for all offers: losses and costs of the shop. An empty cell is a figure that is not given.</summary>
internal static class ShopLines
{
    /// <summary>The sheet.</summary>
    public static LineSheet Of(CompareRequest question)
    {
        LineSheet shop = new("shop", 1, "The shop's figures: change those on a coloured ground. Empty: not given, and not counted.");
        CostInputs? costs = question.Costs;
        string? currency = costs?.Currency ?? question.Cases.Select(c => c.Offer?.Price.Currency).FirstOrDefault(c => c is not null);
        shop.Line("currency", "currency of the sheet", string.Empty, _ => WorkbookCell.InputText(currency ?? string.Empty));
        shop.Line("balls", "good balls the felt is bought for", "thousand", _ => WorkbookCell.Input(question.ThousandBalls));
        Losses(shop, costs?.Losses ?? FeltLosses.None);
        Felt(shop, question);
        Work(shop, costs);
        foreach ((CurrencyRate rate, int i) in (costs?.Rates ?? []).Select((rate, i) => (rate, i)))
        {
            string key = FormattableString.Invariant($"rate{i}");
            shop.Line(key, "rate: one of it in the currency of the sheet", rate.Currency, _ => WorkbookCell.Input(rate.Rate));
        }

        return shop;
    }

    private static void Losses(LineSheet shop, FeltLosses losses)
    {
        shop.Heading("Losses");
        shop.Line("roll", "length of a roll, where no offer states one", "m", _ => WorkbookCell.Input(losses.RollLengthM));
        shop.Line("end", "lost at each end of a roll", "mm", _ => WorkbookCell.Input(losses.EndLossMm));
        shop.Line("fault", "panels lost to faults, where no offer states them", "%", _ => WorkbookCell.Input(losses.FaultPercent));
        shop.Line("reject", "rejected after cutting, of the rest", "%", _ => WorkbookCell.Input(losses.RejectPercent));
        shop.Line("unpaired", "good panels without a partner", "%", _ => WorkbookCell.Input(losses.UnpairedPercent));
    }

    private static void Felt(LineSheet shop, CompareRequest question)
    {
        CostInputs? costs = question.Costs;
        FeltPrice? felt = costs?.Felt;
        shop.Heading("Felt");
        shop.Line("price", "price, where no offer states one", felt?.Currency ?? string.Empty, _ => WorkbookCell.Input(felt?.Amount));
        shop.Line(
            "unit", "price is for one", string.Empty,
            _ => WorkbookCell.InputText(felt is null ? string.Empty : PriceUnits.WordOf(felt.Unit)));
        shop.Line(
            "mass", "mass per area, where no offer states one", "g/m2",
            _ => WorkbookCell.Input(costs?.MassPerAreaGsm ?? question.Lay.Part.MassPerAreaGsm));
        shop.Line("recovery", "waste brings", "a kg", _ => WorkbookCell.Input(costs?.RecoveryPerKg));
        shop.Line("coating", "coating and cement of bare felt", "a m2", _ => WorkbookCell.Input(costs?.CoatingPerSquareMetre));
        shop.Line("interest", "interest a year", "%", _ => WorkbookCell.Input(costs?.InterestPercent));
        shop.Line("worth", "worth of felt left over", "%", _ => WorkbookCell.Input(costs?.SurplusWorthPercent));
    }

    private static void Work(LineSheet shop, CostInputs? costs)
    {
        DieCost? die = costs?.Die;
        SetUpCost? setUp = costs?.SetUp;
        shop.Heading("Strikes, die and the rest");
        shop.Line("strike", "labour and machine", "a strike", _ => WorkbookCell.Input(costs?.PerStrike));
        shop.Line("board", "cutting board", "a strike", _ => WorkbookCell.Input(costs?.BoardPerStrike));
        shop.Line("die", "price of the die", string.Empty, _ => WorkbookCell.Input(die?.Price));
        shop.Line("cavity", "price of each of its cavities, on top", string.Empty, _ => WorkbookCell.Input(costs?.Gang?.PricePerCavity));
        shop.Line("life", "life of its rule", "strikes", _ => WorkbookCell.Input((double?)die?.LifeStrikes));
        shop.Line("rerules", "new rules it gets", string.Empty, _ => WorkbookCell.Input((double?)die?.ReRules));
        shop.Line("rerule", "price of a new rule", string.Empty, _ => WorkbookCell.Input(die?.ReRulePrice));
        shop.Line("hours", "set-up", "hours", _ => WorkbookCell.Input(setUp?.Hours));
        shop.Line("rate", "price of an hour of it", "an hour", _ => WorkbookCell.Input(setUp?.RatePerHour));
        shop.Line("batch", "cut in one set-up", "thousand", _ => WorkbookCell.Input(setUp?.BatchThousandBalls));
        shop.Line("handling", "handling and inspection", "thousand", _ => WorkbookCell.Input(costs?.HandlingPerThousandBalls));
        shop.Line("overhead", "overhead, of lines 13 to 17", "%", _ => WorkbookCell.Input(costs?.OverheadPercent));
    }
}
