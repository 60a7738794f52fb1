using FeltNest.Geometry;
using FeltNest.Panel;

namespace FeltNest.Files.Check;

/// <summary>An outline traced from a picture: area and edge length of its arcs, and which figures stand for which picture.</summary>
internal static class TraceFigures
{
    // Sums of short chords and the true curve differ by less, as a share.
    private const double ChordShare = 1e-5;

    /// <summary>Checks the file.</summary>
    public static void Check(StatedFields top)
    {
        ArcVertex[] arcs = [.. top.Items("arcs").Select(v =>
            new ArcVertex(v.Number("x"), v.Number("y"), double.DegreesToRadians(v.Number("turnDeg"))))];
        top.Keep(arcs.Length > 2, "arcs", "has fewer than 3 arcs");
        if (arcs.Length > 2)
        {
            FlatShapeFindings found = FlatPanelCheck.OfShape(arcs, [.. arcs.Select(v => v.Point)]);
            top.Same("areaMm2", found.AreaMm2, ChordShare * found.AreaMm2);
            top.Same("perimeterMm", found.PerimeterMm, ChordShare * found.PerimeterMm);
        }

        bool byMarks = top.Text("scaleBy") == "marks";
        top.Keep(byMarks == top.Optional("marksOffMm") is not null, "marksOffMm", "has to stand there exactly where marks tell the scale");
        bool several = top.Number("panels") > 1;
        double? spread = top.Optional("spreadMm");
        top.Keep(several == spread is not null, "spreadMm", "has to stand there exactly where there are several panels");
        top.Keep((spread ?? 0) <= (top.Optional("greatestSpreadMm") ?? 0), "greatestSpreadMm", "is below spreadMm");
    }
}
