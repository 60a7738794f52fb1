using CsCheck;
using FeltNest.Die.Bend;
using FeltNest.Die.Stock;
using Xunit;

namespace FeltNest.Tests.Die.Stock;

public sealed class StockCutterTests
{
    // Two rings of 385 go on a length of 1000, whatever the length of all would allow: 64 take 32, not 25.
    [Fact]
    public void Rings_of_one_kind_take_as_many_lengths_as_a_division_says()
    {
        RuleStock plan = StockCutter.Of([Strip(385, 64)], 1, 1000, 0.5)!;

        Assert.Equal(32, plan.Lengths);
        Assert.True(plan.Proved);
        Assert.Equal(1000 - (2 * 385.5), plan.Cuts[0].OffcutMm, 1e-9);
    }

    // With a loss of 10 at each cut two pieces of 495 just go on a length of 1000, and two of 496 do not: the last piece needs no cut.
    [Theory]
    [InlineData(495, 2)]
    [InlineData(496, 4)]
    public void A_cut_is_lost_between_pieces(double blank, int lengths) =>
        Assert.Equal(lengths, StockCutter.Of([Strip(blank, 4)], 1, 1000, 10)!.Lengths);

    // Every partition of a few pieces into lengths, tried out: no plan takes fewer than the one found.
    [Fact]
    public void No_partition_of_the_pieces_takes_fewer() =>
        Gen.Select(Gen.Double[100, 700], Gen.Int[1, 3]).Array[1, 3].Sample(
            kinds =>
            {
                RuleStrip[] strips = [.. kinds.Select(k => Strip(k.Item1, k.Item2))];
                RuleStock plan = StockCutter.Of(strips, 1, 1000, 3)!;
                Assert.True(plan.Proved);
                Assert.Equal(Fewest([.. strips.SelectMany(s => Enumerable.Repeat(s.BlankMm, s.Count))], [], 0), plan.Lengths);
                Assert.Equal(
                    strips.Select(s => s.Count),
                    strips.Select((_, i) => plan.Cuts.Sum(c => c.Times * c.Pieces.Where(p => p.Strip == i).Sum(p => p.Count))));
                Assert.All(plan.Cuts, c => Assert.True(c.Pieces.Sum(p => p.Count * (strips[p.Strip].BlankMm + 3)) <= 1003 + 1e-6));
            },
            iter: 20);

    [Fact]
    public void Without_a_length_of_stock_or_with_a_longer_piece_there_is_no_plan()
    {
        Assert.Null(StockCutter.Of([Strip(385, 64)], 1, null, 0));
        Assert.Null(StockCutter.Of([Strip(1001, 1)], 1, 1000, 0));
    }

    private static int Fewest(double[] pieces, List<double> used, int at)
    {
        if (at == pieces.Length)
        {
            return used.Count;
        }

        int best = int.MaxValue;
        for (int i = 0; i <= used.Count; i++)
        {
            List<double> next = [.. used];
            if (i == used.Count)
            {
                next.Add(0);
            }

            next[i] += pieces[at] + 3;
            best = next[i] <= 1003 + 1e-6 ? Math.Min(best, Fewest(pieces, next, at + 1)) : best;
        }

        return best;
    }

    private static RuleStrip Strip(double blank, int count) => new()
    {
        Part = 0,
        Number = 1,
        Count = count,
        MiddleMm = blank,
        BlankMm = blank,
        StartMitreDeg = null,
        EndMitreDeg = null,
        Bends = [],
        Notches = [],
    };
}
