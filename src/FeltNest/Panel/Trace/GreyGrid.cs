using FeltNest.Geometry;

namespace FeltNest.Panel.Trace;

/// <summary>One value for each pixel of a picture, its first row at the bottom.</summary>
/// <param name="width">Pixels across.</param>
/// <param name="values">Values, row by row.</param>
internal sealed class GreyGrid(int width, float[] values)
{
    /// <summary>Pixels across.</summary>
    public int Width => width;

    /// <summary>Pixels up.</summary>
    public int Height => values.Length / width;

    /// <summary>Values, row by row.</summary>
    public float[] Values => values;

    /// <summary>Value at a place between the pixels' centres, straight between them; the nearest one outside.</summary>
    public double At(Point2 place)
    {
        double x = Math.Clamp(place.X, 0, width - 1.001);
        double y = Math.Clamp(place.Y, 0, Height - 1.001);
        (int i, int j) = ((int)x, (int)y);
        (double u, double v) = (x - i, y - j);
        int at = (j * width) + i;
        return ((1 - v) * (((1 - u) * values[at]) + (u * values[at + 1])))
            + (v * (((1 - u) * values[at + width]) + (u * values[at + width + 1])));
    }

    /// <summary>The grid with every pixel the mean of its neighbours by the weights of a normal curve.</summary>
    /// <param name="sigma">Half width of the curve, pixels.</param>
    public GreyGrid Softened(double sigma)
    {
        int reach = (int)Math.Ceiling(3 * sigma);
        float[] weights = [.. Enumerable.Range(-reach, (2 * reach) + 1).Select(k => (float)Math.Exp(-k * k / (2 * sigma * sigma)))];
        float whole = weights.Sum();
        weights = [.. weights.Select(weight => weight / whole)];
        int height = Height;
        float[] across = new float[values.Length];
        float[] soft = new float[values.Length];
        Parallel.For(0, height, j =>
        {
            for (int i = 0; i < width; i++)
            {
                float sum = 0;
                for (int k = -reach; k <= reach; k++)
                {
                    sum += weights[k + reach] * values[(j * width) + Math.Clamp(i + k, 0, width - 1)];
                }

                across[(j * width) + i] = sum;
            }
        });
        Parallel.For(0, height, j =>
        {
            for (int k = -reach; k <= reach; k++)
            {
                float weight = weights[k + reach];
                int row = Math.Clamp(j + k, 0, height - 1) * width;
                for (int i = 0; i < width; i++)
                {
                    soft[(j * width) + i] += weight * across[row + i];
                }
            }
        });
        return new GreyGrid(width, soft);
    }
}
