using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Layout.Limits;
using FeltNest.Layout.Plane;
using FeltNest.Layout.Polish;
using FeltNest.Layout.Rows.Tables;

namespace FeltNest.Design.SeamDesign;

/// <summary>The seams of one family with the least felt, limit by limit from the greatest stretch down: each is sought from the last, and
/// one that keeps the next limit already stands for it too.</summary>
internal sealed class SeamFamilyFront
{
    // Steps of one search, and searches with limits drawn tighter by what the ordinary measuring found above them.
    private const int MostSteps = 40;
    private const int MostCorrections = 4;

    // Limits are drawn tighter by this much more than was found, per cent or mm, so that the next search ends inside.
    private const double Inside = 2e-3;

    // Rounds of design and layout on the roll, and the part of the felt that other rows must save to be designed for.
    private const int RollRounds = 3;
    private const double OtherRows = 2e-3;

    // Rows of another number that need at most this part more felt than the best are begun from too.
    private const double NextRows = 0.01;

    // Factor of the least area of the chart where a full panel was not found.
    private const double Rounder = 1.5;

    // Angles to the warp at which a search looks before it begins at the best of them.
    private const int Turns = 4;

    // Places of a number of the seam: a ten-thousandth of a mm, so that the ball file says exactly what was measured.
    private const int Digits = 4;

    private readonly SeamVariables variables;
    private readonly SeamQuestion question;
    private readonly SeamMeasuring measuring;
    private readonly SeamSolver solver;
    private readonly SeamReader reader;
    private SeamExcess tighter = new() { Stretch = 0.02, Compression = 0, Radius = 0, Run = 0, Gap = 0 };
    private double leastChart = SeamBounds.LeastChart;
    private SeamTrial? begun;
    private SeamTrial? planeTrial;
    private SeamTrial? rowsTrial;
    private SeamTrial[] others = [];
    private SeamTrial? rollTrial;
    private SeamChoice? plane;
    private SeamChoice? roll;

    /// <summary>Tabulates what all seams of the family share.</summary>
    public SeamFamilyFront(SeamVariables variables, SeamQuestion question, SeamMeasuring measuring)
    {
        // High enough that felt differs from the full panel's by less than 0.03 % and strains by a few hundredths of a per cent.
        const int degree = 25;
        this.variables = variables;
        this.question = question;
        this.measuring = measuring;
        solver = new SeamSolver(variables, degree);
        reader = new SeamReader(solver.Space, question.Limits.MostGapMm is not null);
    }

    /// <summary>Panels solved so far.</summary>
    public int Solves { get; private set; }

    /// <summary>Where the search begins: the family's seam at a waist, with the densest lattice of its panel.</summary>
    /// <param name="waistMm">The waist.</param>
    /// <param name="request">The question to the layout engine, with any part.</param>
    /// <param name="stop">Ends the search for the lattice with the best so far.</param>
    /// <exception cref="NoAnswerException">No panel, or no lattice was found.</exception>
    public void Begin(double waistMm, LayoutRequest request, CancellationToken stop)
    {
        (double least, double most) = variables.Waists();
        double waist = Math.Clamp(waistMm, least, most);
        double[] turns = variables.TurnsWarp ? [.. Enumerable.Range(0, Turns).Select(i => i * Math.PI / Turns)] : [0];
        begun = turns.Select(turn => Begun(variables.Plain(waist, turn), request, stop))
            .OfType<SeamTrial>().OrderBy(trial => trial.Lay.FeltMm2).FirstOrDefault()
            ?? throw new NoAnswerException("no lattice of the panel was found");
    }

    private SeamTrial? Begun(double[] values, LayoutRequest request, CancellationToken stop)
    {
        SeamState state = solver.First(values);
        SeamLook look = reader.At(state.Request, state.Domain, state.Coefficients);
        LayoutRequest asked = request with
        {
            Part = request.Part with { Outline = Outline.From(look.Outline), Arcs = null },
            Rules = request.Rules with { WarpAngleDeg = null },
            Effort = 1,
        };
        SearchEffort effort = SearchEffort.Of(asked);
        PoseModel? lattice = PlaneLattice.Best(asked, new RowTables(asked, TiltRange.Of(asked.Rules), effort), effort, stop)?.Model;
        return lattice is null ? null : Search(LimitsAt(double.PositiveInfinity)).Point(
            state, new SeamLay { Model = lattice, PanelsPerCost = 1, WidthMm = 1, Warp = null });
    }

    /// <summary>The mark of a limit; limits must come from the greatest down.</summary>
    /// <exception cref="NoAnswerException">No seam of the family keeps the limits.</exception>
    public SeamMark Mark(double stretchPercent, CancellationToken stop)
    {
        SeamLimits limits = LimitsAt(stretchPercent);
        if (plane is null || !SeamMeasuring.Excess(plane, limits).IsNone)
        {
            (planeTrial, plane, RollLayout layout, LayoutRequest request) = Least([planeTrial, begun], limits, stop);
            rowsTrial = SeamRowsLay.Of(request, layout) is { } rows ? Search(limits).Point(planeTrial.State, rows) : null;
            others = variables.Orders.Count > 0 ? OtherRowsOf(request, planeTrial, plane, limits, stop) : [];
            roll = null;
        }

        if (roll is null || !SeamMeasuring.Excess(roll, limits).IsNone)
        {
            roll = OnRoll(limits, stop);
        }

        return new SeamMark { StretchLimitPercent = stretchPercent, Curve = variables.Family, Plane = plane, Roll = roll };
    }

    // The best on the roll: designed for its rows, or the plane's where that is no better or was lost. A waist alone is left to the plane:
    // it follows the rows hardly anywhere.
    private SeamChoice OnRoll(SeamLimits limits, CancellationToken stop)
    {
        if (variables.Orders.Count == 0 || (rollTrial is null && rowsTrial is null && others.Length == 0))
        {
            return plane!;
        }

        SeamChoice best = plane!;
        for (int round = 0; round < RollRounds; round++)
        {
            try
            {
                (rollTrial, SeamChoice designed, RollLayout layout, LayoutRequest request) =
                    Least([rollTrial, rowsTrial, .. others], limits, stop);
                others = [];
                best = designed.RollSquareMetres < best.RollSquareMetres ? designed : best;

                // The layout of the designed panel may have found other rows, which are designed for in turn.
                SeamLay? rows = SeamRowsLay.Of(request, layout);
                if (rows is null || rows.FeltMm2 > rollTrial.Lay.FeltMm2 * (1 - OtherRows))
                {
                    break;
                }

                rowsTrial = Search(limits).Point(rollTrial.State, rows);
            }
            catch (NoAnswerException)
            {
                break;
            }
        }

        return best;
    }

    // Other places to begin from on the roll: the next best number of rows, which may gain more from the design, and where the angle to the
    // warp is free the tilt at which the panel would lie best.
    private SeamTrial[] OtherRowsOf(
        LayoutRequest request, SeamTrial trial, SeamChoice choice, SeamLimits limits, CancellationToken stop)
    {
        SeamTrial? next = LayoutSearch.Front(request, NextRows, stop).Skip(1).Select(lay => SeamRowsLay.Of(request, lay)).OfType<SeamLay>()
            .Select(rows => Search(limits).Point(trial.State, rows)).OfType<SeamTrial>().FirstOrDefault();
        SeamTrial? turned = variables.TurnsWarp ? AtItsTilt(trial.State, choice, limits, stop) : null;
        return [.. new[] { next, turned }.OfType<SeamTrial>()];
    }

    // The panel designed anew for the tilt at which it would lie best, and laid in the rows found there.
    private SeamTrial? AtItsTilt(SeamState state, SeamChoice choice, SeamLimits limits, CancellationToken stop)
    {
        (LayoutRequest request, RollLayout layout) = measuring.Free(choice, stop);
        double tilt = layout.Bands[0].Repeat.Panels[0].AngleDeg;
        LayoutRequest turned = request with { Rules = request.Rules with { WarpAngleDeg = tilt } };
        try
        {
            return SeamRowsLay.Of(turned, layout) is { } rows
                ? Search(limits).Point(solver.First(variables.TurnedTo(state.Values, tilt)), rows) : null;
        }
        catch (NoAnswerException)
        {
            return null;
        }
    }

    private SeamLimits LimitsAt(double stretchPercent) => question.Limits with { StretchPercent = stretchPercent };

    private SeamSearch Search(SeamLimits limits) => new(variables, solver, reader, limits with
    {
        StretchPercent = limits.StretchPercent - tighter.Stretch,
        CompressionPercent = limits.CompressionPercent - tighter.Compression,
        LeastRadiusMm = limits.LeastRadiusMm + tighter.Radius,
        LeastRunMm = limits.LeastRunMm + tighter.Run,
        MostGapMm = limits.MostGapMm - tighter.Gap,
    }, leastChart);

    // Searches from several starts, and measures the best of them until it keeps the limits.
    private (SeamTrial Trial, SeamChoice Choice, RollLayout Layout, LayoutRequest Request) Least(
        IEnumerable<SeamTrial?> starts, SeamLimits limits, CancellationToken stop)
    {
        SeamTrial trial = starts.OfType<SeamTrial>().Distinct().Select(start => Moved(start, limits, stop))
            .OrderBy(end => end.Violation > Inside).ThenBy(end => end.Lay.FeltMm2).First();
        for (int i = 0; i < MostCorrections; i++)
        {
            if (Measured(trial, stop) is not var (choice, request, layout))
            {
                // The full panel was not found: tips that are rounder have one.
                leastChart *= Rounder;
                trial = Moved(trial, limits, stop);
                continue;
            }

            SeamExcess excess = SeamMeasuring.Excess(choice, limits);
            if (excess.IsNone)
            {
                return (trial, choice, layout, request);
            }

            tighter = new SeamExcess
            {
                Stretch = Tightened(tighter.Stretch, excess.Stretch),
                Compression = Tightened(tighter.Compression, excess.Compression),
                Radius = Tightened(tighter.Radius, excess.Radius),
                Run = Tightened(tighter.Run, excess.Run),
                Gap = Tightened(tighter.Gap, excess.Gap),
            };
            trial = Moved(trial, limits, stop);
        }

        throw new NoAnswerException(FormattableString.Invariant(
            $"no {EnumWord.Of(variables.Family)} seam was found that keeps the limits at {limits.StretchPercent:0.##} % of stretch"));
    }

    private SeamTrial Moved(SeamTrial start, SeamLimits limits, CancellationToken stop)
    {
        SeamSearch search = Search(limits);
        SeamTrial end = search.Run(search.Rejudged(start), MostSteps, stop);
        Solves += search.Solves;
        return end;
    }

    private (SeamChoice Choice, LayoutRequest Request, RollLayout Layout)? Measured(SeamTrial trial, CancellationToken stop)
    {
        try
        {
            return measuring.Of(variables.BallOf([.. trial.State.Values.Select(value => Math.Round(value, Digits))]), stop);
        }
        catch (NoAnswerException)
        {
            return null;
        }
    }

    private static double Tightened(double before, double excess) => excess > 0 ? before + excess + Inside : before;
}
