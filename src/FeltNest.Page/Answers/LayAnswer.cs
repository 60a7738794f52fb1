using FeltNest.Cost.Sheet;
using FeltNest.Layout;
using FeltNest.Page.Inputs;
using FeltNest.Yield;

namespace FeltNest.Page.Answers;

/// <summary>A lay with its account and cost, as the page draws it. Lengths mm, areas m2, shares per cent.</summary>
internal sealed record LayAnswer(
    string Stage, string Method, double WidthMm, double LowerMm, double UpperMm, double GapMm, double[][] Outline, BandAnswer[] Bands,
    double PanelsPerMetre, double BallsPerMetre,
    double WastePercent, double UtilisationPercent, double? BoundPercent, double? PlanePercent, int Classes, FeltAnswer Felt,
    NamedShare[] Account, CostAnswer? Cost, string? Problem)
{
    /// <summary>The answer for a layout.</summary>
    public static LayAnswer Of(string stage, RollLayout layout, PageMoney money, double? massGsm)
    {
        YieldFigures yields = YieldAccount.Of(layout);
        LayoutPart part = layout.Parts[0];
        List<PairingClass> classes = [.. YieldAccount.Classes(layout).Select(c => c.Class)];
        BandAnswer[] bands = [.. layout.Bands.Select(b => new BandAnswer(
            b.YFromMm, b.YToMm, b.Repeat.LengthMm,
            [
                .. b.Repeat.Panels.Select(p =>
                    (double[])[p.XMm, p.YMm, p.AngleDeg, classes.FindIndex(c => c.Holds(p, layout.Rules.OneWay))]),
            ]))];
        (FeltAccount? felt, CostSheet? sheet, string? problem) = Priced(layout, money, massGsm);
        SearchRecord search = layout.Search;
        return new LayAnswer(
            stage, search.Method, layout.RollWidthMm, layout.Trims.LowerMm, layout.Trims.UpperMm, layout.GapMm,
            [.. part.Outline.Points.Select(p => (double[])[Math.Round(p.X, 3), Math.Round(p.Y, 3)])],
            bands, yields.PanelsPerMetre, yields.BallsPerMetre, yields.WastePercent, yields.UtilisationPercent,
            Known(search.UpperBoundPercent), Known(search.PlaneUtilisationPercent), classes.Count,
            FeltAnswer.Of(yields.PerThousandBalls, felt?.PerThousandBalls), [.. Shares(yields, felt)],
            sheet is null ? null : CostAnswer.Of(sheet), problem);
    }

    private static (FeltAccount? Felt, CostSheet? Sheet, string? Problem) Priced(RollLayout layout, PageMoney money, double? massGsm)
    {
        try
        {
            FeltAccount felt = FeltAccount.Of(LayPlan.Of(layout), money.Losses, massGsm);
            return (felt, money.Price is { } price ? CostSheet.Of(felt, price, money.Costs) : null, null);
        }
        catch (FeltNestException error)
        {
            return (null, null, error.Message);
        }
    }

    private static IEnumerable<NamedShare> Shares(YieldFigures yields, FeltAccount? felt) => felt is not null
        ? felt.Shares.Named.Select(s => new NamedShare(s.Name, s.Percent))
        :
        [
            new("good panels", yields.Account.GoodPanelsPercent), new("web between panels", yields.Account.BetweenPanelsPercent),
            new("unused edge", yields.Account.UnusedEdgePercent),
            new("edge trim", yields.Account.EdgeTrimPercent),
        ];

    private static double? Known(double percent) => percent > 0 ? percent : null;
}
