using FeltNest.Files.Fields;
using FeltNest.Files.Json;
using FeltNest.Geometry;

namespace FeltNest.Files.Layouts;

/// <summary>One move of a die from its first place, wherever that is written.</summary>
internal static class StruckFields
{
    internal static readonly FieldSet Set = new();

    public static readonly NumberField XMm = Set.Add(
        new NumberField("xMm", -JsonShapes.FarthestAlongMm, JsonShapes.FarthestAlongMm, "along the roll"));
    public static readonly NumberField YMm = Set.Add(
        new NumberField("yMm", -JsonShapes.FarthestMm, JsonShapes.FarthestMm, "across"));

    /// <summary>A move of the die.</summary>
    public static Point2 Read(JsonFields item) => new(item.Number(XMm), item.Number(YMm));
}
