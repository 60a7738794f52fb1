using FeltNest.Geometry;

namespace FeltNest.Files.Outlines;

/// <summary>Reads measured points: CSV of u,v in mm, in any order and frame.</summary>
internal static class PointsReader
{
    /// <summary>The points of a file.</summary>
    /// <exception cref="InputException">Names the line that cannot be read.</exception>
    public static IReadOnlyList<Point2> Read(string path) => Read(InputText.OfFile(path));

    /// <summary>The points of a text.</summary>
    /// <exception cref="InputException">Names the line that cannot be read.</exception>
    public static IReadOnlyList<Point2> Read(InputText text) => CsvOutline.ReadPoints(text);
}
