using FeltNest.Die.Proof;
using FeltNest.Files.Json;
using FeltNest.Geometry;
using static FeltNest.Files.Dies.DieLifeDocument;
using static FeltNest.Files.Dies.FirstArticleDocument;

namespace FeltNest.Files.Dies;

/// <summary>Writes what was found of a measured panel (schema feltnest/first-article/1) and of a die's life (schema
/// feltnest/die-life/1).</summary>
internal static class MeasuredWriter
{
    /// <summary>The first article's bytes.</summary>
    public static byte[] FirstArticle(string name, MeasuredPanel panel)
    {
        using JsonOutput json = new(FirstArticleDocument.Document);
        return json.Text(FirstArticleDocument.Name, name)
            .Flag(FirstArticleDocument.Passed, panel.Verdict == Conformity.Conforms)
            .Text(FirstArticleDocument.Verdict, EnumWord.Of(panel.Verdict))
            .Number(FirstArticleDocument.PanelProfileMm, panel.Rule.ToleranceMm)
            .Number(FirstArticleDocument.ZoneMm, panel.ZoneMm)
            .Number(FirstArticleDocument.WorstMm, panel.Worst.OffMm)
            .Object(FirstArticleDocument.WorstPlace, at => Place(at, panel.Worst.Place))
            .Number(FirstArticleDocument.Failing, panel.Failing)
            .Number(FirstArticleDocument.UncertaintyMm, panel.Rule.UncertaintyMm)
            .Number(FirstArticleDocument.GuardMm, panel.GuardMm)
            .Number(FirstArticleDocument.RejectGuardMm, panel.RejectGuardMm)
            .Number(FirstArticleDocument.ChanceWithin, panel.Chance)
            .Number(FirstArticleDocument.Steepness, panel.Rule.Steepness)
            .Number(FirstArticleDocument.HiddenMm, panel.HiddenMm)
            .Number(FirstArticleDocument.PerimeterMm, panel.PerimeterMm)
            .Number(FirstArticleDocument.WidestGapMm, panel.WidestGapMm)
            .Object(FirstArticleDocument.WidestGapPlace, at => Place(at, panel.WidestGapPlace))
            .Number(FirstArticleDocument.SpacingWantedMm, panel.SpacingWantedMm)
            .Number(FirstArticleDocument.PointsWanted, panel.PointsWanted)
            .Flag(FirstArticleDocument.InFrame, panel.Rule.InFrame)
            .Number(FirstArticleDocument.TurnDeg, panel.TurnDeg)
            .Flag(FirstArticleDocument.Mirrored, panel.Mirrored)
            .Object(
                FirstArticleDocument.LeastSquares,
                squares => squares.Number(SquaresFields.WorstMm, panel.SquaresWorstMm)
                    .Number(SquaresFields.MeanMm, panel.SquaresMeanMm)
                    .Number(SquaresFields.RmsMm, panel.SquaresRmsMm))
            .Rows(FirstArticleDocument.HeldBy, panel.HeldBy, p => [p.Place.X, p.Place.Y, p.OffMm, p.Normal.X, p.Normal.Y, p.Share])
            .Rows(FirstArticleDocument.Points, panel.Points, p => [p.Place.X, p.Place.Y, p.OffMm, p.AlongMm, p.SquaresOffMm])
            .Finish();
    }

    private static void Place(JsonOutput at, Point2 place) => at.Number(PlaceFields.X, place.X).Number(PlaceFields.Y, place.Y);

    /// <summary>The life's bytes. <c>die</c> has the fields of a cost file's own, where price and life are known.</summary>
    public static byte[] Life(DieLife life, DieInput die)
    {
        using JsonOutput json = new(DieLifeDocument.Document);
        return json.Text(DieLifeDocument.Name, life.Name)
            .Text(DieLifeDocument.Revision, life.Revision)
            .Text(DieLifeDocument.SupersededBy, life.SupersededBy)
            .Number(DieLifeDocument.PanelProfileMm, life.ToleranceMm)
            .Number(DieLifeDocument.Strikes, life.Strikes)
            .Flag(DieLifeDocument.Failed, life.Failed)
            .Number(DieLifeDocument.ReRuleAt, life.ReRuleAt)
            .Number(DieLifeDocument.DriftLimit, life.DriftLimit)
            .Number(DieLifeDocument.StatedLife, life.StatedLife)
            .ObjectOrNull(DieLifeDocument.Die, die.Wear, (item, wear) => item
                .Number(DieFields.Price, (double)wear.Price)
                .Number(DieFields.LifeStrikes, Math.Max(1, Math.Floor(life.ReRuleAt ?? wear.LifeStrikes)))
                .Number(DieFields.ReRules, wear.ReRules)
                .Number(DieFields.ReRulePrice, (double)wear.ReRulePrice))
            .Objects(DieLifeDocument.Drifts, life.Drifts, Drift)
            .Objects(
                DieLifeDocument.Readings, life.Readings,
                (
                    item,
                    r) => item
                        .Text(ReadingFields.Date, r.Date)
                        .Number(ReadingFields.Strikes, r.Strikes)
                        .Number(ReadingFields.Cavity, r.Cavity)
                        .Text(ReadingFields.Ply, r.Ply)
                        .Number(ReadingFields.OffMm, r.OffMm)
                        .Number(ReadingFields.WorstMm, r.WorstMm))
            .Finish();
    }

    private static void Drift(JsonOutput item, DieDrift drift) => item
        .Number(DriftFields.Cavity, drift.Cavity)
        .Text(DriftFields.Ply, drift.Ply)
        .Number(DriftFields.StartMm, drift.StartMm)
        .Number(DriftFields.PerThousandMm, drift.PerThousandMm)
        .Number(DriftFields.ScatterMm, drift.ScatterMm)
        .Number(DriftFields.LimitFrom, drift.LimitFrom)
        .Number(DriftFields.LimitTo, drift.LimitTo)
        .Text(DriftFields.Fit, EnumWord.Of(drift.Fit))
        .Number(DriftFields.LimitStrikes, drift.LimitStrikes);
}
