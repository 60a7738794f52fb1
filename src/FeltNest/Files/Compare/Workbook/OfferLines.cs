using FeltNest.Cost.Compare;
using FeltNest.Cost.Offers;
using FeltNest.Cost.Sheet;
using FeltNest.Files.Workbooks;

namespace FeltNest.Files.Compare.Workbook;

/// <summary>The sheet of what each offer or width has of its own: terms, roll and layout, one column each.</summary>
internal static class OfferLines
{
    /// <summary>The sheet.</summary>
    public static LineSheet Of(Comparison comparison, LineSheet shop)
    {
        CompareRow[] rows = [.. comparison.Rows];
        LineSheet offers = new("offers", rows.Length, "What each offer has of its own: change the figures on a coloured ground.");
        offers.Line("name", "name", string.Empty, i => WorkbookCell.InputText(rows[i].Case.Name));
        Price(offers, rows, shop, comparison.Question.Costs?.Rates.Count ?? 0);
        Terms(offers, rows);
        Roll(offers, rows, shop);
        Layout(offers, rows);
        return offers;
    }

    /// <summary>Bands of the layout with most of them.</summary>
    public static int MostBands(Comparison comparison) => comparison.Rows.Max(row => row.Layout.Bands.Count);

    /// <summary>Key of a line of one band.</summary>
    public static string BandKey(string what, int band) => FormattableString.Invariant($"{what}{band}");

    /// <summary>Key of the last tier of an offer, 0 the price that holds without one.</summary>
    public static string LastTier(string what, CompareRow row) => BandKey(what, row.Case.Offer?.Tiers.Count ?? 0);

    // Long because it lists the lines of the price in the order of the sheet.
    private static void Price(LineSheet offers, CompareRow[] rows, LineSheet shop, int rates)
    {
        FeltOffer? Offer(int i) => rows[i].Case.Offer;
        WorkbookCell? OfShop(int i, string key) => rows[i].Sheet is null ? null : WorkbookCell.Formula(shop.At(key));
        offers.Heading("Price");
        offers.Line(
            "unit", "price is for one", string.Empty,
            i => Offer(i) is { } offer ? WorkbookCell.InputText(PriceUnits.WordOf(offer.Price.Unit)) : OfShop(i, "unit"));
        offers.Line(
            "currency", "currency of the price", string.Empty,
            i => rows[i].Sheet is { } sheet ? WorkbookCell.InputText(sheet.Price.Currency) : null);
        offers.Line("rate", "its rate", string.Empty, i => rows[i].Sheet is null ? null : WorkbookCell.Formula(Rate(i)));
        int tiers = rows.Max(row => row.Case.Offer?.Tiers.Count ?? 0);
        for (int t = 0; t <= tiers; t++)
        {
            int tier = t - 1;
            offers.Line(
                BandKey("from", t), "bought from", "m", i => t == 0 ? WorkbookCell.Input(0m) : Tier(i, tier, x => (decimal)x.FromM));
        }

        offers.Line(
            "price0", "price from there", string.Empty,
            i => Offer(i) is { } offer ? WorkbookCell.Input(offer.Price.Amount) : OfShop(i, "price"));
        for (int t = 1; t <= tiers; t++)
        {
            int tier = t - 1;
            offers.Line(BandKey("price", t), "price from there", string.Empty, i => Tier(i, tier, x => x.Amount));
        }

        WorkbookCell? Tier(int i, int tier, Func<PriceTier, decimal> figure) =>
            Offer(i) is { } offer && tier < offer.Tiers.Count ? WorkbookCell.Input(figure(offer.Tiers[tier])) : null;

        string Rate(int i)
        {
            // The unit of a rate's line is its currency.
            string other = rates == 0
                ? "NA()"
                : $"INDEX({shop.Span("rate0", BandKey("rate", rates - 1))},MATCH({offers.At("currency", i)},"
                    + $"{shop.Sheet.Span(shop.RowOf("rate0"), shop.RowOf(BandKey("rate", rates - 1)), 2)},0))";
            return $"IF({offers.At("currency", i)}={shop.At("currency")},1,{other})";
        }
    }

    private static void Terms(LineSheet offers, CompareRow[] rows)
    {
        FeltOffer? Offer(int i) => rows[i].Case.Offer;
        offers.Heading("Terms");
        offers.Line("minimum", "least length sold", "m", i => WorkbookCell.Input(Offer(i)?.MinimumM));
        offers.Line("freight", "freight of a roll", string.Empty, i => WorkbookCell.Input(Offer(i)?.FreightPerRoll));
        offers.Line("duty", "duty, of felt and freight", "%", i => WorkbookCell.Input(Offer(i)?.DutyPercent));
        offers.Line("credit", "days of credit", string.Empty, i => WorkbookCell.Input((double?)Offer(i)?.CreditDays));
        offers.Line("basis", "bare or coated", string.Empty, i => WorkbookCell.InputText(Offer(i)?.MassBasis ?? string.Empty));
    }

    private static void Roll(LineSheet offers, CompareRow[] rows, LineSheet shop)
    {
        FeltOffer? Offer(int i) => rows[i].Case.Offer;
        WorkbookCell Own(double? own, string key) => own is { } ? WorkbookCell.Input(own) : WorkbookCell.Formula(shop.At(key));
        offers.Heading("Roll");
        offers.Line("width", "width the layout is for", "mm", i => WorkbookCell.Input(rows[i].Layout.RollWidthMm));
        offers.Line("invoiced", "width that is invoiced", "mm", i => Offer(i) is { } offer
            ? WorkbookCell.Input(offer.InvoicedWidthMm ?? offer.WidthMm)
            : WorkbookCell.Formula(offers.At("width", i)));
        offers.Line("roll", "length", "m", i => Own(Offer(i)?.LengthM, "roll"));
        offers.Line("mass", "mass per area", "g/m2", i => Own(Offer(i)?.MassPerAreaGsm, "mass"));
        offers.Line("fault", "panels lost to faults", "%", i => Own(Offer(i)?.FaultPercent, "fault"));

        // A width without an offer is bought by the metre, whatever its rolls are.
        offers.Line("sold", "sold in lengths of", "m", i => Offer(i) is null ? null : WorkbookCell.Formula(offers.At("roll", i)));
    }

    private static void Layout(LineSheet offers, CompareRow[] rows)
    {
        LayPlan[] plans = [.. rows.Select(row => LayPlan.Of(row.Layout))];
        offers.Heading("Layout as it is taken");
        offers.Line("trim", "both edge trims", "mm", i => WorkbookCell.Input(plans[i].TrimMm));
        offers.Line("unused", "usable width that no panel reaches", "mm", i => WorkbookCell.Input(plans[i].UnusedEdgeMm));
        offers.Line("plies", "plies of a strike", string.Empty, i => WorkbookCell.Input((double)plans[i].Plies));
        offers.Line(
            "most", "most panels of one layer a strike cuts", string.Empty, i => WorkbookCell.Input((double?)rows[i].MostPanels));
        for (int b = 0; b < plans.Max(plan => plan.Bands.Count); b++)
        {
            int band = b;
            string name = b == 0 ? string.Empty : FormattableString.Invariant($", band {b + 1}");
            Line("repeat", "repeat", "mm", x => x.RepeatMm);
            Line("over", "a strike reaches past its feed", "mm", x => x.OverhangMm);
            Line("panels", "panels in a repeat", string.Empty, x => x.Panels);
            Line("area", "their area", "mm2", x => x.PanelAreaMm2);
            Line("height", "width of felt it takes", "mm", x => x.HeightMm);
            Line("strikes", "strikes of a repeat", string.Empty, x => x.StrikesPerRepeat);

            void Line(string key, string words, string unit, Func<CutBand, double> figure) => offers.Line(
                BandKey(key, band), words + name, unit,
                i => band < plans[i].Bands.Count ? WorkbookCell.Input(figure(plans[i].Bands[band])) : null);
        }
    }
}
