using FeltNest.Files.Fields;

namespace FeltNest.Files.Scan;

/// <summary>Panels traced from a picture: every field of <c>feltnest/trace/1</c>.</summary>
internal static class TraceDocument
{
    private static readonly FieldSet Fields = new();

    /// <summary>The document.</summary>
    public static readonly Document Document =
        new() { Schema = SchemaName.Trace, Title = "Panels traced from a picture", Fields = Fields };

    public static readonly TextField Name = Fields.Add(new TextField("name"));
    public static readonly WordField ScaleBy = Fields.Add(new WordField("scaleBy", ["dpi", "marks"], "what tells the picture's scale"));
    public static readonly NumberField PixelMm = Fields.Add(new NumberField("pixelMm", "width of a pixel"));
    public static readonly NumberField MarksOffMm = Fields.Add(
        new NumberField("marksOffMm", "how far the reference marks lie off one flat sheet, rms") { OrNull = true });
    public static readonly WordField SeenIn = Fields.Add(
        new WordField("seenIn", ["lightness", "red", "green", "blue"], "colour in which panel and ground lie farthest apart"));
    public static readonly NumberField Contrast = Fields.Add(new NumberField("contrast", "how far they lie apart, of 255") { Unit = "" });
    public static readonly NumberField Panels = Fields.Add(new NumberField("panels", "panels in the picture") { Unit = "" });
    public static readonly NumberField LeftAside = Fields.Add(
        new NumberField("leftAside", "frames and smaller things that were left aside") { Unit = "" });
    public static readonly NumberField GrainMm = Fields.Add(
        new NumberField("grainMm", "grain of the edge that was taken out, rms; null where the edge was kept as seen") { OrNull = true });
    public static readonly NumberField SpreadMm = Fields.Add(
        new NumberField("spreadMm", "standard deviation of the panels about their mean, rms round the edge; null for one panel")
        {
            OrNull = true,
        });
    public static readonly NumberField GreatestSpreadMm = Fields.Add(
        new NumberField("greatestSpreadMm", "the same where it is greatest; null for one panel") { OrNull = true });
    public static readonly NumberField WarpAngleDeg = Fields.Add(
        new NumberField("warpAngleDeg", "from the line of ink along the warp to the picture's x; null without one") { OrNull = true });
    public static readonly FlagField NapMarked = Fields.Add(new FlagField("napMarked", "whether a dot of ink tells the nap"));
    public static readonly NumberField AreaMm2 = Fields.Add(new NumberField("areaMm2", "inside the outline"));
    public static readonly NumberField PerimeterMm = Fields.Add(new NumberField("perimeterMm", "of the outline"));
    public static readonly ObjectsField Arcs = Fields.Add(
        new ObjectsField("arcs", ArcFields.Set, "vertices of the outline, in the frame of the picture: x to the right, y upwards")
        {
            Most = Geometry.Outline.MostPoints,
        });
}
