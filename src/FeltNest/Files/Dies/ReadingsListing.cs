using FeltNest.Files.Fields;

namespace FeltNest.Files.Dies;

/// <summary>Columns of the first-article readings of a die.</summary>
internal static class ReadingsListing
{
    private static readonly FieldSet Columns = new();

    /// <summary>The list.</summary>
    public static readonly Listing Listing = new("readings", Columns);

    public static readonly DayField Date = Columns.Add(new DayField("date", "day of the reading"));
    public static readonly WholeField Strikes = Columns.Add(
        new WholeField("strikes", 0, ShopRanges.MostCount, "strikes of the die until then"));
    public static readonly WholeField Cavity = Columns.Add(
        new WholeField("cavity", 1, NumberField.NoMost, "which cavity") { Allowed = "1 to the cavities of the die" });
    public static readonly WordField Ply = Columns.Add(new WordField("ply", ["single", "top", "bottom"], "layer under the strike"));
    public static readonly NumberField OffMm = Columns.Add(
        new NumberField("offMm", -50, 50, "mean distance of the blank off the outline; above 0 outside"));
    public static readonly NumberField WorstMm = Columns.Add(
        new NumberField("worstMm", 0, 50, "greatest distance off the outline, without sign"));
}
