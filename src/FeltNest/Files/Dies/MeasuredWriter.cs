using FeltNest.Die.Proof;
using FeltNest.Files.Json;
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
            .Flag(FirstArticleDocument.Passed, panel.Passed)
            .Number(FirstArticleDocument.PanelProfileMm, panel.ToleranceMm)
            .Number(FirstArticleDocument.WorstMm, panel.Worst.OffMm)
            .Object(
                FirstArticleDocument.WorstPlace,
                at => at.Number(WorstPlaceFields.X, panel.Worst.Place.X).Number(WorstPlaceFields.Y, panel.Worst.Place.Y))
            .Number(FirstArticleDocument.MeanMm, panel.MeanMm)
            .Number(FirstArticleDocument.RmsMm, panel.RmsMm)
            .Number(FirstArticleDocument.Failing, panel.Failing)
            .Number(FirstArticleDocument.TurnDeg, panel.TurnDeg)
            .Number(FirstArticleDocument.WidestGapMm, panel.WidestGapMm)
            .Flag(FirstArticleDocument.Mirrored, panel.Mirrored)
            .Rows(FirstArticleDocument.Points, panel.Points, p => [p.Place.X, p.Place.Y, p.OffMm])
            .Finish();
    }

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
            .Objects(
                DieLifeDocument.Drifts, life.Drifts,
                (
                    item,
                    d) => item
                        .Number(DriftFields.Cavity, d.Cavity)
                        .Text(DriftFields.Ply, d.Ply)
                        .Number(DriftFields.StartMm, d.StartMm)
                        .Number(DriftFields.PerThousandMm, d.PerThousandMm)
                        .Number(DriftFields.LimitStrikes, d.LimitStrikes))
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
}
