using FeltNest.Files.Fields;

namespace FeltNest.Files.Dies;

/// <summary>Columns of test bends of a shop's own rule.</summary>
internal static class BendTestsListing
{
    private static readonly FieldSet Columns = new();

    /// <summary>The list.</summary>
    public static readonly Listing Listing = new("bends", Columns);

    public static readonly NumberField InsideRadiusMm = Columns.Add(
        new NumberField("insideRadiusMm", 0.1, 500, "radius of the inner face as formed: that of the former"));
    public static readonly NumberField AngleSetDeg = Columns.Add(new NumberField("angleSetDeg", 1, 180, "angle it was formed to"));
    public static readonly NumberField AngleGotDeg = Columns.Add(
        new NumberField("angleGotDeg", 0, 180, "angle that was left when it was let go; no more than that formed"));
}
