using BenchmarkDotNet.Attributes;
using FeltNest.Layout;

namespace FeltNest.Benchmarks;

/// <summary>One width from start to checked layout at the least effort: cost against the points of the outline and against the width (and
/// so the rows).</summary>
[ShortRunJob]
public class LayoutBenchmarks
{
    private LayoutRequest request = null!;

    [Params(50, 200, 800)]
    public int Points { get; set; }

    [Params(600.0, 1200.0, 1800.0)]
    public double Width { get; set; }

    [GlobalSetup]
    public void Make() => request = DogBones.Request(Points, Width, effort: 1);

    [Benchmark]
    public double OneWidth() => LayoutSearch.Run(request).PanelsPerMetre;
}
