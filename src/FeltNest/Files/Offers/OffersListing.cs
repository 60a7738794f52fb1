using FeltNest.Cost.Offers;
using FeltNest.Files.Fields;

namespace FeltNest.Files.Offers;

/// <summary>Columns of a list of felt offers.</summary>
internal static class OffersListing
{
    private static readonly FieldSet Columns = new();

    /// <summary>The list.</summary>
    public static readonly Listing Listing = new("offers", Columns);

    public static readonly TextField Name = Columns.Add(new TextField("name", "name of the offer, once in the list"));
    public static readonly TextField Felt = Columns.Add(new TextField("felt", "what felt it is"));
    public static readonly NumberField WidthMm = Columns.Add(new NumberField(ShopRanges.RollWidth, "nominal roll width"));
    public static readonly NumberField LengthM = Columns.Add(new NumberField(ShopRanges.RollLength, "length of a roll"));
    public static readonly NumberField Price = Columns.Add(
        new NumberField(ShopRanges.FeltPrice, "money for one unit") { Unit = "in its currency" });
    public static readonly WordField PriceUnit = Columns.Add(
        new WordField("priceUnit", PriceUnits.Words, "running metre of the full width, square metre, kilogram"));
    public static readonly CurrencyField Currency = Columns.Add(new CurrencyField("currency", "its currency"));
    public static readonly NumberField LeastWidthMm = Columns.Add(
        new NumberField("leastWidthMm", ShopRanges.RollWidth, "width the seller guarantees; the layout is for it")
        {
            Allowed = "10 to 10000, not above `widthMm`",
            Otherwise = "`widthMm`",
        });
    public static readonly NumberField EdgeMm = Columns.Add(
        new NumberField(ShopRanges.EdgeTrim, "edge trim each side") { Otherwise = "the edge trim of the run" });
    public static readonly NumberField MassPerAreaGsm = Columns.Add(
        new NumberField(
            ShopRanges.MassPerArea, "mass per area of the felt as bought, coated or bare; wanted where the price is per kg")
        {
            Otherwise = "the ball's felt",
        });
    public static readonly WordField MassBasis = Columns.Add(
        new WordField(
            "massBasis", ["bare", "coated"],
            "whether it is sold bare or coated, and mass and kilograms with it; bare felt costs `coating` of the costs file besides")
        {
            Otherwise = "not said",
        });
    public static readonly NumberField FaultPercent = Columns.Add(
        new NumberField("faultPercent", ShopRanges.LossShare, "panels lost to faults, of all cut")
        {
            Otherwise = "the costs file, else 0",
        });
    public static readonly NumberField MinimumM = Columns.Add(
        new NumberField("minimumM", 0, 1_000_000, "least length sold") { Otherwise = "none" });
    public static readonly WholeField DeliveryDays = Columns.Add(
        new WholeField(
            "deliveryDays", 0, ShopRanges.MostWaitDays,
            "days from the first day of cutting until its rolls are there (`orders`), at 00:00 of that day")
        {
            Default = 0,
        });
    public static readonly NumberField InvoicedWidthMm = Columns.Add(
        new NumberField("invoicedWidthMm", ShopRanges.RollWidth, "width that square metres and kilograms are invoiced for")
        {
            Otherwise = "`widthMm`",
        });
    public static readonly TextField Tiers = Columns.Add(
        new TextField(
            "tiers", "prices from a length of the order on, m: `1000:17.90 3000:17.40`; below the first the price itself holds")
        {
            Otherwise = "none",
        });
    public static readonly NumberField FreightPerRoll = Columns.Add(
        new NumberField("freightPerRoll", ShopRanges.Money, "freight of one roll, in its currency")
        {
            Unit = "in its currency",
            Default = 0,
        });
    public static readonly NumberField DutyPercent = Columns.Add(
        new NumberField("dutyPercent", 0, 200, "duty, % of felt and freight together") { Default = 0 });
    public static readonly WholeField CreditDays = Columns.Add(
        new WholeField("creditDays", 0, 365, "days after delivery until it is paid; worth the interest of the costs file") { Default = 0 });
    public static readonly TextField Lot = Columns.Add(new TextField("lot", "shade lot") { Otherwise = "none" });
    public static readonly NumberField PriceLow = Columns.Add(
        new NumberField("priceLow", ShopRanges.FeltPrice, "least price thought possible")
        {
            Unit = "(priceLow to price to priceHigh)",
            Allowed = "0.0001 to `price`",
            Otherwise = "`price`",
        });
    public static readonly WordField PriceShape = Columns.Add(
        new WordField(
            "priceShape", ["triangular", "uniform", "normal"],
            "how likely the prices between are; normal: both lie two standard deviations off the price")
        {
            Default = "triangular",
        });
    public static readonly NumberField PriceHigh = Columns.Add(
        new NumberField("priceHigh", ShopRanges.FeltPrice, "greatest price thought possible")
        {
            Unit = "(priceLow to price to priceHigh)",
            Allowed = "`price` to 1000000000",
            Otherwise = "`price`",
        });
}
