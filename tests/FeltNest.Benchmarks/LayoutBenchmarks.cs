using BenchmarkDotNet.Attributes;
using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Layout.Rows.Tables;

namespace FeltNest.Benchmarks;

/// <summary>One width from start to checked layout, and the step table that the search rests on.</summary>
[ShortRunJob]
public class LayoutBenchmarks
{
    private readonly Outline part = DogBones.Make(200);
    private TurnedPart turned = null!;

    [Params(600.0, 1500.0)]
    public double Width { get; set; }

    [GlobalSetup]
    public void Turn() => turned = TurnedPart.Make(part, 0.6, 0.28, 4);

    [Benchmark]
    public double OneWidthEffort1() => LayoutSearch.Run(
        new LayoutRequest(new LayoutPart("bone", null, part, null, null, null), Width, 15, 4, new LayoutRules(null, 0, RowRule.Same, false), 1, 1)).PanelsPerMetre;

    [Benchmark]
    public double OneStepTable() => StepTable.Make(turned, turned).At(40);
}
