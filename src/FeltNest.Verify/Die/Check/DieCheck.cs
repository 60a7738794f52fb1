using FeltNest.Die.Edge;
using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Layout.Check;
using NetTopologySuite.Geometries;
using static FeltNest.InvariantText;

namespace FeltNest.Die.Check;

/// <summary>Verifies a die from its file alone with NetTopologySuite; shares no code with the design.</summary>
/// <remarks>Strikes at every place one feed apart must be the layout's band, each panel once. Edges may lie 0.02 mm off the true outline.
/// Gaps are measured again, between strikes at 25 places of the play of feed and guide. Where no gap is left, the rule that cavities share
/// is measured again (<see cref="CommonCutCheck"/>). The layout itself is checked by <see cref="LayoutCheck"/>.</remarks>
internal sealed class DieCheck
{
    private const double PlaceSlack = 1e-4;
    private const double EdgeMost = 0.02;
    private const double EdgeSlack = 1e-4;

    // How far the arcs of a computed panel may lie off its curve, mm, as its file promises.
    private const double PanelArcsMm = 0.01;

    private readonly RollLayout layout;
    private readonly StatedDie die;
    private readonly List<string> violations = [];

    private DieCheck(RollLayout layout, StatedDie die) => (this.layout, this.die) = (layout, die);

    /// <summary>Checks a die; the verdict's gap is the least between two cuts of one strike or of two.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="die">The die.</param>
    /// <param name="board">Its board for the laser as drawn, or null where that is not asked about.</param>
    public static CheckVerdict Verify(RollLayout layout, StatedDie die, StatedBoardCut? board = null) =>
        new DieCheck(layout, die).Run(board);

    private CheckVerdict Run(StatedBoardCut? board)
    {
        CheckVerdict lay = LayoutCheck.Verify(layout);
        violations.AddRange(lay.Violations);
        CheckEdges();

        DieGapCheck gaps = new(layout, die, violations);
        gaps.Run(Tiles());
        CheckBoard();
        OwnRuleCheck.Run(die, violations);
        CloseRuleCheck.Run(layout, die, violations);
        RuleStripCheck.Run(die, violations);
        if (board is not null)
        {
            BoardCutCheck.Run(die, board, violations);
        }

        double shared = layout.GapMm == 0 || die.CommonCuts.Count > 0 ? new CommonCutCheck(die).Run(die, violations) : 0;
        foreach ((string field, double stated, double found, double slack) in RuleLengthCheck.Of(layout, die, shared))
        {
            StatedNumber.Same(violations, field, stated, found, slack);
        }

        StatedNumber.Same(violations, "forceKn", die.ForceKn, die.Force.Kn, 1e-6 * die.Force.Kn);
        return new CheckVerdict(double.IsInfinity(gaps.LeastMm) ? null : gaps.LeastMm, gaps.Pairs, violations);
    }

    private bool Tiles()
    {
        LayoutRepeat repeat = layout.Bands[die.Band].Repeat;
        double repeats = die.FeedMm / repeat.LengthMm;
        int count = (int)Math.Round(repeats);
        if (count < 1 || Math.Abs((count * repeat.LengthMm) - die.FeedMm) > PlaceSlack)
        {
            violations.Add(Invariant($"feed {die.FeedMm:0.####} mm is not a whole number of repeats of {repeat.LengthMm:0.####} mm"));
            return false;
        }

        long struck = (long)die.Cavities.Count * die.Places.Count;
        long wanted = (long)count * repeat.Panels.Count;
        if (struck != wanted)
        {
            violations.Add($"strikes do not tile the layout: {struck} cuts to a feed, which has {wanted} panels");
            return false;
        }

        OpenPanels open = Open(repeat, count);
        int missed = Missed(open);
        if (missed > 0 || open.Count > 0)
        {
            violations.Add(
                $"strikes do not tile the layout: of {struck} cuts to a feed {missed} are no panel of it (or one cut twice), of "
                    + $"{wanted} panels {open.Count} are missed");
            return false;
        }

        return true;
    }

    // The panels of one feed of the layout.
    private OpenPanels Open(LayoutRepeat repeat, int repeats)
    {
        OpenPanels open = new(die.FeedMm);
        for (int k = 0; k < repeats; k++)
        {
            foreach (PlacedPanel panel in repeat.Panels)
            {
                open.Add(panel with { XMm = panel.XMm + (k * repeat.LengthMm) });
            }
        }

        return open;
    }

    // Cuts of one feed that are no panel still open; those that are one close it.
    private int Missed(OpenPanels open)
    {
        int missed = 0;
        foreach (Point2 place in die.Places)
        {
            foreach (PlacedPanel cavity in die.Cavities)
            {
                missed +=
                    open.Take(cavity with { XMm = cavity.XMm + die.Origin.X + place.X, YMm = cavity.YMm + die.Origin.Y + place.Y }) ? 0 : 1;
            }
        }

        return missed;
    }

    private void CheckEdges()
    {
        foreach (int part in die.Cavities.Select(c => c.Part).Distinct())
        {
            DieEdge edge = new()
            {
                Arcs = die.Edges[part],
                Corners = [],
                OffLayoutMm = 0,
                LayoutOffMm = 0,
                Mirrors = EdgeMirrors.None,
                HalfTurn = false,
            };
            EdgeVerdict found = DieEdgeCheck.Measure(layout.Parts[part], edge);
            double most = EdgeMost - (layout.Parts[part].Ball is null ? 0 : PanelArcsMm) + EdgeSlack;
            if (found.OffMm > most)
            {
                violations.Add(
                    Invariant(
                        $"edge of part {part}: {found.OffMm:0.####} mm off the outline of the layout, at most {most:0.####} is allowed"));
            }

            if (found.TangentBreakDeg > 0.1)
            {
                violations.Add(
                    Invariant(
                        $"edge of part {part}: bends by {found.TangentBreakDeg:0.###} degrees at a joint where the part has no corner"));
            }
        }
    }

    private void CheckBoard()
    {
        foreach ((PlacedPanel cavity, int i) in die.Cavities.Select((c, i) => (c, i)))
        {
            Envelope at = PlacedShape.Of(layout, cavity).EnvelopeInternal;
            double land = Math.Min(Math.Min(at.MinX, at.MinY), Math.Min(die.BoardLengthMm - at.MaxX, die.BoardWidthMm - at.MaxY));
            if (land < die.LandMm - PlaceSlack)
            {
                violations.Add(Invariant($"cavity {i + 1}: {land:0.###} mm from the board's side, {die.LandMm:0.###} is promised"));
                return;
            }
        }
    }
}
