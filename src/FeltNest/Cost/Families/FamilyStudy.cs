using FeltNest.Cost.Compare;
using FeltNest.Cost.Priced;
using FeltNest.Layout;

namespace FeltNest.Cost.Families;

/// <summary>Lays every ball of a family on every width, and chooses the widths to stock.</summary>
internal sealed class FamilyStudy
{
    // Balls that are laid side by side from tables of their own; a search uses all cores by itself.
    private const int ScannedTogether = 2;

    // Money of a year up to this many hundredths is exact in every step of the way.
    private const decimal MostHundredths = 9e15m;

    private readonly FamilyRequest question;
    private readonly LayoutFrontSource search;
    private readonly CancellationToken stop;

    private FamilyStudy(FamilyRequest question, LayoutFrontSource search, CancellationToken stop)
    {
        this.question = question;
        this.search = search;
        this.stop = stop;
    }

    /// <summary>Runs a study.</summary>
    /// <param name="question">Balls, widths and costs.</param>
    /// <param name="progress">Told the cheapest width of each ball as it is done; may be null.</param>
    /// <param name="stop">Ends the work: a table with gaps makes no plan.</param>
    /// <exception cref="InputException">A number out of range, no price of the felt, currencies without a rate, a price by the kilogram
    /// without a mass.</exception>
    /// <exception cref="NoAnswerException">A ball has a layout on no width.</exception>
    /// <exception cref="OperationCanceledException">Stopped before every ball was laid.</exception>
    public static FamilyAnswer Run(FamilyRequest question, IProgress<FamilyPair>? progress = null, CancellationToken stop = default) =>
        Run(question, progress, (request, end) => LayoutSearch.Front(request, LayFront.MostMoreFelt, end), stop);

    /// <summary>The same with what gives the layouts of a width.</summary>
    internal static FamilyAnswer Run(
        FamilyRequest question, IProgress<FamilyPair>? progress, LayoutFrontSource search, CancellationToken stop)
    {
        // What is wrong with money is said before any long work.
        foreach (FamilyWidth width in question.Widths)
        {
            string currency = (width.Offer?.Price ?? question.Costs.Felt)?.Currency
                ?? throw new InputException(null, "felt", "is missing: a bare width has the price of the felt of the costs file");
            _ = question.Costs.RateOf(currency);
        }

        return new FamilyStudy(question, search, stop).Run(progress);
    }

    private FamilyAnswer Run(IProgress<FamilyPair>? progress)
    {
        List<FamilyPair> pairs = [];
        List<(int Ball, int Width, string Reason)> unanswered = [];
        foreach (int[] some in Enumerable.Range(0, question.Balls.Count).Chunk(question.Scan ? ScannedTogether : 1))
        {
            Task<List<(int Width, FamilyPair? Pair, string? Reason)>>[] begun =
                [.. some.Select(ball => Task.Run(() => OnWidths(ball), CancellationToken.None))];
            foreach ((int ball, Task<List<(int Width, FamilyPair? Pair, string? Reason)>> task) in some.Zip(begun))
            {
                List<(int Width, FamilyPair? Pair, string? Reason)> done = task.GetAwaiter().GetResult();
                unanswered.AddRange(done.Where(d => d.Reason is not null).Select(d => (ball, d.Width, d.Reason!)));
                FamilyPair[] laid = [.. done.Select(d => d.Pair).OfType<FamilyPair>()];
                if (laid.Length == 0)
                {
                    throw new NoAnswerException($"{question.Balls[ball].Name} fits no width: {done[0].Reason}");
                }

                pairs.AddRange(laid);
                progress?.Report(laid.MinBy(pair => pair.PerYear)!);
            }
        }

        return new FamilyAnswer
        {
            Question = question,
            Pairs = pairs,
            Unanswered = unanswered,
            Plans = Plans(question, pairs),
        };
    }

    private List<(int Width, FamilyPair? Pair, string? Reason)> OnWidths(int number)
    {
        FamilyBall ball = question.Balls[number];
        RowPricing pricing = new(
            new CompareRequest(ball.Lay, [.. question.Widths.Select(width => width.CaseOf(ball))], question.Scan, question.Costs, null));
        WidthLays lays;
        try
        {
            lays = new WidthLays(ball.Lay with { RollWidthMm = question.Widths.Max(width => width.WidthMm) }, question.Scan, search);
        }
        catch (NoAnswerException none)
        {
            return [.. question.Widths.Select((_, i) => (i, (FamilyPair?)null, (string?)none.Message))];
        }

        return [.. question.Widths.Select((width, i) => On(number, i, width.CaseOf(ball), lays, pricing))];
    }

    private (int Width, FamilyPair? Pair, string? Reason) On(
        int ball, int width, CompareCase item, WidthLays lays, RowPricing pricing)
    {
        try
        {
            List<LayChoice> ways = pricing.Ways(item, lays.On(item.WidthMm, item.Trims, stop));
            stop.ThrowIfCancellationRequested();
            return (width, ways.Select(way => Pair(ball, width, way)).MinBy(pair => (pair.PerYear, pair.Way.SquareMetres)), null);
        }
        catch (NoAnswerException none)
        {
            return (width, null, none.Message);
        }
    }

    private FamilyPair Pair(int ball, int width, LayChoice way)
    {
        decimal thousands = (decimal)(question.Balls[ball].BallsPerYear / 1000);
        decimal running = way.Sheet!.WithoutDie;
        return new FamilyPair
        {
            Ball = ball,
            Width = width,
            Way = way,
            RunningPerThousandBalls = running,
            RunningPerYear = Math.Round(running * thousands, 2),
            Dies = way.Sheet.Die is { } die
                ? DieOutlay.Of(
                    die, way.Account.StrikesPerThousandBalls * (double)thousands, question.Costs.HorizonYears,
                    question.Costs.OverheadPercent ?? 0)
                : null,
        };
    }

    private static List<StockPlan> Plans(FamilyRequest question, List<FamilyPair> pairs)
    {
        Dictionary<(int Ball, int Width), FamilyPair> at = pairs.ToDictionary(pair => (pair.Ball, pair.Width));
        decimal keep = Math.Round(question.Costs.WidthPerYear ?? 0, 2);
        StockQuestion stock = Stock(question, at, keep);
        List<StockPlan> plans = [];
        foreach (int? most in Enumerable.Range(1, question.MostWidths).Select(n => (int?)n).Append(null))
        {
            if (StockModel.Solve(stock with { MostWidths = most }) is { } answer)
            {
                plans.Add(new StockPlan
                {
                    MostWidths = most,
                    Takes = [.. answer.WidthOf.Select((width, ball) => at[(ball, width)])],
                    Stock = keep * answer.WidthOf.Distinct().Count(),
                    Bound = answer.Bound / 100m,
                });
            }
        }

        return plans;
    }

    // The question of the model in whole hundredths.
    private static StockQuestion Stock(FamilyRequest question, Dictionary<(int Ball, int Width), FamilyPair> at, decimal keep)
    {
        decimal dearest = at.Values.GroupBy(pair => pair.Ball).Sum(own => own.Max(pair => pair.PerYear));
        if (100 * (dearest + (keep * question.Widths.Count)) > MostHundredths)
        {
            throw new InputException(
                null, "ballsPerYear", "and the costs make a year of more than 90000000000000: choose a greater unit of money");
        }

        return new StockQuestion
        {
            WidthCosts = [.. question.Widths.Select(_ => (long)(100 * keep))],
            BallCosts =
            [
                .. question.Balls.Select((_, ball) => (IReadOnlyList<long?>)[.. question.Widths.Select((_, width) =>
                    at.TryGetValue((ball, width), out FamilyPair? pair) ? (long)(100 * pair.PerYear) : (long?)null)]),
            ],
            MostWidths = null,
        };
    }
}
