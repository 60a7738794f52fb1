using FeltNest.Ball;
using FeltNest.Files.Json;
using FeltNest.Panel.Budget;
using static FeltNest.Files.Panels.GapBudgetDocument;

namespace FeltNest.Files.Panels;

/// <summary>Writes a budget of the seam gap (schema feltnest/gap-budget/1) and its stations as a list.</summary>
internal static class GapBudgetWriter
{
    /// <summary>The file's bytes.</summary>
    public static byte[] Json(BallSpec ball, GapBudget budget)
    {
        using JsonOutput json = new(GapBudgetDocument.Document);
        json.Text(GapBudgetDocument.Ball, ball.Name)
            .Text(GapBudgetDocument.ReadAs, EnumWord.Of(budget.ReadAs))
            .Number(GapBudgetDocument.Balls, budget.Balls)
            .ObjectOrNull(GapBudgetDocument.Adhesive, budget.Adhesive, (item, range) => item
                .Number(AdhesiveFields.LeastMm, range.LeastMm)
                .Number(AdhesiveFields.MostMm, range.MostMm))
            .Objects(GapBudgetDocument.Sources, budget.Sources, (item, source) => item
                .Text(SourceFields.Field, source.Field)
                .Text(SourceFields.Words, source.Words)
                .Text(SourceFields.Unit, source.Unit.Length == 0 ? null : source.Unit)
                .Number(SourceFields.PlusMinus, source.PlusMinus))
            .Texts(GapBudgetDocument.NotInBudget, budget.NotStated)
            .Object(GapBudgetDocument.AtFitting, item => State(item, budget, budget.AtFitting))
            .ObjectOrNull(
                GapBudgetDocument.AfterCure, budget.Shrinks ? budget.AfterCure : null, (item, state) => State(item, budget, state));
        return json.Finish();
    }

    /// <summary>The stations as CSV.</summary>
    public static byte[] Csv(GapBudget budget)
    {
        (string, GapState)[] states = budget.Shrinks
            ? [("at fitting", budget.AtFitting), ("after cure", budget.AfterCure)]
            : [("at fitting", budget.AtFitting)];
        return GapBudgetListing.Columns.Csv(
            from state in states
            from station in state.Item2.Stations
            select new GapBudgetListing.Line(state.Item1, station));
    }

    private static void State(JsonOutput json, GapBudget budget, GapState state) => json
        .Texts(StateFields.Verdict, GapWords.Of(budget, state))
        .Number(StateFields.NominalLeastMm, state.NominalLeastMm)
        .Number(StateFields.NominalMostMm, state.NominalMostMm)
        .Number(StateFields.WorstLeastMm, state.WorstLeastMm)
        .Number(StateFields.WorstMostMm, state.WorstMostMm)
        .Number(StateFields.SolvedLeastMm, state.SolvedLeastMm)
        .Number(StateFields.SolvedMostMm, state.SolvedMostMm)
        .Number(StateFields.RootLeastMm, state.RootLeastMm)
        .Number(StateFields.RootMostMm, state.RootMostMm)
        .Number(StateFields.BallsWithinPercent, state.BallsWithinPercent)
        .Number(StateFields.SeamWithinPercent, state.SeamWithinPercent)
        .Object(StateFields.Least, item => Spread(item, state.Least))
        .Object(StateFields.Most, item => Spread(item, state.Most))
        .Objects(StateFields.Shares, state.Shares, (item, share) => item
            .Number(ShareFields.Rank, share.Rank)
            .Text(ShareFields.Field, budget.Sources[share.Source].Field)
            .Number(ShareFields.GreatestMm, share.GreatestMm)
            .Number(ShareFields.BendMm, share.BendMm)
            .Number(ShareFields.VariancePercent, share.VariancePercent)
            .Number(ShareFields.GainPercent, share.GainPercent)
            .Number(ShareFields.GainErrorPercent, share.GainErrorPercent))
        .Rows(
            StateFields.Stations, state.Stations,
            s => [s.S, s.AlongMm, s.LengthMm, s.GapMm, s.WorstLeastMm, s.WorstMostMm, s.RootSumSquareMm])
        .Rows(
            StateFields.Within, state.Stations.Select((s, place) => (s.WithinPercent, place)).Where(s => s.WithinPercent is not null),
            s => [s.place, s.WithinPercent!.Value])
        .Objects(StateFields.Effects, state.Effects, (item, effect) => item
            .Text(EffectFields.Field, budget.Sources[effect.Source].Field)
            .Text(EffectFields.Panels, effect.Panels)
            .Rows(EffectFields.Ends, effect.AtMinus.Zip(effect.AtPlus), ends => [ends.First, ends.Second]));

    private static void Spread(JsonOutput json, GapSpread spread) => json
        .Number(SpreadOfBalls.MeanMm, spread.MeanMm)
        .Number(SpreadOfBalls.DeviationMm, spread.DeviationMm)
        .Number(SpreadOfBalls.Low1Mm, spread.Low1Mm)
        .Number(SpreadOfBalls.Low5Mm, spread.Low5Mm)
        .Number(SpreadOfBalls.MiddleMm, spread.MiddleMm)
        .Number(SpreadOfBalls.High5Mm, spread.High5Mm)
        .Number(SpreadOfBalls.High1Mm, spread.High1Mm);
}
