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
    public void Make() => ball = new BallSpec
    {
        Name = "bench",
        RuleType = RuleType.None,
        Core = new CoreSpec { OuterDiameterMm = 60, MassG = 45 },
        Cement = new CementSpec { ThicknessMm = 0.15, MassPerAreaGsm = 120 },
        Felt = new FeltSpec
        {
            Name = "felt",
            Construction = FeltConstruction.Woven,
            ThicknessMm = 3.2,
            FinishedThicknessMm = 3,
            MassPerAreaGsm = 800,
            WarpModulusNPerMm = 2,
            WeftModulusNPerMm = 2,
            ShearModulusNPerMm = 0.7692307692307693,
            Poisson = 0.3,
            NeutralLayer = 0.5,
            MaxStretchPercent = 20,
            MaxEdgeCompressionPercent = 15,
            CureShrinkWarpPercent = 0,
            CureShrinkWeftPercent = 0,
        },
        Seam = new SeamSpec { Curve = SeamFamily.TwoHarmonic, WaistMm = 28, SeamGapMm = 0.4 },
        Panel = new PanelSpec(FlatteningMethod.Elastic, Edge, null),
    };

    [Benchmark]
    public double Flatten() => PanelFlattener.Flatten(ball).AreaMm2;
}
