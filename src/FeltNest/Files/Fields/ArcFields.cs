using FeltNest.Files.Json;

namespace FeltNest.Files.Fields;

/// <summary>Fields of one vertex of a closed outline of arcs and straight pieces, wherever one is written.</summary>
internal static class ArcFields
{
    internal static readonly FieldSet Set = new();

    public static readonly NumberField X = Set.Add(new NumberField("x", -JsonShapes.FarthestMm, JsonShapes.FarthestMm) { Unit = "mm" });
    public static readonly NumberField Y = Set.Add(new NumberField("y", -JsonShapes.FarthestMm, JsonShapes.FarthestMm) { Unit = "mm" });
    public static readonly NumberField TurnDeg = Set.Add(
        new NumberField("turnDeg", -360, 360, "signed included angle of the arc to the next vertex; 0 is straight")
        {
            EndsExcluded = true,
        });
}
