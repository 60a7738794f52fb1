using FeltNest.Files.Fields;

namespace FeltNest.Files.Outlines;

/// <summary>Flat outline: every field of <c>feltnest/outline/1</c>.</summary>
internal static class OutlineDocument
{
    private static readonly FieldSet Fields = new();

    /// <summary>The document.</summary>
    public static readonly Document Document = new() { Schema = SchemaName.Outline, Title = "Flat outline", Fields = Fields };

    public static readonly TextField Name = Fields.Add(new TextField("name"));
    public static readonly RowsField Points = Fields.Add(
        new RowsField("points", ["u", "v"], "corners [u, v], mm, one closed outline; the last joins the first")
        {
            Optional = true,
            Most = Geometry.Outline.MostPoints,
        });
    public static readonly ObjectsField Arcs = Fields.Add(
        new ObjectsField("arcs", ArcFields.Set, "vertices of a closed outline of arcs and straight pieces")
        {
            Optional = true,
            Most = Geometry.Outline.MostPoints,
        });

    static OutlineDocument() => Fields.OneOf(Points, Arcs);
}
