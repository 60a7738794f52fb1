using FeltNest.Ball;
using FeltNest.Files.Json;
using FeltNest.Panel.Proven;
using static FeltNest.Files.Panels.ProvenDocument;

namespace FeltNest.Files.Panels;

/// <summary>Writes a ball fitted to a measured outline (schema feltnest/proven/1).</summary>
internal static class ProvenWriter
{
    // Long because it is one list of fields in the order of the file.
    /// <summary>The file's bytes.</summary>
    /// <param name="outline">Name of the outline.</param>
    /// <param name="fit">What was found.</param>
    public static byte[] Write(string outline, ProvenFit fit)
    {
        using JsonOutput json = new(ProvenDocument.Document);
        ProvenDeviation greatest = fit.Greatest;
        BallSpec ball = fit.Ball;
        json.Text(ProvenDocument.Ball, ball.Name)
            .Text(ProvenDocument.Outline, outline)
            .Objects(ProvenDocument.Values, fit.Values, (item, value) => item
                .Text(ValueFields.Name, value.Name)
                .Text(ValueFields.Field, value.Field)
                .Number(ValueFields.Value, value.Value)
                .Text(ValueFields.Unit, value.Unit)
                .Number(ValueFields.Spread, value.Spread)
                .Text(ValueFields.AtBound, value.AtBound))
            .Objects(ProvenDocument.Held, fit.Held, (item, value) => item
                .Text(HeldFields.Field, value.Field)
                .Number(HeldFields.Value, value.Value))
            .Text(ProvenDocument.Curve, EnumWord.Of(ball.Seam.Curve))
            .Objects(ProvenDocument.Families, fit.Families, (item, family) => item
                .Text(FamilyFields.Curve, EnumWord.Of(family.Curve))
                .Number(FamilyFields.RmsMm, family.RmsMm)
                .Number(FamilyFields.NeutralLayer, family.NeutralLayer)
                .Number(FamilyFields.WaistMm, family.WaistMm))
            .Flag(ProvenDocument.ShowsEdgeLimit, fit.ShowsLimit)
            .Number(ProvenDocument.EdgeTakesUpPercent, fit.Panel.Strain.EdgeMaxCompressionPercent)
            .Object(ProvenDocument.Residuals, residuals => residuals
                .Number(ResidualsFields.RmsMm, fit.RmsMm)
                .Number(ResidualsFields.GreatestMm, greatest.OffMm)
                .Number(ResidualsFields.GreatestU, greatest.Place.X)
                .Number(ResidualsFields.GreatestV, greatest.Place.Y))
            .Number(ProvenDocument.TellableMm, fit.TellableMm)
            .Text(ProvenDocument.Weakest, fit.Weakest)
            .Number(ProvenDocument.StretchInsteadPercent, fit.Doubt?.StretchPercent)
            .Objects(ProvenDocument.Combinations, fit.Trades, (item, trade) => item
                .Number(CombinationFields.SingularValue, trade.SingularValue)
                .Object(CombinationFields.Changes, changes =>
                {
                    for (int i = 0; i < fit.Values.Count; i++)
                    {
                        changes.Number(ChangesFields.Set.NumberOf(fit.Values[i].Field), trade.Changes[i]);
                    }
                }))
            .Number(ProvenDocument.TurnedDeg, fit.TurnDeg)
            .Object(ProvenDocument.BallFields, fields =>
            {
                // The felt's and the seam's fields as the ball file nests them, to be copied into it.
                fields.Object(BallFieldsFields.Felt, felt =>
                {
                    felt.Number(FeltFields.NeutralLayer, ball.Felt.NeutralLayer);
                    if (ball.Panel.Edge == EdgeRule.Mated)
                    {
                        felt.Number(FeltFields.MaxEdgeCompressionPercent, ball.Felt.MaxEdgeCompressionPercent);
                    }
                });
                fields.Object(BallFieldsFields.Seam, seam => seam
                    .Text(SeamFields.Curve, EnumWord.Of(ball.Seam.Curve))
                    .Number(SeamFields.WaistMm, ball.Seam.WaistMm));
            })
            .Rows(ProvenDocument.Deviations, fit.Deviations, d => [d.Place.X, d.Place.Y, d.OffMm]);
        return json.Finish();
    }
}
