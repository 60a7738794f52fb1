using FeltNest.Cost.Families;
using FeltNest.Files.Json;
using FeltNest.Files.Studies;
using static FeltNest.Files.Families.FamilyDocument;

namespace FeltNest.Files.Families;

/// <summary>Writes the widths to stock for a family as JSON (schema feltnest/family/1).</summary>
internal static class FamilyWriter
{
    // Digits of an amount for a thousand balls.
    private const int Digits = 6;

    /// <summary>The file's bytes.</summary>
    public static byte[] Json(FamilyAnswer answer)
    {
        FamilyRequest question = answer.Question;
        using JsonOutput json = new(FamilyDocument.Document);
        return json
            .Text(FamilyDocument.Costs, question.Costs.Name)
            .Text(Currency, question.Costs.Currency)
            .Text(Method, question.Scan ? "parallel rows from one set of tables" : "searched by all ways")
            .Number(HorizonYears, question.Costs.HorizonYears)
            .Number(WidthYearCost, (double?)question.Costs.WidthPerYear)
            .Number(OverheadPercent, (double)(question.Costs.OverheadPercent ?? 0))
            .ObjectOrNull(FamilyDocument.Die, question.Costs.Die, (item, die) => item
                .Number(DieFields.LifeStrikes, die.LifeStrikes)
                .Number(DieFields.ReRules, die.ReRules)
                .Number(DieFields.ReRulePrice, (double)die.ReRulePrice))
            .Objects(FamilyDocument.Balls, question.Balls, (item, ball) => item
                .Text(BallFields.Name, ball.Name)
                .Text(BallFields.Part, ball.Lay.Part.Name)
                .Number(BallFields.BallsPerYear, ball.BallsPerYear)
                .Number(BallFields.EdgeMm, ball.Lay.Trims.LowerMm)
                .Number(BallFields.UpperEdgeMm, ball.Lay.Trims.UpperMm)
                .Object(BallFields.Lay, fields => StudyJson.Rules(fields, ball.Lay)))
            .Objects(Widths, question.Widths, (item, width) => item
                .Text(WidthFields.Name, width.Name)
                .Number(WidthFields.WidthMm, width.WidthMm)
                .Text(WidthFields.Felt, width.Offer?.Felt))
            .Objects(Pairs, answer.Pairs, (item, pair) => Write(item, question, pair))
            .Objects(Unanswered, answer.Unanswered, (item, none) => item
                .Text(UnansweredFields.Ball, question.Balls[none.Ball].Name)
                .Text(UnansweredFields.Width, question.Widths[none.Width].Name)
                .Text(UnansweredFields.Reason, none.Reason))
            .Objects(Plans, answer.Plans, (item, plan) => Write(item, answer, plan))
            .Objects(Differences, answer.Differences, (item, two) => Write(item, question, two.First, two.Second))
            .Finish();
    }

    private static void Write(JsonOutput item, FamilyRequest question, FamilyPair pair) => item
        .Text(PairFields.Ball, question.Balls[pair.Ball].Name)
        .Text(PairFields.Width, question.Widths[pair.Width].Name)
        .Number(PairFields.PanelsPerMetre, pair.Way.Layout.PanelsPerMetre)
        .Number(PairFields.SquareMetresPerThousandBalls, pair.Way.SquareMetres)
        .Number(PairFields.StrikesPerThousandBalls, pair.Way.Account.StrikesPerThousandBalls)
        .Number(PairFields.Cavities, pair.Way.Account.Cavities)
        .Number(PairFields.RunningPerThousandBalls, Amount(pair.RunningPerThousandBalls))
        .Number(PairFields.RunningPerYear, (double)pair.RunningPerYear)
        .Number(PairFields.Dies, pair.Dies?.Dies)
        .Number(PairFields.ReRules, pair.Dies?.ReRules)
        .Number(PairFields.DiePrice, (double?)pair.Dies?.DiePrice)
        .Number(PairFields.DiesPerYear, (double)(pair.Dies?.PerYear ?? 0))
        .Number(PairFields.CostPerYear, (double)pair.PerYear);

    private static void Write(JsonOutput item, FamilyAnswer answer, StockPlan plan) => item
        .Number(PlanFields.MostWidths, plan.MostWidths)
        .Number(PlanFields.Widths, plan.Widths.Count)
        .Number(PlanFields.Running, (double)plan.Running)
        .Number(PlanFields.Dies, (double)plan.Dies)
        .Number(PlanFields.Stock, (double)plan.Stock)
        .Number(PlanFields.CostPerYear, (double)plan.Total)
        .Number(PlanFields.Bound, (double)plan.Bound)
        .Flag(PlanFields.Proved, plan.IsProved)
        .Number(PlanFields.Saves, (double?)answer.Saves(plan))
        .Objects(PlanFields.Takes, plan.Takes, (inner, pair) => inner
            .Text(TakeFields.Ball, answer.Question.Balls[pair.Ball].Name)
            .Text(TakeFields.Width, answer.Question.Widths[pair.Width].Name)
            .Number(TakeFields.CostPerYear, (double)pair.PerYear));

    private static void Write(JsonOutput item, FamilyRequest question, FamilyPair first, FamilyPair second) => item
        .Text(DifferenceFields.Width, question.Widths[first.Width].Name)
        .Number(DifferenceFields.SquareMetresPerThousandBalls, second.Way.SquareMetres - first.Way.SquareMetres)
        .Number(
            DifferenceFields.StrikesPerThousandBalls,
            second.Way.Account.StrikesPerThousandBalls - first.Way.Account.StrikesPerThousandBalls)
        .Number(DifferenceFields.RunningPerThousandBalls, Amount(second.RunningPerThousandBalls) - Amount(first.RunningPerThousandBalls));

    private static double Amount(decimal money) => (double)Math.Round(money, Digits);
}
