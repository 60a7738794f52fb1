using BenchmarkDotNet.Attributes;
using FeltNest.Geometry;
using FeltNest.Geometry.NoFit;
using FeltNest.Tests.Geometry;

namespace FeltNest.Benchmarks;

/// <summary>The exact no-fit region of a dog bone against itself, against the union of the sums of all convex pieces.</summary>
[ShortRunJob]
public class NoFitBenchmarks
{
    private Outline part = null!;

    [Params(48, 100, 200, 400)]
    public int Points { get; set; }

    [GlobalSetup]
    public void Make() => part = DogBones.Make(Points);

    [Benchmark]
    public double Traced() => NoFitRegion.Of(part, part).FilledArea;

    [Benchmark(Baseline = true)]
    public double ConvexPieceUnion() => PiecewiseUnion.Of(part, part).Area;
}
