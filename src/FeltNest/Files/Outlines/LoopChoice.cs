using FeltNest.Geometry;

namespace FeltNest.Files.Outlines;

/// <summary>Chooses the part among the closed loops of a drawing: a frame of straight lines with square corners, beside it or round it, is
/// left aside and said.</summary>
internal static class LoopChoice
{
    /// <summary>The one loop that is a part.</summary>
    /// <exception cref="InputException">None or several may be meant.</exception>
    public static IReadOnlyList<ArcVertex> Of(string file, IReadOnlyList<IReadOnlyList<ArcVertex>> loops, List<string> notes)
    {
        if (loops.Count == 1)
        {
            return loops[0];
        }

        IReadOnlyList<ArcVertex>[] parts = [.. loops.Where(loop => !IsFrame(loop))];
        if (parts.Length != 1)
        {
            throw new InputException(
                file, null, $"holds {loops.Count} closed loops: a part is one loop, without holes; leave that one in the file");
        }

        string frames = string.Join(", ", loops.Where(IsFrame).Select(Size));
        notes.Add($"of {loops.Count} closed loops the one of {Size(parts[0])} is taken; left aside: frames of {frames}");
        return parts[0];
    }

    private static string Size(IReadOnlyList<ArcVertex> loop) => FormattableString.Invariant(
        $"{loop.Max(v => v.X) - loop.Min(v => v.X):0.##} x {loop.Max(v => v.Y) - loop.Min(v => v.Y):0.##} mm");

    private static bool IsFrame(IReadOnlyList<ArcVertex> loop)
    {
        // Corners this near to square, as the cosine of the angle between their sides: half a degree.
        const double square = 0.009;
        return loop.Count == 4 && loop.All(v => v.Turn == 0) && Enumerable.Range(0, 4).All(i =>
        {
            Point2 before = loop[(i + 1) % 4].Point - loop[i].Point;
            Point2 after = loop[(i + 2) % 4].Point - loop[(i + 1) % 4].Point;
            return Math.Abs(before.Dot(after)) < square * before.Length * after.Length;
        });
    }
}
