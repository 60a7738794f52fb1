using FeltNest.Panel.Trace;

namespace FeltNest.Report;

/// <summary>The table a traced picture prints.</summary>
internal static class TraceReport
{
    /// <summary>The text, lines ending in a line feed.</summary>
    public static string Text(string name, TracedPanel traced)
    {
        TextTable table = new();
        table.Heading($"Traced from {name}")
            .Line("a pixel", traced.Flat.PixelMm, "0.0000", "mm")
            .Line("panels", traced.Found.Panels.Count, "0", string.Empty, $"{traced.Found.LeftAside} frames and smaller things left aside")
            .Line("panel and ground apart", traced.Found.Contrast, "0", "of 255", $"in {traced.Found.Seen}")
            .Line("area", traced.Outline.Area / 100, "0.00", "cm2")
            .Line("edge length", traced.Outline.Perimeter, "0.00", "mm");
        if (traced.Flat.MarksOffMm is { } off)
        {
            table.Line("marks off one flat sheet", off, "0.000", "mm", "rms");
        }

        if (traced.Smoothing is { } smoothing)
        {
            table.Line("grain taken out", smoothing.RmsMm, "0.000", "mm", "rms");
        }

        if (traced.Spread is { } spread)
        {
            table.Line(
                "spread of the panels", spread.RmsMm, "0.000", "mm",
                FormattableString.Invariant($"rms; {spread.GreatestMm:0.000} mm at most"));
        }

        if (traced.WarpAngleDeg is { } angle)
        {
            table.Line("warp to the picture's x", angle, "0.0", "degrees", traced.Marks!.HasNap ? "nap marked" : "nap not marked");
        }

        return table.Note("Look at the picture before the outline is used.").ToString();
    }
}
