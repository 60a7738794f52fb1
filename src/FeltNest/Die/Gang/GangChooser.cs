using FeltNest.Die.Edge;
using FeltNest.Die.Make;
using FeltNest.Die.Order;
using FeltNest.Die.SharedRule;
using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Layout.Limits;
using FeltNest.Rolls.Presses;

namespace FeltNest.Die.Gang;

/// <summary>Chooses the cavities of a die: whole repeats of a band or an equal share of them, as many as the press takes.</summary>
public static class GangChooser
{
    /// <summary>Most cavities of one die.</summary>
    public const int MostCavities = 2000;

    // Most repeats to one feed that are tried.
    private const int MostRepeats = 60;

    // Boards are cut to whole steps of this, mm.
    private const double BoardStepMm = 1;

    /// <summary>The gang of a question.</summary>
    /// <param name="request">The question.</param>
    /// <param name="edges">Cutting edge of each part, by the part's place in the layout's list: where they are one line, a common cut is.</param>
    /// <param name="stop">Breaks the choice off.</param>
    /// <exception cref="InputException">A band that the layout does not have.</exception>
    /// <exception cref="OperationCanceledException">Broken off.</exception>
    /// <exception cref="NoAnswerException">The press is too small for the smallest die, or the count of cavities asked for does not tile.</exception>
    public static DieGang Choose(GangRequest request, IReadOnlyList<DieEdge?> edges, CancellationToken stop = default)
    {
        RollLayout layout = request.Layout;
        if (request.Band < 0 || request.Band >= layout.Bands.Count)
        {
            throw new InputException(null, "band", $"{request.Band + 1} is not there: the layout has {layout.Bands.Count} band{(layout.Bands.Count == 1 ? string.Empty : "s")}, counted from 1");
        }

        DieGang[] all = [.. Candidates(request, edges).TakeWhile(_ => !stop.IsCancellationRequested)];
        stop.ThrowIfCancellationRequested();
        if (request.Cavities is { } wanted)
        {
            DieGang[] exact = [.. all.Where(g => g.Cavities.Count == wanted)];
            if (exact.Length == 0)
            {
                throw new NoAnswerException($"{wanted} cavities do not tile this layout: {Counts(all)} do");
            }

            return exact.FirstOrDefault(g => Shortage(request, g) is null) ?? throw new NoAnswerException($"{wanted} cavities do not go on press {request.Press!.Name}: {Shortage(request, exact[0])}");
        }

        if (request.Press is null)
        {
            return all.First(g => g.Repeats == 1);
        }

        DieGang? best = all.Where(g => Shortage(request, g) is null).OrderByDescending(g => g.Cavities.Count).ThenBy(g => g.Places.Count).FirstOrDefault();
        return best ?? throw new NoAnswerException(
            $"press {request.Press.Name} is too small for the smallest die that tiles this layout ({all.MinBy(g => g.Cavities.Count)!.Cavities.Count} cavities): {Shortage(request, all.MinBy(g => g.Cavities.Count)!)}");
    }

    /// <summary>Force of one strike of a gang.</summary>
    public static CuttingForce Force(GangRequest request, DieGang gang) => CuttingForce.Of(
        gang.Cavities.Sum(c => request.Layout.Parts[c.Placed.Part].PerimeterMm) - gang.Common.SharedMm,
        CloseRules.LengthMm(request.Layout.Parts, gang.Cavities, gang.Common, request.Order.Force.CloseMm), request.Order.Plies, request.Order.Force);

    // What a gang lacks on the press, or null where it fits. A force nobody measured does not decide.
    private static string? Shortage(GangRequest request, DieGang gang)
    {
        if (request.Press is not { } press)
        {
            return null;
        }

        if (gang.BoardLengthMm > press.Bed.BoardLengthMm || gang.BoardWidthMm > press.Bed.BoardWidthMm)
        {
            return FormattableString.Invariant(
                $"its board of {gang.BoardLengthMm:0.#} x {gang.BoardWidthMm:0.#} mm (along x across) needs a bed of {gang.BoardLengthMm + (2 * press.Bed.MarginMm):0.#} x {gang.BoardWidthMm + (2 * press.Bed.MarginMm):0.#} mm, the press has {press.Bed.LengthMm:0.#} x {press.Bed.WidthMm:0.#}");
        }

        if (request.Order.Force.Basis == ForceBasis.Measured && Force(request, gang).Kn is var force && force > press.AllowedForceKn)
        {
            return FormattableString.Invariant(
                $"it needs {force:0.0} kN, {press.AllowedSharePercent:0.#} % of the press's {press.RatedForceKn:0.#} kN is {press.AllowedForceKn:0.0}: a press of {force / press.AllowedSharePercent * 100:0.0} kN would do");
        }

        return null;
    }

    private static string Counts(DieGang[] all) => string.Join(", ", all.Select(g => g.Cavities.Count).Distinct().Order().Take(12)) + (all.Select(g => g.Cavities.Count).Distinct().Count() > 12 ? " ..." : string.Empty);

    private static IEnumerable<DieGang> Candidates(GangRequest request, IReadOnlyList<DieEdge?> edges)
    {
        LayoutRepeat repeat = request.Layout.Bands[request.Band].Repeat;

        // A layout made for a die of a limited size is cut by that die.
        if (repeat.Strike is { } strike)
        {
            yield return Of(request, edges, [.. repeat.Panels.Take(strike.Panels)], 1, repeat.LengthMm, strike.Places);
            yield break;
        }

        int count = repeat.Panels.Count;
        double longest = request.Press is { } press ? press.Bed.BoardLengthMm : double.PositiveInfinity;
        for (int times = 1; times <= MostRepeats && count * times <= MostCavities && (times == 1 || times * repeat.LengthMm <= longest + repeat.LengthMm); times++)
        {
            for (int share = 1; share <= count; share++)
            {
                int cavities = count / share * times;
                if (count % share == 0 && StrikeDivision.Divided(repeat, times, request.Layout.Parts, new DieLimit(cavities, null, null)) is { Strike: { } block } divided && block.Panels == cavities)
                {
                    yield return Of(request, edges, [.. divided.Panels.Take(cavities)], times, divided.LengthMm, block.Places);
                }
            }
        }
    }

    private static DieGang Of(GangRequest request, IReadOnlyList<DieEdge?> edges, PlacedPanel[] panels, int repeats, double feed, IReadOnlyList<Point2> places)
    {
        IReadOnlyList<LayoutPart> parts = request.Layout.Parts;
        (PlacedPanel Panel, Outline Turned)[] all = [.. panels.Select(p => (p, parts[p.Part].Outline.Turned(double.DegreesToRadians(p.AngleDeg))))];

        // Of the copies one feed apart those are taken that make the die shortest.
        double Fold(double left, double cut) => -Math.Floor(((left - cut) / feed) + 1e-9) * feed;
        double start = all.Select(a => a.Panel.XMm + a.Turned.MinX).MinBy(cut => all.Max(a => a.Panel.XMm + a.Turned.MaxX + Fold(a.Panel.XMm + a.Turned.MinX, cut)) - cut);
        (PlacedPanel Panel, Outline Turned)[] folded = [.. all.Select(a => (a.Panel with { XMm = a.Panel.XMm + Fold(a.Panel.XMm + a.Turned.MinX, start) }, a.Turned))];
        double minX = folded.Min(f => f.Panel.XMm + f.Turned.MinX), maxX = folded.Max(f => f.Panel.XMm + f.Turned.MaxX);
        double minY = folded.Min(f => f.Panel.YMm + f.Turned.MinY), maxY = folded.Max(f => f.Panel.YMm + f.Turned.MaxY);
        double length = Math.Ceiling((maxX - minX + (2 * request.Order.Board.LandMm) - 1e-9) / BoardStepMm) * BoardStepMm;
        double width = Math.Ceiling((maxY - minY + (2 * request.Order.Board.LandMm) - 1e-9) / BoardStepMm) * BoardStepMm;
        Point2 origin = new(((minX + maxX) / 2) - (length / 2), ((minY + maxY) / 2) - (width / 2));
        DieCavity[] cavities = [.. folded.Select(f => f.Panel with { XMm = f.Panel.XMm - origin.X, YMm = f.Panel.YMm - origin.Y })
            .OrderBy(p => Math.Round(p.YMm, 3)).ThenBy(p => p.XMm).Select((p, i) => new DieCavity(i + 1, p))];
        CommonCuts common = request.Order.CommonCut ? CommonCuts.Of(cavities, edges) : CommonCuts.None;
        Point2 load = LoadCentre(parts, cavities, common);
        return new DieGang(request.Band, cavities, repeats, feed, places, origin, maxX - minX, maxY - minY, length, width, load, OnBed(request.Press, length, width, load), common);
    }

    // Centre of the length of rule: every edge, less what two cavities share once.
    private static Point2 LoadCentre(IReadOnlyList<LayoutPart> parts, DieCavity[] cavities, CommonCuts common)
    {
        (Point2 Centre, double Length)[] weights =
        [
            .. cavities.Select(c => (new Point2(c.Placed.XMm, c.Placed.YMm) + EdgeCentre(parts[c.Placed.Part]).Turned(double.DegreesToRadians(c.Placed.AngleDeg)), parts[c.Placed.Part].PerimeterMm)),
            .. common.Runs.Where(r => r.Other is not null).Select(r => (r.Centre, -r.LengthMm)),
        ];
        double total = weights.Sum(w => w.Length);
        return weights.Aggregate(default(Point2), (sum, w) => sum + (w.Centre * (w.Length / total)));
    }

    // The board is moved off the bed's centre as far as that brings the load to it and the bed has room.
    private static Point2 OnBed(PressSpec? press, double length, double width, Point2 load)
    {
        if (press is null)
        {
            return default;
        }

        double roomX = Math.Max(0, (press.Bed.BoardLengthMm - length) / 2), roomY = Math.Max(0, (press.Bed.BoardWidthMm - width) / 2);
        return new Point2(Math.Clamp((length / 2) - load.X, -roomX, roomX), Math.Clamp((width / 2) - load.Y, -roomY, roomY));
    }

    // Centre of the length of a part's polygon: what a rule weighs evenly.
    private static Point2 EdgeCentre(LayoutPart part)
    {
        IReadOnlyList<Point2> points = part.Outline.Points;
        Point2 sum = default;
        for (int i = 0; i < points.Count; i++)
        {
            Point2 a = points[i], b = points[(i + 1) % points.Count];
            sum += (a + b) * (0.5 * (b - a).Length);
        }

        return sum * (1 / part.Outline.Perimeter);
    }
}
