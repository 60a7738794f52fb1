using FeltNest.Files.Fields;
using FeltNest.Files.Json;
using FeltNest.Layout;

namespace FeltNest.Files.Layouts;

/// <summary>Where one panel lies, wherever that is written.</summary>
internal static class PlacedFields
{
    internal static readonly FieldSet Set = new();

    public static readonly WholeField Panel = Set.Add(new WholeField("panel", 0, NumberField.NoMost, "place in the list of panels"));
    public static readonly NumberField XMm = Set.Add(
        new NumberField("xMm", -JsonShapes.FarthestAlongMm, JsonShapes.FarthestAlongMm, "along the roll"));
    public static readonly NumberField YMm = Set.Add(
        new NumberField("yMm", -JsonShapes.FarthestMm, JsonShapes.FarthestMm, "across, from the lower selvedge"));
    public static readonly NumberField AngleDeg = Set.Add(new NumberField("angleDeg", -360, 360, "from +x to +u"));

    /// <summary>A panel as it lies.</summary>
    /// <param name="item">The fields.</param>
    /// <param name="parts">How many panels the list has that it names its panel of.</param>
    public static PlacedPanel Read(JsonFields item, int parts) => new()
    {
        Part = PartOf(item, Panel, parts),
        XMm = item.Number(XMm),
        YMm = item.Number(YMm),
        AngleDeg = item.Number(AngleDeg),
    };

    /// <summary>A place in the list of panels.</summary>
    public static int PartOf(JsonFields item, WholeField field, int parts) =>
        item.Whole(field, 0, parts - 1, "the places in the list of panels");
}
