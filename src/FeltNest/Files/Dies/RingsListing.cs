using FeltNest.Files.Fields;
using FeltNest.Files.Json;

namespace FeltNest.Files.Dies;

/// <summary>Columns of the points measured on a die: all cavities in one frame.</summary>
internal static class RingsListing
{
    private static readonly FieldSet Columns = new();

    /// <summary>The list.</summary>
    public static readonly Listing Listing = new("rings", Columns);

    public static readonly WholeField Cavity = Columns.Add(
        new WholeField("cavity", 1, NumberField.NoMost, "number of the cavity on the die's drawing")
        {
            Allowed = "1 to the cavities of the die",
        });
    public static readonly NumberField U = Columns.Add(
        new NumberField("u", -JsonShapes.FarthestMm, JsonShapes.FarthestMm, "along the die, in any frame") { Unit = "mm" });
    public static readonly NumberField V = Columns.Add(
        new NumberField("v", -JsonShapes.FarthestMm, JsonShapes.FarthestMm, "across it, in the same frame") { Unit = "mm" });
}
