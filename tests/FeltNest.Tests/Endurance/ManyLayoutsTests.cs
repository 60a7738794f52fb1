using FeltNest.Files.Layouts;
using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Tests.Geometry;
using FeltNest.Tests.Layout;
using FeltNest.Yield;
using Xunit;

namespace FeltNest.Tests.Endurance;

/// <summary>Layout after layout in one process: 40 in the suite, 10,000 with the factor 250. Nothing piles up and nothing drifts.</summary>
[Collection(AloneInProcess.Name)]
public sealed class ManyLayoutsTests
{
    // The first ten load solvers and code.
    private const int AskedAgain = 7;
    private const int WarmedUp = 10;

    [Fact, Trait("tier", "long")]
    public void Many_layouts_leave_memory_and_handles_flat_and_the_first_ones_come_out_the_same_at_the_end()
    {
        int count = (int)Runs.Count(40);
        byte[][] first = [.. Enumerable.Range(0, AskedAgain).Select(Answer)];
        List<ProcessWeight> early = [];
        List<ProcessWeight> late = [];
        for (int number = AskedAgain; number < count; number++)
        {
            Answer(number);
            if (number % Math.Max(1, count / 40) == 0)
            {
                ProcessWeight now = ProcessWeight.OfThis();
                (number >= 3 * count / 4 ? late : number >= WarmedUp && number < Math.Max(2 * WarmedUp, count / 4) ? early : []).Add(now);
                TestContext.Current.TestOutputHelper!.WriteLine($"after {number + 1}: {now}");
            }
        }

        late.Add(ProcessWeight.OfThis());
        TestContext.Current.TestOutputHelper!.WriteLine($"after {count}: {late[^1]}");
        Assert.All(Enumerable.Range(0, AskedAgain), number => Assert.Equal(first[number], Answer(number)));

        // Live memory is what would be lost for good; the rest is what collector and solver keep at hand, which swings by 100 MB from one
        // look to the next: what stays is no more than the least that was seen.
        Assert.InRange(Median(late, w => w.LiveMb), 0, Median(early, w => w.LiveMb) + 2);
        Assert.InRange(late.Min(w => w.ResidentMb), 0, early.Min(w => w.ResidentMb) + 60);
        Assert.InRange(Median(late, w => w.Handles), 0, Median(early, w => w.Handles) + 8);
        Assert.InRange(Median(late, w => w.Threads), 0, Median(early, w => w.Threads) + 8);
    }

    private static double Median(List<ProcessWeight> looks, Func<ProcessWeight, double> of) =>
        looks.Select(of).Order().ElementAt(looks.Count / 2);

    // Few corners and two rows or three, so that ten thousand take minutes; one in twenty under rules that take longer.
    private static byte[] Answer(int number)
    {
        Random random = new(number);
        Outline drawn = RandomOutlines.Next(random, number % RandomOutlines.Kinds, 10);
        double scale = 2 + (6 * random.NextDouble());
        Outline part = Outline.From(drawn.Points.Select(p => p * scale)).Centred();
        double size = 2 * part.Points.Max(p => p.Length);
        double edge = random.Next(2) * 15;
        double width = (size * (1.05 + (1.5 * random.NextDouble()))) + (2 * edge);
        double gap = Math.Min(random.Next(3) * 2, OutlineWidth.Least(part, 0, Math.PI).Height);
        RowRule rows = number % 20 == 11 ? RowRule.Any : number % 20 == 17 ? RowRule.Alternate : RowRule.Same;
        double? warp = number % 40 == 5 ? 180 * random.NextDouble() : null;
        RollLayout layout = LayoutSearch.Run(
            Shapes.Request(part, width, gap, edge, rows, warp, oneWay: number % 40 == 8), null, TestContext.Current.CancellationToken);
        return LayoutWriter.Write(layout, YieldAccount.Of(layout));
    }
}
