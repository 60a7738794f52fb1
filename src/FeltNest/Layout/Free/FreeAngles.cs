using FeltNest.Geometry;

namespace FeltNest.Layout.Free;

/// <summary>The angles a free search may give a panel, with how deep every two of them stand in each other.</summary>
internal sealed class FreeAngles
{
    // Parts of more corners than this are simplified for the fields, by this share of their size.
    private const int ManyCorners = 60;
    private const double Plainness = 1e-3;

    private readonly DepthField[,] fields;

    /// <param name="request">Part, gap and roll.</param>
    /// <param name="angles">Angles, radians.</param>
    internal FreeAngles(LayoutRequest request, double[] angles)
    {
        // Far below a grid step of the fields: parts of many corners only cost time there.
        Outline whole = request.Part.Outline;
        double size = Math.Max(whole.MaxX - whole.MinX, whole.MaxY - whole.MinY);
        Outline part = whole.Points.Count <= ManyCorners ? whole : Outline.From(PolygonSets.Simplified(whole.Points, Plainness * size));
        Values = angles;
        Outline[] turned = [.. angles.Select(part.Turned)];
        Outline[] exact = [.. angles.Select(whole.Turned)];
        fields = new DepthField[angles.Length, angles.Length];
        Parallel.For(0, angles.Length * angles.Length, new ParallelOptions { MaxDegreeOfParallelism = 2 }, n =>
        {
            int i = n / angles.Length;
            int k = n % angles.Length;
            fields[i, k] = DepthField.Of(turned[i], turned[k], request.GapMm);
        });
        Low = [.. exact.Select(o => request.Usable.Low - o.MinY)];
        High = [.. exact.Select(o => request.Usable.High - o.MaxY)];
    }

    /// <summary>The angles, radians.</summary>
    internal double[] Values { get; }

    /// <summary>Lowest y of the origin at each angle, mm.</summary>
    internal double[] Low { get; }

    /// <summary>Highest y of the origin at each angle, mm.</summary>
    internal double[] High { get; }

    /// <summary>Depth of a panel at angle <paramref name="moving"/> against one at angle <paramref name="standing"/> and all its
    /// copies.</summary>
    /// <param name="standing">Index of an angle.</param>
    /// <param name="moving">Index of an angle.</param>
    /// <param name="x">Place of the moving panel from the standing one, mm.</param>
    /// <param name="y">The same across.</param>
    /// <param name="repeat">Distance of copies, mm.</param>
    /// <param name="self">True for a panel against its own copies: the copy at no distance is left out.</param>
    internal double Depth(int standing, int moving, double x, double y, double repeat, bool self = false)
    {
        DepthField field = fields[standing, moving];
        if (y <= field.MinY || y >= field.MaxY)
        {
            return 0;
        }

        double depth = 0;
        for (double at = x + (Math.Ceiling((field.MinX - x) / repeat) * repeat); at < field.MaxX; at += repeat)
        {
            if (!self || Math.Abs(at) > repeat / 2)
            {
                depth += field.At(at, y);
            }
        }

        return depth;
    }
}
