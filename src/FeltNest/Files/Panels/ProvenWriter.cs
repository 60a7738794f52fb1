using FeltNest.Ball;
using FeltNest.Files.Json;
using FeltNest.Panel.Proven;

namespace FeltNest.Files.Panels;

/// <summary>Writes a ball fitted to a measured outline (schema feltnest/proven/1).</summary>
public static class ProvenWriter
{
    /// <summary>The file's bytes.</summary>
    /// <param name="outline">Name of the outline.</param>
    /// <param name="fit">What was found.</param>
    public static byte[] Write(string outline, ProvenFit fit)
    {
        using JsonOutput json = new();
        ProvenDeviation greatest = fit.Greatest;
        BallSpec ball = fit.Ball;
        json.Text("schema", SchemaName.Proven)
            .Text("ball", ball.Name)
            .Text("outline", outline)
            .Objects("values", fit.Values, (item, value) => item
                .Text("name", value.Name)
                .Text("field", value.Field)
                .Number("value", value.Value)
                .Text("unit", value.Unit)
                .Number("spread", value.Spread)
                .Text("atBound", value.AtBound))
            .Flag("showsEdgeLimit", fit.ShowsLimit)
            .Number("edgeTakesUpPercent", fit.Panel.Strain.EdgeMaxCompressionPercent)
            .Object("residuals", residuals => residuals
                .Number("rmsMm", fit.RmsMm)
                .Number("greatestMm", greatest.OffMm)
                .Number("greatestU", greatest.Place.X)
                .Number("greatestV", greatest.Place.Y))
            .Number("tellableMm", fit.TellableMm)
            .Text("weakest", fit.Weakest)
            .Objects("combinations", fit.Trades, (item, trade) => item
                .Number("singularValue", trade.SingularValue)
                .Object("changes", changes =>
                {
                    for (int i = 0; i < fit.Values.Count; i++)
                    {
                        changes.Number(fit.Values[i].Field, trade.Changes[i]);
                    }
                }))
            .Number("turnedDeg", fit.TurnDeg)
            .Object("ballFields", fields =>
            {
                // The felt's and the seam's fields as the ball file nests them, to be copied into it.
                fields.Object("felt", felt =>
                {
                    felt.Number("neutralLayer", ball.Felt.NeutralLayer);
                    if (ball.Panel.Edge == EdgeRule.Mated)
                    {
                        felt.Number("maxEdgeCompressionPercent", ball.Felt.MaxEdgeCompressionPercent);
                    }
                });
                fields.Object("seam", seam => seam.Number("waistMm", ball.Seam.WaistMm));
            })
            .Rows("deviations", fit.Deviations, d => [d.Place.X, d.Place.Y, d.OffMm]);
        return json.Finish();
    }
}
