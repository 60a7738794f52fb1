using FeltNest.Files.Fields;
using FeltNest.Files.Json;

namespace FeltNest.Files.Outlines;

/// <summary>Columns of a list of points: the corners of an outline, or measured places of a panel's edge.</summary>
internal static class PointsListing
{
    private static readonly FieldSet Columns = new();

    /// <summary>The list.</summary>
    public static readonly Listing Listing = new("points", Columns);

    public static readonly NumberField U = Columns.Add(
        new NumberField("u", -JsonShapes.FarthestMm, JsonShapes.FarthestMm, "along the panel") { Unit = "mm" });
    public static readonly NumberField V = Columns.Add(
        new NumberField("v", -JsonShapes.FarthestMm, JsonShapes.FarthestMm, "across it") { Unit = "mm" });
}
