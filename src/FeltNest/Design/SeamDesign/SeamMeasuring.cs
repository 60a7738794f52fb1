using FeltNest.Ball;
using FeltNest.Ball.Ranges;
using FeltNest.Layout;
using FeltNest.Panel;
using FeltNest.Panel.Wrap;
using FeltNest.Seam;
using FeltNest.Yield;

namespace FeltNest.Design.SeamDesign;

/// <summary>Measures a designed seam the ordinary way: the panel of its ball file, laid by the search for layouts.</summary>
/// <param name="lay">The question to the layout engine for a part.</param>
/// <param name="search">What gives a layout.</param>
internal sealed class SeamMeasuring(Func<LayoutPart, LayoutRequest> lay, LayoutSource search)
{
    /// <summary>The seam of a ball, measured.</summary>
    /// <exception cref="InputException">The ball is none.</exception>
    /// <exception cref="NoAnswerException">It has no panel, or the panel does not fit the roll.</exception>
    public (SeamChoice Choice, LayoutRequest Request, RollLayout Layout) Of(BallSpec ball, CancellationToken stop)
    {
        FlatPanel panel = PanelFit.Felt(ball, PanelFlattener.Flatten(BallRanges.Checked(ball)));
        LayoutRequest request = lay(CoverPart.Of(ball, panel));
        RollLayout layout = search(request, stop);

        // Two panels a ball, a thousand balls, m2 of mm2: 2000 / 1e6.
        const double perThousand = 2e-3;
        double plane = perThousand * panel.AreaMm2 / (layout.Search.PlaneUtilisationPercent / 100);
        double run = SeamBounds.LeastRun(SeamCurve.For(ball.Seam, ball.FittedRadiusMm), ball.FittedRadiusMm);
        return (new SeamChoice(ball, panel, plane, YieldAccount.Of(layout)) { LeastRunMm = run }, request, layout);
    }

    /// <summary>A measured panel laid at whatever tilt has the least felt, and what the layout was asked.</summary>
    public (LayoutRequest Request, RollLayout Layout) Free(SeamChoice choice, CancellationToken stop)
    {
        LayoutRequest request = lay(CoverPart.Of(choice.Ball, choice.Panel));
        LayoutRequest free = request with { Rules = request.Rules with { WarpAngleDeg = null } };
        return (request, search(free, stop));
    }

    /// <summary>By how much a measured seam passes its limits: stretch and compression in per cent, the rest in mm.</summary>
    public static SeamExcess Excess(SeamChoice choice, SeamLimits limits) => new()
    {
        Stretch = choice.Panel.Strain.MaxStretchPercent - limits.StretchPercent,
        Compression = choice.Panel.Strain.MaxCompressionPercent - (limits.CompressionPercent ?? double.PositiveInfinity),
        Radius = (limits.LeastRadiusMm ?? double.NegativeInfinity) - choice.Panel.Sphere.LeastRadiusMm,
        Run = (limits.LeastRunMm ?? double.NegativeInfinity) - choice.LeastRunMm,
        Gap = (choice.Panel.Fit?.LargestGapMm ?? 0) - (limits.MostGapMm ?? double.PositiveInfinity),
    };
}
