using FeltNest.Die.Proof;
using FeltNest.Files.Json;

namespace FeltNest.Files.Dies;

/// <summary>Writes what was found of a measured panel (schema feltnest/first-article/1) and of a die's life (schema
/// feltnest/die-life/1).</summary>
public static class MeasuredWriter
{
    /// <summary>The first article's bytes.</summary>
    public static byte[] FirstArticle(string name, MeasuredPanel panel)
    {
        using JsonOutput json = new();
        return json.Text("schema", SchemaName.FirstArticle)
            .Text("name", name)
            .Flag("passed", panel.Passed)
            .Number("panelProfileMm", panel.ToleranceMm)
            .Number("worstMm", panel.Worst.OffMm)
            .Object("worstPlace", at => at.Number("x", panel.Worst.Place.X).Number("y", panel.Worst.Place.Y))
            .Number("meanMm", panel.MeanMm)
            .Number("rmsMm", panel.RmsMm)
            .Number("failing", panel.Failing)
            .Number("turnDeg", panel.TurnDeg)
            .Number("widestGapMm", panel.WidestGapMm)
            .Flag("mirrored", panel.Mirrored)
            .Rows("points", panel.Points, p => [p.Place.X, p.Place.Y, p.OffMm])
            .Finish();
    }

    /// <summary>The life's bytes. <c>die</c> has the fields of a cost file's own, where price and life are known.</summary>
    public static byte[] Life(DieLife life, DieInput die)
    {
        using JsonOutput json = new();
        return json.Text("schema", SchemaName.DieLife)
            .Text("name", life.Name)
            .Text("revision", life.Revision)
            .Text("supersededBy", life.SupersededBy)
            .Number("panelProfileMm", life.ToleranceMm)
            .Number("strikes", life.Strikes)
            .Flag("failed", life.Failed)
            .Number("reRuleAt", life.ReRuleAt)
            .Number("driftLimit", life.DriftLimit)
            .Number("statedLife", life.StatedLife)
            .ObjectOrNull("die", die.Wear, (item, wear) => item
                .Number("price", (double)wear.Price)
                .Number("lifeStrikes", Math.Max(1, Math.Floor(life.ReRuleAt ?? wear.LifeStrikes)))
                .Number("reRules", wear.ReRules)
                .Number("reRulePrice", (double)wear.ReRulePrice))
            .Objects(
                "drifts", life.Drifts,
                (
                    item,
                    d) => item
                        .Number("cavity", d.Cavity)
                        .Text("ply", d.Ply)
                        .Number("startMm", d.StartMm)
                        .Number("perThousandMm", d.PerThousandMm)
                        .Number("limitStrikes", d.LimitStrikes))
            .Objects(
                "readings", life.Readings,
                (
                    item,
                    r) => item
                        .Text("date", r.Date)
                        .Number("strikes", r.Strikes)
                        .Number("cavity", r.Cavity)
                        .Text("ply", r.Ply)
                        .Number("offMm", r.OffMm)
                        .Number("worstMm", r.WorstMm))
            .Finish();
    }
}
