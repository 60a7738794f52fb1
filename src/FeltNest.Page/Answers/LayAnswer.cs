using FeltNest.Cost.Sheet;
using FeltNest.Layout;
using FeltNest.Page.Inputs;
using FeltNest.Runs;
using FeltNest.Yield;

namespace FeltNest.Page.Answers;

/// <summary>A lay with its account and cost, as the page draws it. Lengths mm, areas m2, shares per cent.</summary>
internal sealed record LayAnswer
{
    public required string Stage { get; init; }

    public required string Method { get; init; }

    public required double WidthMm { get; init; }

    public required double LowerMm { get; init; }

    public required double UpperMm { get; init; }

    public required double GapMm { get; init; }

    public required double[][] Outline { get; init; }

    public required BandAnswer[] Bands { get; init; }

    public required double PanelsPerMetre { get; init; }

    public required double BallsPerMetre { get; init; }

    public required double WastePercent { get; init; }

    public required double UtilisationPercent { get; init; }

    public required double? BoundPercent { get; init; }

    public required double? PlanePercent { get; init; }

    public required int Classes { get; init; }

    public required FeltAnswer Felt { get; init; }

    public required NamedShare[] Account { get; init; }

    public required CostAnswer? Cost { get; init; }

    public required string? Problem { get; init; }

    /// <summary>The answer for a layout.</summary>
    public static LayAnswer Of(string stage, RollLayout layout, PageMoney money, double? massGsm)
    {
        PricedLayout priced = PricedLayout.Of(layout, money.Costs, money.Price, massGsm);
        YieldFigures yields = priced.Yields;
        LayoutPart part = layout.Parts[0];
        List<PairingClass> classes = [.. priced.Groups];
        BandAnswer[] bands = [.. layout.Bands.Select(b => new BandAnswer
        {
            FromMm = b.YFromMm,
            ToMm = b.YToMm,
            RepeatMm = b.Repeat.LengthMm,
            Panels = [
                .. b.Repeat.Panels.Select(p =>
                    (double[])[p.XMm, p.YMm, p.AngleDeg, classes.FindIndex(c => c.Holds(p, layout.Rules.OneWay))]),
            ],
        })];
        SearchRecord search = layout.Search;
        return new LayAnswer
        {
            Stage = stage,
            Method = search.Method,
            WidthMm = layout.RollWidthMm,
            LowerMm = layout.Trims.LowerMm,
            UpperMm = layout.Trims.UpperMm,
            GapMm = layout.GapMm,
            Outline = [.. part.Outline.Points.Select(p => (double[])[Math.Round(p.X, 3), Math.Round(p.Y, 3)])],
            Bands = bands,
            PanelsPerMetre = yields.PanelsPerMetre,
            BallsPerMetre = yields.BallsPerMetre,
            WastePercent = yields.WastePercent,
            UtilisationPercent = yields.UtilisationPercent,
            BoundPercent = Known(search.UpperBoundPercent),
            PlanePercent = Known(search.PlaneUtilisationPercent),
            Classes = classes.Count,
            Felt = FeltAnswer.Of(yields.PerThousandBalls, priced.Felt?.PerThousandBalls),
            Account = [.. Shares(yields, priced.Felt)],
            Cost = priced.Sheet is null ? null : CostAnswer.Of(priced.Sheet),
            Problem = priced.Problem,
        };
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
