using FeltNest.Ball.Passport;
using FeltNest.Files.Fields;
using FeltNest.Files.Json;
using static FeltNest.Files.Felts.FeltDocument;

namespace FeltNest.Files.Felts;

/// <summary>Writes a measured felt (schema feltnest/felt/1).</summary>
internal static class FeltWriter
{
    /// <summary>The file's bytes.</summary>
    public static byte[] Write(FeltPassport felt)
    {
        using JsonOutput json = new(FeltDocument.Document);
        json.Text(FeltDocument.Name, felt.Felt)
            .Object(FeltDocument.Lot, lot => LotFields.Write(lot, felt.Lot))
            .Object(FeltDocument.Values, values => Figures(values, felt))
            .Objects(FeltDocument.Curves, felt.Curves, Curve)
            .Number(FeltDocument.ShearGain, felt.ShearGain)
            .ObjectOrNull(FeltDocument.Edge, felt.Edge, (item, edge) => Edge(item, edge, felt))
            .Texts(FeltDocument.Remarks, felt.Remarks);
        return json.Finish();
    }

    private static void Figures(JsonOutput json, FeltPassport felt)
    {
        foreach ((FeltQuantity quantity, FeltValue value) in felt.Values.OrderBy(one => one.Key))
        {
            json.Object(ValuesFields.Of(quantity), item => Figure(item, ValuesFields.ValueOf(quantity), value));
        }
    }

    private static void Figure(JsonOutput json, NumberField field, FeltValue value) => json
        .Number(field, value.Value)
        .Number(FigureFields.SpecimenSpread, value.SpecimenSpread)
        .Number(FigureFields.Spread, value.Spread)
        .Number(FigureFields.Interval, value.Interval)
        .Number(FigureFields.Freedom, value.Freedom)
        .Number(FigureFields.Specimens, value.Specimens);

    private static void Curve(JsonOutput json, FeltCurve curve) => json
        .Text(CurveFields.Direction, EnumWord.Of(curve.Direction))
        .Flag(CurveFields.InTension, curve.InTension)
        .Number(CurveFields.Points, curve.Points)
        .Object(CurveFields.Straight, item => Figure(item, CurveFigureFields.Value, curve.Straight))
        .Number(CurveFields.StraightRmsNPerMm, curve.StraightRms)
        .Object(CurveFields.Initial, item => Figure(item, CurveFigureFields.Value, curve.Initial))
        .Object(CurveFields.Bend, item => Figure(item, CurveFigureFields.Value, curve.Bend))
        .Number(CurveFields.BentRmsNPerMm, curve.BentRms)
        .Number(CurveFields.Ratio, curve.Ratio)
        .Number(CurveFields.Freedom, curve.Freedom)
        .Number(CurveFields.Chance, curve.Chance)
        .Flag(CurveFields.Bends, curve.Bends);

    private static void Edge(JsonOutput json, FeltEdge edge, FeltPassport felt)
    {
        double neutral = felt.Values[FeltQuantity.NeutralLayer].Value;
        json.Number(EdgeFields.FlatDiscMm, edge.Flat.DiscDiameterMm)
            .Number(EdgeFields.FlatRadiusMm, edge.Flat.RadiusMm(neutral))
            .Number(EdgeFields.FlatPercent, edge.FlatPercent)
            .Number(EdgeFields.PuckeredDiscMm, edge.Puckered?.DiscDiameterMm)
            .Number(EdgeFields.PuckeredRadiusMm, edge.Puckered?.RadiusMm(neutral))
            .Number(EdgeFields.PuckeredPercent, edge.PuckeredPercent)
            .Number(EdgeFields.FlatDiscs, edge.FlatDiscs)
            .Number(EdgeFields.PuckerShareAtMostPercent, edge.PuckerShareAtMostPercent)
            .Flag(EdgeFields.Contradict, edge.Contradict);
    }
}
