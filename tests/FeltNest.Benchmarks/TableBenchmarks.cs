using BenchmarkDotNet.Attributes;
using FeltNest.Layout;
using FeltNest.Layout.Limits;
using FeltNest.Layout.Polish;
using FeltNest.Layout.Rows;
using FeltNest.Layout.Rows.Tables;

namespace FeltNest.Benchmarks;

/// <summary>The step tables: turning and sampling, one table, all of them, and the rows they promise on widths from 600 to 1800 mm with the
/// tables kept. A widths' scan polishes the best promise of each width coarsely.</summary>
[ShortRunJob]
public class TableBenchmarks
{
    private const int CoarseSteps = 12;

    private readonly LayoutRequest request = DogBones.Request(400, 1500, effort: 1);
    private TurnedPart turned = null!;
    private SearchEffort effort = null!;
    private TiltRange tilts;

    [GlobalSetup]
    public void Turn()
    {
        turned = TurnedPart.Make(request.Part.Outline, 0.6, 0.28, 4);
        (effort, tilts) = (SearchEffort.Of(request), TiltRange.Of(request.Rules));
    }

    [Benchmark]
    public double OneTurn() => TurnedPart.Make(request.Part.Outline, 0.6, 0.28, 4).Height;

    /// <summary>Sums of one table: the products of the sample counts, about 140,000 at this tilt.</summary>
    [Benchmark]
    public double OneStepTable() => StepTable.Make(turned, turned).At(40);

    [Benchmark]
    public double LeastOverRow() => StepTable.Make(turned, turned).LeastOverRow(80).Step;

    [Benchmark]
    public double AllTables() => new TiltTables(request.Part.Outline, 4, tilts, effort).Grid;

    [Benchmark]
    public double Scan20() => Scan(20);

    [Benchmark]
    public double Scan500() => Scan(500);

    private double Scan(int widths)
    {
        TiltTables kept = new(request.Part.Outline, 4, tilts, effort);
        double best = 0;
        for (int i = 0; i < widths; i++)
        {
            LayoutRequest here = request with { RollWidthMm = 600 + (1200.0 * i / widths) };
            double[] densities = [.. new RowTables(kept, here.UsableWidthMm).Best(2).AsParallel().AsOrdered().WithDegreeOfParallelism(2)
                .Select(rows => LayStart.Of(here, rows, tilts))
                .Select(s => LayoutPolisher.Polish(s.Model, CoarseSteps, effort.FirstTrust) is { } end ? s.Model.Cost(end) : 0)];
            best += densities.Max();
        }

        return best;
    }
}
