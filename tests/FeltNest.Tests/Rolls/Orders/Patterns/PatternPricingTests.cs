using CsCheck;
using FeltNest.Rolls.Orders;
using FeltNest.Rolls.Orders.Patterns;
using Xunit;

namespace FeltNest.Tests.Rolls.Orders.Patterns;

public sealed class PatternPricingTests
{
    [Fact]
    public void No_pattern_is_worth_more_than_the_one_that_is_found() =>
        Gen.Int[0, 1_000_000].Sample(
            seed =>
            {
                Random random = new(seed);
                OrderRequest question = Question(random);
                FeltKind kind = Assert.Single(new FeltKinds(question).All);
                PatternValues values = new()
                {
                    Strike = [.. kind.Dies.Select(_ => random.NextDouble())],
                    Piece = [.. kind.Dies.Select(_ => 0.3 * random.NextDouble())],
                };
                PatternPricing pricing = new(question, [kind], 1);
                (RollPattern? pattern, double reduced) = pricing.Best(values, [0.0])[0];
                double best = EveryPattern(question, kind, values, pricing, 0);
                double loose = EveryPattern(question, kind, values, pricing, pricing.StepM);

                // The bound may only be safe: never above what some pattern reaches, and not below what patterns reach that are too long by
                // the steps that rounding may lose, a step for each strike and piece; what those steps cost by the metre is under a fifth.
                Assert.True(reduced <= best + 1e-9, $"seed {seed}: {reduced}, a pattern reaches {best}");
                Assert.True(reduced >= loose - 0.2, $"seed {seed}: {reduced} for {loose}");
                Assert.True(pattern is null || pattern.CutM <= kind.ClearM + 1e-9, $"seed {seed}: {pattern?.CutM} of {kind.ClearM}");
            },
            iter: Runs.Count(60), threads: 1);

    private static double Reduced(RollPattern pattern, PatternValues values) =>
        pattern.Cost - pattern.Strikes.Select((n, i) => n * values.Strike[i]).Sum() - pattern.Pieces
            .Select((n, i) => n * values.Piece[i])
            .Sum();

    private static double EveryPattern(OrderRequest question, FeltKind kind, PatternValues values, PatternPricing pricing, double lost)
    {
        double best = 0;
        int count = kind.Dies.Count;
        int[] strikes = new int[count];
        int[] pieces = new int[count];
        Try(0);
        return best;

        void Try(int at)
        {
            if (at == count)
            {
                RollPattern pattern = pricing.Made(kind, [.. strikes], [.. pieces]);
                double room = kind.ClearM + 1e-12 + (lost * (1 + strikes.Sum() + pieces.Sum()));
                if (pattern.CutM <= room)
                {
                    best = Math.Min(best, Reduced(pattern, values));
                }

                return;
            }

            int least = question.LeastStrikes(question.Orders[at], kind.Roll, question.Dies[kind.Dies[at].Die]);
            for (pieces[at] = 0; pieces[at] <= 16; pieces[at]++)
            {
                for (strikes[at] = pieces[at] * least; strikes[at] <= (pieces[at] == 0 ? 0 : 16); strikes[at]++)
                {
                    Try(at + 1);
                }
            }

            (strikes[at], pieces[at]) = (0, 0);
        }
    }

    private static OrderRequest Question(Random random)
    {
        CutDie[] dies =
        [
            .. Enumerable.Range(0, 2)
                .Select(i => OrderCases.Die($"D{i}", $"b{i}", 8, 120 + random.Next(150), 150 + random.Next(250), random.Next(5))),
        ];
        return new OrderRequest
        {
            Orders = [OrderCases.Order("a", "b0", 5000), OrderCases.Order("b", "b1", 5000)],
            Rolls = [OrderCases.Roll("R", 0.8 + random.NextDouble(), 1 + random.Next(4))],
            Offers = [],
            Dies = dies,
            Presses = [OrderCases.FreePress],
            Rules = OrderCases.Bare with
            {
                EndLossMm = 50 * random.Next(2),
                RemnantValuePercent = 50 * random.Next(3),
                LeastRemnantM = 0.2 * random.Next(3),
                LeastCutM = 0.3 * random.Next(3),
            },
        };
    }
}
