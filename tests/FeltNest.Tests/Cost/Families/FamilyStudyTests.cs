using FeltNest.Cost.Families;
using FeltNest.Cost.Offers;
using FeltNest.Cost.Sheet;
using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Layout.Limits;
using FeltNest.Tests.Layout;
using Xunit;

namespace FeltNest.Tests.Cost.Families;

/// <summary>Squares laid edge to edge: every figure of a family by plain arithmetic.</summary>
public sealed class FamilyStudyTests
{
    private static readonly CostInputs Costs =
        CostInputs.Bare("XTS") with { Felt = new FeltPrice(10, PriceUnit.SquareMetre, "XTS"), WidthPerYear = 1500 };

    // A square of 50 mm: two rows on 100 mm, 5 m2 a thousand balls; one row on 90 mm, 100 m of 90 mm, so 9 m2. A square of 30 mm: three
    // rows on both, 20 m a thousand balls, so 2 m2 and 1.8 m2.
    private static readonly FamilyBall Large = Ball("large", 50, 100_000);
    private static readonly FamilyBall Small = Ball("small", 30, 1_000_000);

    [Fact]
    public void Every_ball_on_every_width_costs_its_felt_for_a_year()
    {
        FamilyAnswer answer = Run(Costs, 2, Large, Small);

        Assert.Equal([5000m, 9000m, 20_000m, 18_000m], answer.Pairs.Select(pair => pair.PerYear));
        Assert.Equal([5, 9, 2, 1.8], answer.Pairs.Select(pair => Math.Round(pair.Way.SquareMetres, 9)));
    }

    [Theory]
    [InlineData(1500, 26_500, 26_000, 2)]
    [InlineData(2500, 27_500, 27_500, 1)]
    [InlineData(0, 25_000, 23_000, 2)]
    public void A_second_width_is_stocked_where_it_saves_more_than_its_keeping(int keep, int one, int two, int stocked)
    {
        FamilyAnswer answer = Run(Costs with { WidthPerYear = keep }, 2, Large, Small);

        Assert.Equal([1, 2, null], answer.Plans.Select(plan => plan.MostWidths));
        Assert.Equal([one, two, two], answer.Plans.Select(plan => plan.Total));
        Assert.Equal([null, one - two, 0], answer.Plans.Select(answer.Saves));
        Assert.Equal(stocked, answer.Best.Widths.Count);
        Assert.All(answer.Plans, plan => Assert.True(plan.IsProved));
    }

    [Fact]
    public void A_width_on_which_a_ball_does_not_fit_is_none_of_its_own()
    {
        FamilyBall wide = Ball("wide", 95, 1000);
        FamilyAnswer answer = Run(Costs, 2, wide, Small);

        Assert.Equal((0, 1), answer.Unanswered.Select(none => (none.Ball, none.Width)).Single());
        Assert.Equal(3, answer.Pairs.Count);
        Assert.Equal(0, answer.Plans[0].Widths.Single());
    }

    [Fact]
    public void Where_no_single_width_takes_all_there_is_no_plan_of_one()
    {
        // Each of the two fits one width alone.
        static bool Fits(LayoutRequest request) => request.RollWidthMm > 95 == SideOf(request) > 40;
        FamilyAnswer answer = FamilyStudy.Run(
            Question(Costs, 2, Large, Small), null,
            (request, _) => Fits(request) ? Rows(request) : throw new NoAnswerException("no"), TestContext.Current.CancellationToken);

        Assert.Equal([2, null], answer.Plans.Select(plan => plan.MostWidths));
        Assert.Equal(26_000, answer.Best.Total);
    }

    [Fact]
    public void A_ball_that_fits_no_width_is_named()
    {
        NoAnswerException none = Assert.Throws<NoAnswerException>(() => Run(Costs, 1, Ball("giant", 120, 1000)));

        Assert.StartsWith("giant fits no width", none.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Dies_and_rules_are_bought_whole()
    {
        DieCost die = new() { Price = 1000, LifeStrikes = 10_000, ReRules = 1, ReRulePrice = 300 };

        // 24,000 strikes in two years take three rules: a die, its new rule and a second die. Overhead of 10 % on 2,300 in two years.
        DieOutlay outlay = DieOutlay.Of(die, 12_000, 2, 10);
        Assert.Equal((2, 1, 1265m), (outlay.Dies, outlay.ReRules, outlay.PerYear));

        // To the last strike of a rule it is not yet another one.
        Assert.Equal((1, 1), (DieOutlay.Of(die, 10_000, 2, 0).Dies, DieOutlay.Of(die, 10_000, 2, 0).ReRules));
        Assert.Equal((1, 0), (DieOutlay.Of(die, 1, 2, 0).Dies, DieOutlay.Of(die, 1, 2, 0).ReRules));
    }

    [Fact]
    public void A_ball_of_few_strikes_pays_a_whole_die_and_moves_to_where_it_needs_one()
    {
        // Two squares a strike: 1,000 strikes a thousand balls. A thousand balls a year wear a hundredth of a die in a year; a whole one
        // over five years is 400 a year on either width.
        CostInputs costs = Costs with
        {
            Losses = Costs.Losses with { MostPanelsPerStrike = 2 },
            PerStrike = 0,
            Die = new DieCost { Price = 2000, LifeStrikes = 100_000, ReRules = 0, ReRulePrice = 0 },
        };
        FamilyAnswer answer = Run(costs, 1, Ball("few", 50, 1000));

        Assert.Equal([450m, 490m], answer.Pairs.Select(pair => pair.PerYear));
        Assert.All(answer.Pairs, pair => Assert.Equal(1, pair.Dies!.Dies));
        Assert.Equal(1950, answer.Best.Total);
    }

    [Fact]
    public void Of_two_designs_the_difference_stands_at_every_width()
    {
        FamilyAnswer answer = Run(Costs, 1, Large, Small with { BallsPerYear = Large.BallsPerYear });

        Assert.Equal(
            [(0, -30m), (1, -72m)],
            answer.Differences.Select(two =>
                (two.First.Width, two.Second.RunningPerThousandBalls - two.First.RunningPerThousandBalls)));
        Assert.Empty(Run(Costs, 1, Large).Differences);
    }

    [Fact]
    public void A_scan_of_a_family_lays_each_ball_as_a_comparison_of_its_own_does()
    {
        LayoutRequest bone = Shapes.Request(Shapes.DogBone(2.3, 0.7, 24, 25), 0, gap: 3, edge: 10);
        FamilyBall[] balls = [.. new[] { 3.0, 4 }.Select(gap => Large with { Name = $"{gap}", Lay = bone with { GapMm = gap } })];
        FamilyRequest question = Question(Costs, 1, balls) with { Scan = true, Widths = [FamilyWidth.Of(300), FamilyWidth.Of(340)] };
        FamilyAnswer answer = FamilyStudy.Run(question, stop: TestContext.Current.CancellationToken);

        foreach (FamilyBall ball in balls)
        {
            FeltNest.Cost.Compare.Comparison alone = FeltNest.Cost.Compare.CompareStudy.Run(
                new(ball.Lay, [.. question.Widths.Select(width => width.CaseOf(ball))], true, Costs, null),
                stop: TestContext.Current.CancellationToken);
            Assert.Equal(
                alone.Rows.Select(row => row.Account.PerThousandBalls.SquareMetres),
                answer.Pairs.Where(pair => question.Balls[pair.Ball] == ball).Select(pair => pair.Way.SquareMetres),
                (one, other) => Math.Abs(one - other) < 1e-3 * one);
        }
    }

    [Fact]
    public void A_year_too_dear_to_be_counted_in_cents_is_refused()
    {
        InputException fault = Assert.Throws<InputException>(
            () => Run(Costs with { Felt = new FeltPrice(1_000_000, PriceUnit.SquareMetre, "XTS") }, 1, Large with { BallsPerYear = 1e11 }));

        Assert.Contains("ballsPerYear", fault.Message, StringComparison.Ordinal);
    }

    private static FamilyBall Ball(string name, double side, double ballsPerYear)
    {
        double half = side / 2;
        return new FamilyBall
        {
            Name = name,
            BallsPerYear = ballsPerYear,
            Lay = Shapes.Request(Outline.From([new(-half, -half), new(half, -half), new(half, half), new(-half, half)]), 0) with
            {
                Rules = new LayoutRules(0, 0, RowRule.Same, false),
            },
        };
    }

    private static FamilyRequest Question(CostInputs costs, int most, params FamilyBall[] balls) => new()
    {
        Balls = balls,
        Widths = [FamilyWidth.Of(100), FamilyWidth.Of(90)],
        Scan = false,
        Costs = costs,
        MostWidths = most,
    };

    private static FamilyAnswer Run(CostInputs costs, int most, params FamilyBall[] balls) => FamilyStudy.Run(
        Question(costs, most, balls), null, (request, _) => Rows(request), TestContext.Current.CancellationToken);

    private static double SideOf(LayoutRequest request) => request.Part.Outline.MaxX - request.Part.Outline.MinX;

    // As many rows as fit, edge to edge.
    private static IReadOnlyList<RollLayout> Rows(LayoutRequest request)
    {
        double side = SideOf(request);
        int rows = (int)(request.RollWidthMm / side);
        return rows == 0 ? throw new NoAnswerException("wider than the roll") :
        [
            new RollLayout
            {
                Parts = [request.Part],
                RollWidthMm = request.RollWidthMm,
                Trims = EdgeTrims.Both(0),
                GapMm = 0,
                Rules = request.Rules,
                Bands =
                [
                    new LayoutBand
                    {
                        YFromMm = 0,
                        YToMm = request.RollWidthMm,
                        Repeat = new LayoutRepeat(side, [.. Enumerable.Range(0, rows).Select(i => Placed(side, i))]),
                    },
                ],
                Search = Shapes.ByHand(leastGapMm: 0),
            },
        ];
    }

    private static PlacedPanel Placed(double side, int row) =>
        new() { Part = 0, XMm = side / 2, YMm = (row + 0.5) * side, AngleDeg = 0 };
}
