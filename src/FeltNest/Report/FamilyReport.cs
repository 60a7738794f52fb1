using FeltNest.Cost.Compare;
using FeltNest.Cost.Families;
using static FeltNest.InvariantText;

namespace FeltNest.Report;

/// <summary>The tables a family prints, at most 80 columns wide.</summary>
internal static class FamilyReport
{
    // Plans with a column of their own, and widths and balls of the table of costs on the terminal: the files hold all.
    private const int MostPlans = 4;
    private const int MostWidths = 20;
    private const int BallsAcross = 6;

    /// <summary>The text, lines ending in a line feed.</summary>
    public static string Text(FamilyAnswer answer)
    {
        TextTable table = new();
        Plans(table, answer);
        Takes(table, answer);
        Dies(table, answer);
        Costs(table, answer);
        SideBySide(table, answer);
        Basis(table, answer);
        return table.ToString();
    }

    private static void Plans(TextTable table, FamilyAnswer answer)
    {
        FamilyRequest question = answer.Question;
        table.Heading($"{Counted(question.Balls.Count, "ball")} on {Counted(question.Widths.Count, "width")}: money a year, "
            + question.Costs.Currency);
        table.Row("widths allowed used   felt, work       dies     keeping          all       saves");
        foreach (StockPlan plan in answer.Plans)
        {
            string saves = answer.Saves(plan) is { } saved ? Invariant($"{saved,12:0.00}") : string.Empty;
            table.Row(Invariant(
                $"{plan.Allowed,-15}{plan.Widths.Count,4}{plan.Running,13:0.00}{plan.Dies,11:0.00}{plan.Stock,12:0.00}{plan.Total,13:0.00}"
                    + $"{saves}"));
        }

        for (int most = 1; most <= question.MostWidths && answer.Plans.All(plan => plan.MostWidths != most); most++)
        {
            table.Note($"On {Counted(most, "width")} not every ball can be cut.");
        }

        foreach (StockPlan plan in answer.Plans.Where(plan => !plan.IsProved))
        {
            decimal gap = 100 * (plan.Total - plan.Bound) / plan.Total;
            table.Note(Invariant($"{plan.Allowed}: not proved; none can cost less than {plan.Bound:0.00}, {gap:0.###} % below."));
        }

        if (answer.Plans.All(plan => plan.IsProved))
        {
            table.Note("Proved for each: no other choice of so many widths costs less, to the cent.");
        }
    }

    private static void Takes(TextTable table, FamilyAnswer answer)
    {
        StockPlan[] shown = [.. answer.Plans.Take(MostPlans - 1), .. answer.Plans.Skip(MostPlans - 1).TakeLast(1)];
        table.Heading("Which ball on which width");
        table.Row(($"{"ball",-16}" + string.Concat(shown.Select(plan => $"{plan.Allowed,-16}"))).TrimEnd());
        for (int ball = 0; ball < answer.Question.Balls.Count; ball++)
        {
            string widths = string.Concat(
                shown.Select(plan => $"{Short(answer.Question.Widths[plan.Takes[ball].Width].Name, 15),-16}"));
            table.Row($"{Short(answer.Question.Balls[ball].Name, 15),-16}{widths}".TrimEnd());
        }
    }

    private static void Dies(TextTable table, FamilyAnswer answer)
    {
        StockPlan best = answer.Best;
        if (best.Takes[0].Dies is null)
        {
            return;
        }

        table.Heading(Invariant($"Dies to own for {best.Allowed}, in {answer.Question.Costs.HorizonYears:0.##} years"));
        table.Row("ball            width            rows cavities  dies  new rules   money a year");
        foreach (FamilyPair pair in best.Takes)
        {
            table.Row(Invariant(
                $"{Short(answer.Question.Balls[pair.Ball].Name, 15),-16}{Short(answer.Question.Widths[pair.Width].Name, 15),-16}"
                    + $"{Rows(pair.Way),5}{pair.Way.Account.Cavities,9:0.##}{pair.Dies!.Dies,6}{pair.Dies.ReRules,11}"
                    + $"{pair.Dies.PerYear,15:0.00}"));
        }
    }

    // Blocks of some balls beside each other, a line a width.
    private static void Costs(TextTable table, FamilyAnswer answer)
    {
        FamilyRequest question = answer.Question;
        Dictionary<(int Ball, int Width), FamilyPair> pairs = answer.Pairs.ToDictionary(pair => (pair.Ball, pair.Width));
        int[] widths =
        [
            .. Enumerable.Range(0, question.Widths.Count)
                .OrderBy(width => answer.Best.Widths.Contains(width) ? 0 : 1)
                .ThenByDescending(width => answer.Pairs.Count(pair => pair.Width == width))
                .ThenBy(width => answer.Pairs.Where(pair => pair.Width == width).Sum(pair => pair.PerYear))
                .Take(MostWidths)
                .Order(),
        ];
        table.Heading("Every ball on every width: money a year, without keeping the width");
        foreach (int[] balls in Enumerable.Range(0, question.Balls.Count).Chunk(BallsAcross))
        {
            table.Row($"{"width",-14}" + string.Concat(balls.Select(ball => $"{Short(question.Balls[ball].Name, 10),11}")));
            foreach (int width in widths)
            {
                table.Row($"{Short(question.Widths[width].Name, 14),-14}" + string.Concat(balls.Select(ball =>
                    pairs.TryGetValue((ball, width), out FamilyPair? pair) ? Invariant($"{pair.PerYear,11:0}") : $"{"none",11}")));
            }
        }

        if (widths.Length < question.Widths.Count)
        {
            table.Note($"{widths.Length} of {question.Widths.Count} widths: those stocked, then the cheapest for all; the files hold all.");
        }

        foreach (IGrouping<int, (int Ball, int Width, string Reason)> none in answer.Unanswered.GroupBy(item => item.Ball))
        {
            table.Note($"{question.Balls[none.Key].Name} has no layout on {Counted(none.Count(), "width")}: {none.First().Reason}.");
        }
    }

    private static void SideBySide(TextTable table, FamilyAnswer answer)
    {
        if (answer.Differences.Count == 0)
        {
            return;
        }

        (string first, string second) = (Short(answer.Question.Balls[0].Name, 24), Short(answer.Question.Balls[1].Name, 24));
        table.Heading($"{second} against {first}, thousand good balls");
        table.Row("                         felt, m2              strikes        money but for die");
        table.Row("width         first  second    more  first second   more   first  second    more");
        foreach ((FamilyPair one, FamilyPair other) in answer.Differences.Take(MostWidths))
        {
            (double felt, double strikes) = (one.Way.SquareMetres, one.Way.Account.StrikesPerThousandBalls);
            (double otherFelt, double otherStrikes) = (other.Way.SquareMetres, other.Way.Account.StrikesPerThousandBalls);
            table.Row(Invariant(
                $"{Short(answer.Question.Widths[one.Width].Name, 10),-11}{felt,8:0.00}{otherFelt,8:0.00}{otherFelt - felt,8:+0.00;-0.00}"
                    + $"{strikes,7:0.0}{otherStrikes,7:0.0}{otherStrikes - strikes,7:+0.0;-0.0}"
                    + $"{one.RunningPerThousandBalls,8:0.00}{other.RunningPerThousandBalls,8:0.00}"
                    + $"{other.RunningPerThousandBalls - one.RunningPerThousandBalls,8:+0.00;-0.00}"));
        }
    }

    private static void Basis(TextTable table, FamilyAnswer answer)
    {
        FamilyRequest question = answer.Question;
        table.Heading("How it is counted");
        table.Note(question.Scan
            ? "Parallel rows, a die designed anew for each ball and width; a list of widths is searched by all ways."
            : "Every ball on every width searched by all ways, a die designed anew for each.");
        table.Note(Invariant(
            $"Dies and rules are bought whole, for the strikes of {question.Costs.HorizonYears:0.##} years, and shared over those years."));
        table.Note(
            "Each ball is cut on one width with a die of its own: felt is never short, so a second one would only cost more.");
        table.Note("Felt at the first price of an offer: tiers, least lengths and what is left over of a roll hang on all balls together.");
        if (question.Costs.WidthPerYear is null)
        {
            table.Note("Keeping a width costs nothing here: widthYearCost of the costs file says what it costs a year.");
        }

        if (answer.Pairs[0].Way.Sheet!.NotCounted is { Count: > 0 } missing)
        {
            table.Note($"Not in the money, as no figure was given: {string.Join(", ", missing)}.");
        }
    }

    private static int Rows(LayChoice way) =>
        way.Layout.Bands.Sum(band => band.Repeat.Panels.Select(panel => Math.Round(panel.YMm, 6)).Distinct().Count());

    private static string Counted(int count, string thing) => count == 1 ? $"1 {thing}" : $"{count} {thing}s";

    private static string Short(string text, int most) => text.Length <= most ? text : text[..(most - 2)] + "..";
}
