using BenchmarkDotNet.Attributes;
using FeltNest.Ball;
using FeltNest.Panel;

namespace FeltNest.Benchmarks;

/// <summary>A ball's panel from specification to arcs. The ball's numbers are invented.</summary>
[ShortRunJob]
public class PanelBenchmarks
{
    private BallSpec ball = null!;

    [Params(EdgeRule.Free, EdgeRule.Mated, EdgeRule.True)]
    public EdgeRule Edge { get; set; }

    [GlobalSetup]
    public void Make() => ball = new BallSpec(
        "bench", RuleType.None, new CoreSpec(60, 45), new CementSpec(0.15, 120),
        new FeltSpec("felt", FeltConstruction.Woven, 3.2, 3, 800, 2, 2, 0.7692307692307693, 0.3, 0.5, 20, 15, 0, 0),
        new SeamSpec(SeamFamily.TwoHarmonic, 28, 0.4), new PanelSpec(FlatteningMethod.Elastic, Edge, null));

    [Benchmark]
    public double Flatten() => PanelFlattener.Flatten(ball).AreaMm2;
}
