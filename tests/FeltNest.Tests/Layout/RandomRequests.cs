using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Tests.Geometry;

namespace FeltNest.Tests.Layout;

/// <summary>Random questions to the layout engine at its least effort: any part, width, gap, edge and rule. The same seed always asks the
/// same.</summary>
internal static class RandomRequests
{
    /// <summary>Question number <paramref name="seed"/>; seven in a row bring the seven kinds of outline.</summary>
    internal static LayoutRequest Of(int seed)
    {
        Random random = new(seed);

        // Every third part has up to 400 corners, the others up to 40.
        Outline drawn = RandomOutlines.Next(random, seed % RandomOutlines.Kinds, seed % 3 == 0 ? 400 : 40);
        double size = 2 * drawn.Centred().Points.Max(p => p.Length);
        double scale = (20 + (140 * random.NextDouble())) / size;
        Outline part = Outline.From(drawn.Points.Select(p => p * scale)).Centred();
        double edge = random.Next(2) * 15;
        double width = (scale * size * (1.02 + (4 * random.NextDouble() * random.NextDouble()))) + (2 * edge);
        double gap = random.Next(4) switch { 0 => 0, 1 => 0.5, 2 => 4 * random.NextDouble(), _ => 4 };
        gap = Math.Min(gap, OutlineWidth.Least(part, 0, Math.PI).Height);
        RowRule rows = random.Next(5) switch { 0 => RowRule.Alternate, 1 => RowRule.Any, _ => RowRule.Same };
        double? warp = random.Next(3) != 0 ? null : rows == RowRule.Alternate ? 90 * random.Next(2) : 180 * random.NextDouble();
        return Shapes.Request(part, width, gap, edge, rows, warp, oneWay: random.Next(4) == 0);
    }
}
