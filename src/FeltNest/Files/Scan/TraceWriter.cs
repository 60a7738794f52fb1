using FeltNest.Files.Json;
using FeltNest.Panel.Trace;
using static FeltNest.Files.Scan.TraceDocument;

namespace FeltNest.Files.Scan;

/// <summary>Writes what was traced from a picture (schema feltnest/trace/1).</summary>
internal static class TraceWriter
{
    /// <summary>The file's bytes.</summary>
    public static byte[] Write(string name, TracedPanel traced)
    {
        using JsonOutput json = new(TraceDocument.Document);
        json.Text(Name, name)
            .Text(ScaleBy, traced.Flat.MarksOffMm is null ? "dpi" : "marks")
            .Number(PixelMm, traced.Flat.PixelMm)
            .Number(MarksOffMm, traced.Flat.MarksOffMm)
            .Text(SeenIn, traced.Found.Seen)
            .Number(Contrast, traced.Found.Contrast)
            .Number(TraceDocument.Panels, traced.Found.Panels.Count)
            .Number(LeftAside, traced.Found.LeftAside)
            .Number(GrainMm, traced.Smoothing?.RmsMm)
            .Number(SpreadMm, traced.Spread?.RmsMm)
            .Number(GreatestSpreadMm, traced.Spread?.GreatestMm)
            .Number(WarpAngleDeg, traced.WarpAngleDeg)
            .Flag(NapMarked, traced.Marks is { HasNap: true })
            .Number(AreaMm2, traced.Outline.Area)
            .Number(PerimeterMm, traced.Outline.Perimeter)
            .Arcs(Arcs, traced.Outline.Vertices);
        return json.Finish();
    }
}
