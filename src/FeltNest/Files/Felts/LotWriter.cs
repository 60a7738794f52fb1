using FeltNest.Files.Json;
using FeltNest.Panel.Lot;
using static FeltNest.Files.Felts.LotDocument;

namespace FeltNest.Files.Felts;

/// <summary>Writes a die against a new lot of felt (schema feltnest/lot/1).</summary>
internal static class LotWriter
{
    /// <summary>The file's bytes.</summary>
    /// <param name="outline">Name of what the die cuts.</param>
    /// <param name="lot">What came out.</param>
    public static byte[] Write(string outline, LotResult lot)
    {
        using JsonOutput json = new(LotDocument.Document);
        json.Text(LotDocument.Ball, lot.Before.Name)
            .Text(LotDocument.Outline, outline)
            .Text(LotDocument.Before, LotWords.NameOf(lot.Before))
            .Text(LotDocument.After, LotWords.NameOf(lot.After))
            .Number(LotDocument.GlueFromMm, lot.GlueFromMm)
            .Number(LotDocument.GlueToMm, lot.GlueToMm)
            .Text(LotDocument.Verdict, EnumWord.Of(lot.Verdict))
            .Texts(LotDocument.Words, LotWords.Of(lot))
            .Number(LotDocument.MeanChangeMm, lot.MeanChangeMm)
            .Number(LotDocument.MeanIntervalMm, lot.MeanIntervalMm)
            .Objects(LotDocument.Changes, lot.Changes, (item, change) => item
                .Text(ChangeFields.Field, change.Field)
                .Number(ChangeFields.Before, change.Before)
                .Number(ChangeFields.After, change.After)
                .Number(ChangeFields.MeanGapMm, change.MeanGapMm))
            .Object(LotDocument.AtFitting, fields => State(fields, lot.AtFitting))
            .Object(LotDocument.AfterCure, fields => State(fields, lot.AfterCure))
            .Rows(LotDocument.Gaps, Enumerable.Range(0, lot.RoundMm.Count), i =>
            [
                lot.RoundMm[i], lot.Shares[i], lot.AtFitting.Before.AtMm[i], lot.AtFitting.After.AtMm[i], lot.AfterCure.Before.AtMm[i],
                lot.AfterCure.After.AtMm[i],
            ]);
        return json.Finish();
    }

    private static void State(JsonOutput json, LotState state) => json
        .Object(StateFields.Before, fields => Gap(fields, state.Before))
        .Object(StateFields.After, fields => Gap(fields, state.After));

    private static void Gap(JsonOutput json, LotGap gap) => json
        .Number(GapFields.MeanMm, gap.MeanMm)
        .Number(GapFields.WaistMm, gap.WaistMm)
        .Number(GapFields.TipMm, gap.TipMm)
        .Number(GapFields.LeastMm, gap.LeastMm)
        .Number(GapFields.GreatestMm, gap.GreatestMm)
        .Number(GapFields.OutsidePercent, gap.OutsidePercent);
}
