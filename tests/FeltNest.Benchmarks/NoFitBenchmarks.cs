using BenchmarkDotNet.Attributes;
using FeltNest.Geometry;
using FeltNest.Geometry.NoFit;

namespace FeltNest.Benchmarks;

/// <summary>The exact no-fit region of a dog bone against itself.</summary>
[ShortRunJob]
public class NoFitBenchmarks
{
    private Outline part = null!;

    [Params(48, 96)]
    public int Points { get; set; }

    [GlobalSetup]
    public void Make() => part = DogBones.Make(Points);

    [Benchmark]
    public double FilledArea() => NoFitRegion.Of(part, part).FilledArea;
}
