using FeltNest.Geometry;

namespace FeltNest.Layout.Free;

/// <summary>The angles a free search may give a panel, with how deep every two of them stand in each other.</summary>
internal sealed class FreeAngles
{
    private readonly DepthField[,] fields;

    /// <param name="request">Part, gap and roll.</param>
    /// <param name="angles">Angles, radians.</param>
    internal FreeAngles(LayoutRequest request, double[] angles)
    {
        Outline part = request.Part.Outline;
        Values = angles;
        Outline[] turned = [.. angles.Select(part.Turned)];
        fields = new DepthField[angles.Length, angles.Length];
        Parallel.For(0, angles.Length * angles.Length, new ParallelOptions { MaxDegreeOfParallelism = 2 }, n =>
        {
            int i = n / angles.Length, k = n % angles.Length;
            fields[i, k] = DepthField.Of(turned[i], turned[k], request.GapMm);
        });
        Low = [.. turned.Select(o => request.Usable.Low - o.MinY)];
        High = [.. turned.Select(o => request.Usable.High - o.MaxY)];
    }

    /// <summary>The angles, radians.</summary>
    internal double[] Values { get; }

    /// <summary>Lowest y of the origin at each angle, mm.</summary>
    internal double[] Low { get; }

    /// <summary>Highest y of the origin at each angle, mm.</summary>
    internal double[] High { get; }

    /// <summary>Depth of a panel at angle <paramref name="moving"/> against one at angle <paramref name="standing"/> and all its copies.</summary>
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
