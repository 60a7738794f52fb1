using FeltNest.Files.Layouts;
using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Tests.Geometry;
using FeltNest.Tests.Layout;
using FeltNest.Yield;
using Xunit;

namespace FeltNest.Tests.Endurance;

/// <summary>Layout after layout in one process: 100 in the suite, 10,000 with the factor 100. Nothing piles up and nothing drifts.</summary>
[Collection(AloneInProcess.Name)]
public sealed class ManyLayoutsTests
{
    private const int AskedAgain = 21;

    [Fact]
    public void Many_layouts_leave_memory_and_handles_flat_and_the_first_ones_come_out_the_same_at_the_end()
    {
        int count = (int)Runs.Count(100);
        byte[][] first = [.. Enumerable.Range(0, AskedAgain).Select(Answer)];
        ProcessWeight early = default;
        for (int number = AskedAgain; number < count; number++)
        {
            Answer(number);
            if (number == Math.Max(AskedAgain, count / 4))
            {
                early = ProcessWeight.OfThis();
                TestContext.Current.TestOutputHelper!.WriteLine($"after {number + 1}: {early}");
            }
        }

        ProcessWeight late = ProcessWeight.OfThis();
        TestContext.Current.TestOutputHelper!.WriteLine($"after {count}: {late}");
        Assert.All(Enumerable.Range(0, AskedAgain), number => Assert.Equal(first[number], Answer(number)));

        // Live memory is what would be lost for good; the rest is what collector and solver keep at hand.
        Assert.InRange(late.LiveMb, 0, early.LiveMb + 2);
        Assert.InRange(late.ResidentMb, 0, early.ResidentMb + 60);
        Assert.InRange(late.Handles, 0, early.Handles + 8);
        Assert.InRange(late.Threads, 0, early.Threads + 8);
    }

    // Few corners and two rows or three, so that ten thousand take minutes; every width, gap, edge and rule.
    private static byte[] Answer(int number)
    {
        Random random = new(number);
        Outline drawn = RandomOutlines.Next(random, number % RandomOutlines.Kinds, 10);
        double scale = 2 + (6 * random.NextDouble());
        Outline part = Outline.From(drawn.Points.Select(p => p * scale)).Centred();
        double size = 2 * part.Points.Max(p => p.Length), edge = random.Next(2) * 15, width = (size * (1.05 + (1.5 * random.NextDouble()))) + (2 * edge);
        double gap = Math.Min(random.Next(3) * 2, OutlineWidth.Least(part, 0, Math.PI).Height);
        RowRule rows = random.Next(4) switch { 0 => RowRule.Any, 1 => RowRule.Alternate, _ => RowRule.Same };
        double? warp = random.Next(4) == 0 ? 90 * random.Next(2) : null;
        RollLayout layout = LayoutSearch.Run(Shapes.Request(part, width, gap, edge, rows, warp, oneWay: random.Next(4) == 0), null, TestContext.Current.CancellationToken);
        return LayoutWriter.Write(layout, YieldAccount.Of(layout));
    }
}
