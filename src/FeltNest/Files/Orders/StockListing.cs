using FeltNest.Cost.Offers;
using FeltNest.Files.Fields;
using FeltNest.Files.Rolls;

namespace FeltNest.Files.Orders;

/// <summary>Columns of a list of rolls in stock.</summary>
internal static class StockListing
{
    /// <summary>Word for a roll that may be cut.</summary>
    public const string There = "yes";

    /// <summary>Word for a roll that is left out.</summary>
    public const string Away = "no";

    private static readonly FieldSet Columns = new();

    /// <summary>The list.</summary>
    public static readonly Listing Listing = new("stock", Columns);

    public static readonly TextField Roll =
        Columns.Add(new TextField("roll", $"name of the roll, once in the list; a list has {StockReader.MostRolls} rolls at most"));
    public static readonly TextField Felt = Columns.Add(new TextField("felt", "what felt it is"));
    public static readonly TextField Lot = Columns.Add(new TextField("lot", "shade lot"));
    public static readonly NumberField WidthMm = Columns.Add(
        new NumberField(ShopRanges.RollWidth, "width; of a measured roll within 1 % of the widths measured on what is left"));
    public static readonly NumberField LengthM = Columns.Add(
        new NumberField(
            ShopRanges.RollLength,
            "length that is left; less than a measured roll's own: the difference was cut from its start, and the usable roll starts there "
                + "(as where the plan of a roll begins); at most 1 % above it"));
    public static readonly NumberField Price = Columns.Add(
        new NumberField(ShopRanges.Money, "money for one unit; another currency than that of the costs needs its rate there")
        {
            Unit = "in its currency",
        });
    public static readonly WordField PriceUnit = Columns.Add(
        new WordField("priceUnit", PriceUnits.Words, "running metre of the full width, square metre, kilogram"));
    public static readonly CurrencyField Currency = Columns.Add(new CurrencyField("currency", "its currency"));
    public static readonly WordField Available = Columns.Add(
        new WordField("available", [There, Away], "`no` leaves the roll out"));
    public static readonly NumberField MassPerAreaGsm = Columns.Add(
        new NumberField(ShopRanges.MassPerArea, "mass of the felt as bought; wanted where the price is per kg") { Optional = true });
    public static readonly NumberField FaultPercent = Columns.Add(
        new NumberField("faultPercent", ShopRanges.LossShare, "panels lost to faults") { Otherwise = "that of the costs" });
    public static readonly DayField Received = Columns.Add(
        new DayField(
            "received",
            "day it came, or will come: the age of remnants; a roll is cut from 00:00 of that day on at the earliest")
        {
            Otherwise = "there",
        });
    public static readonly WordField NapToward = Columns.Add(
        new WordField(
            "napToward", NapWord.Words,
            "way the nap lies: with the feed or against it; where the roll was measured, its own must be the same, and counts where "
                + "this is "
                + "blank")
        {
            Optional = true,
        });
    public static readonly FileField Measured = Columns.Add(
        new FileField("measured", "the roll as measured ([roll](#roll)), path from the list: strikes are planned round its faults")
        {
            Otherwise = "none",
        });
}
