using FeltNest.Ball;
using FeltNest.Seam;

namespace FeltNest.Panel.Budget;

/// <summary>The gap round the seam with nothing off, and what each part does to it.</summary>
/// <param name="Places">Seam parameter, way round the seam and length of seam of each station.</param>
/// <param name="Nominal">Gap with nothing off, mm.</param>
/// <param name="All">What each part does; a part of the placing twice, once a panel.</param>
internal sealed record GapEffects(
    IReadOnlyList<(double S, double AlongMm, double LengthMm)> Places, IReadOnlyList<double> Nominal, IReadOnlyList<GapEffect> All)
{
    /// <summary>Word for a part that is off alike on both panels.</summary>
    public const string BothPanels = "both";

    /// <summary>Word for the first panel, on whose edge the stations lie.</summary>
    public const string FirstPanel = "A";

    /// <summary>Word for the second panel.</summary>
    public const string SecondPanel = "B";

    /// <summary>The columns of some parts: the index of each part, and the panels it is off on.</summary>
    public static IReadOnlyList<(int Part, string Panels)> Panels(IReadOnlyList<GapPart> parts) =>
    [
        .. parts.SelectMany((part, i) => part.Placing is null
            ? new[] { (i, BothPanels) }
            : [(i, FirstPanel), (i, SecondPanel)]),
    ];

    /// <summary>The effects of all parts in one state of the felt.</summary>
    /// <exception cref="NoAnswerException">A panel cannot be laid on.</exception>
    public static GapEffects Of(
        GapSolver solver, BallSpec ball, IReadOnlyList<(GapPart Part, BallSpec Minus, BallSpec Plus)> ends, bool cured)
    {
        double radius = ball.FittedRadiusMm;
        IReadOnlyList<SpherePoint> edge = solver.Edge(ball, cured);
        double[] nominal = GapSolver.Gaps(edge, radius, default, default);
        IReadOnlyList<(int Part, string Panels)> columns = Panels([.. ends.Select(end => end.Part)]);
        GapEffect[] all = new GapEffect[columns.Count];
        Parallel.For(0, columns.Count, new ParallelOptions { MaxDegreeOfParallelism = 2 }, k =>
        {
            (int part, string panels) = columns[k];
            (GapPart one, BallSpec minus, BallSpec plus) = ends[part];
            all[k] = new GapEffect
            {
                Source = part,
                Panels = panels,
                AtMinus = End(one, minus, panels, -1),
                AtPlus = End(one, plus, panels, 1),
            };
        });
        return new GapEffects(Along(edge, radius), nominal, all);

        double[] End(GapPart part, BallSpec off, string panels, double side)
        {
            double[] gaps = part switch
            {
                { Source.PlusMinus: 0 } => nominal,
                { Placing: { } placing } => Placed(edge, radius, panels, placing(side * part.Source.PlusMinus, radius)),
                _ => GapSolver.Gaps(solver.Edge(off, cured), off.FittedRadiusMm, default, default),
            };
            return [.. gaps.Zip(nominal, (a, b) => a - b)];
        }
    }

    private static double[] Placed(IReadOnlyList<SpherePoint> edge, double radius, string panels, PanelPlacing moved) =>
        panels == FirstPanel ? GapSolver.Gaps(edge, radius, moved, default) : GapSolver.Gaps(edge, radius, default, moved);

    // The way round the seam by the edge with nothing off; a station stands for half of the way to each neighbour.
    private static (double S, double AlongMm, double LengthMm)[] Along(IReadOnlyList<SpherePoint> edge, double radius)
    {
        int n = edge.Count;
        double[] along = new double[n + 1];
        for (int i = 0; i < n; i++)
        {
            along[i + 1] = along[i] + (radius * (edge[(i + 1) % n] - edge[i]).Length);
        }

        const int count = GapSolver.Stations;
        int step = n / count;
        return [.. Enumerable.Range(0, count).Select(i =>
        {
            double before = i == 0 ? along[n] - along[n - step] : along[i * step] - along[(i - 1) * step];
            return (2 * Math.PI * i / count, along[i * step], (before + along[(i + 1) * step] - along[i * step]) / 2);
        })];
    }
}
