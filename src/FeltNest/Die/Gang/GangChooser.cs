using System.Globalization;
using FeltNest.Die.Edge;
using FeltNest.Die.Effort;
using FeltNest.Die.Make;
using FeltNest.Die.Order;
using FeltNest.Die.SharedRule;
using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Layout.Limits;
using FeltNest.Rolls;

namespace FeltNest.Die.Gang;

/// <summary>Chooses the cavities of a die: whole repeats of a band or an equal share of them, as many as the press takes.</summary>
internal static class GangChooser
{
    /// <summary>Most cavities of one die.</summary>
    public const int MostCavities = 2000;

    // Most repeats to one feed that are tried.
    private const int MostRepeats = 60;

    // Boards are cut to whole steps of this, mm.
    private const double BoardStepMm = 1;

    // What the length of a die may differ by when it is told from one repeat instead of all, mm.
    private const double FoldSlackMm = 1e-3;

    /// <summary>The gang of a question.</summary>
    /// <param name="request">The question.</param>
    /// <param name="edges">Cutting edge of each part, by the part's place in the layout's list: where they are one line, a common cut
    /// is.</param>
    /// <param name="stop">Breaks the choice off.</param>
    /// <exception cref="InputException">A band that the layout does not have.</exception>
    /// <exception cref="OperationCanceledException">Broken off.</exception>
    /// <exception cref="NoAnswerException">The press is too small for the smallest die, or the count of cavities asked for does not
    /// tile.</exception>
    public static DieGang Choose(GangRequest request, IReadOnlyList<DieEdge?> edges, CancellationToken stop = default) =>
        Choose(request, edges, new DieWork(stop));

    /// <summary>The same, with its work counted: counts are chosen from first, and only a gang that may fit is built.</summary>
    internal static DieGang Choose(GangRequest request, IReadOnlyList<DieEdge?> edges, DieWork work)
    {
        RollLayout layout = request.Layout;
        if (request.Band < 0 || request.Band >= layout.Bands.Count)
        {
            throw new InputException(
                AskedFor.Band,
                $"{request.Band + 1} is not there: the layout has {layout.Bands.Count} band"
                    + $"{(layout.Bands.Count == 1 ? string.Empty : "s")}, counted from 1");
        }

        GangCount[] all = [.. Counts(request)];
        if (all.Length == 0)
        {
            throw new NoAnswerException(
                $"no share of this layout's repeat of {layout.Bands[request.Band].Repeat.Panels.Count} panels makes a die of at most "
                    + $"{MostCavities} cavities");
        }

        if (request.Cavities is { } wanted)
        {
            return Exact(request, edges, all, wanted, work);
        }

        return request.Press is { } press
            ? Largest(request, edges, all, press, work)
            : Of(request, edges, all.First(c => c.Repeats == 1), work);
    }

    private static DieGang Exact(GangRequest request, IReadOnlyList<DieEdge?> edges, GangCount[] all, int wanted, DieWork work)
    {
        GangCount[] exact = [.. all.Where(c => c.Cavities == wanted)];
        if (exact.Length == 0)
        {
            throw new NoAnswerException($"{wanted} cavities do not tile this layout: {Listed(all)} do");
        }

        return FirstThatFits(request, edges, exact, work)
            ?? throw new NoAnswerException(
                $"{wanted} cavities do not go on press {request.Press!.Name}: "
                    + $"{Shortage(request, edges, Of(request, edges, exact[0], work), work)}");
    }

    private static DieGang Largest(GangRequest request, IReadOnlyList<DieEdge?> edges, GangCount[] all, PressSpec press, DieWork work)
    {
        if (FirstThatFits(request, edges, all.OrderByDescending(c => c.Cavities).ThenBy(c => c.Places.Count), work) is { } best)
        {
            return best;
        }

        GangCount smallest = all.MinBy(c => c.Cavities)!;
        throw new NoAnswerException(
            $"press {press.Name} is too small for the smallest die that tiles this layout ({smallest.Cavities} cavities): "
                + $"{Shortage(request, edges, Of(request, edges, smallest, work), work)}");
    }

    /// <summary>Force of one strike of a gang.</summary>
    internal static CuttingForce Force(GangRequest request, IReadOnlyList<DieEdge?> edges, DieGang gang, DieWork work) => CuttingForce.Of(
        gang.Cavities.Sum(c => edges[c.Placed.Part]!.Arcs.Perimeter) - gang.Common.SharedMm,
        CloseRules.LengthMm(request.Layout.Parts, gang.Cavities, gang.Common, request.Order.Force.CloseMm, work), request.Order.Plies,
        request.Order.Force);

    // What a gang lacks on the press, or null where it fits. A force nobody measured does not decide.
    private static string? Shortage(GangRequest request, IReadOnlyList<DieEdge?> edges, DieGang gang, DieWork work)
    {
        if (request.Press is not { } press)
        {
            return null;
        }

        if (gang.BoardLengthMm > press.Bed.BoardLengthMm || gang.BoardWidthMm > press.Bed.BoardWidthMm)
        {
            return string.Create(
                CultureInfo.InvariantCulture,
                $"its board of {gang.BoardLengthMm:0.#} x {gang.BoardWidthMm:0.#} mm (along x across) needs a bed of "
                    + $"{gang.BoardLengthMm + (2 * press.Bed.MarginMm):0.#} x {gang.BoardWidthMm + (2 * press.Bed.MarginMm):0.#} mm, "
                    + $"the press has {press.Bed.LengthMm:0.#} x {press.Bed.WidthMm:0.#}");
        }

        if (request.Order.Force.Basis == ForceBasis.Measured
            && Force(request, edges, gang, work).Kn is var force
            && force > press.AllowedForceKn)
        {
            return string.Create(
                CultureInfo.InvariantCulture,
                $"it needs {force:0.0} kN, {press.AllowedSharePercent:0.#} % of the press's {press.RatedForceKn:0.#} kN is "
                    + $"{press.AllowedForceKn:0.0}: a press of {force / press.AllowedSharePercent * 100:0.0} kN would do");
        }

        return null;
    }

    private static string Listed(GangCount[] all) =>
        string.Join(", ", all.Select(c => c.Cavities).Distinct().Order().Take(12))
            + (all.Select(c => c.Cavities).Distinct().Count() > 12 ? " ..." : string.Empty);

    private static IEnumerable<GangCount> Counts(GangRequest request)
    {
        LayoutRepeat repeat = request.Layout.Bands[request.Band].Repeat;

        // A layout made for a die of a limited size is cut by that die.
        if (repeat.Strike is { } strike)
        {
            return [new GangCount([.. repeat.Panels.Take(strike.Panels)], strike.Places, 1)];
        }

        double longest = request.Press is { } press ? press.Bed.BoardLengthMm : double.PositiveInfinity;
        (IReadOnlyList<PlacedPanel> Share, IReadOnlyList<Point2> Places)[] shares = [.. StrikeDivision.Shares(repeat)];
        return Enumerable.Range(1, MostRepeats)
            .TakeWhile(times =>
                times == 1 || (repeat.Panels.Count * times <= MostCavities && times * repeat.LengthMm <= longest + repeat.LengthMm))
            .SelectMany(times => shares.Select(s => new GangCount(s.Share, s.Places, times))).Where(c => c.Cavities <= MostCavities);
    }

    private static DieGang? FirstThatFits(GangRequest request, IReadOnlyList<DieEdge?> edges, IEnumerable<GangCount> counts, DieWork work)
    {
        Dictionary<IReadOnlyList<PlacedPanel>, (double Length, double Width)> known = [];
        foreach (GangCount count in counts)
        {
            if (request.Press is { } press)
            {
                if (!known.TryGetValue(count.Share, out (double Length, double Width) one))
                {
                    known[count.Share] = one = Extent(request, count.Share, work);
                }

                // Every repeat more makes a die longer by just that.
                double land = (2 * request.Order.Board.LandMm) - FoldSlackMm;
                double length = one.Length + ((count.Repeats - 1) * request.Layout.Bands[request.Band].Repeat.LengthMm) + land;
                if (length > press.Bed.BoardLengthMm
                    || one.Width + land > press.Bed.BoardWidthMm
                    || LeastKn(request, edges, count) > press.AllowedForceKn)
                {
                    continue;
                }
            }

            DieGang gang = Of(request, edges, count, work);
            if (Shortage(request, edges, gang, work) is null)
            {
                return gang;
            }
        }

        return null;
    }

    // Less than this no die of so many cavities takes: no two rules close, and where cuts are common every one of them shared. A force
    // nobody measured does not decide.
    private static double LeastKn(GangRequest request, IReadOnlyList<DieEdge?> edges, GangCount count)
    {
        double alone = count.Repeats * count.Share.Sum(p => edges[p.Part]!.Arcs.Perimeter);
        double least = alone * (request.Order.CommonCut ? 0.5 : 1) * (1 - 1e-9);
        return request.Order.Force.Basis == ForceBasis.Measured
            ? CuttingForce.Of(least, 0, request.Order.Plies, request.Order.Force).Kn
            : 0;
    }

    // Extent of the cut edges of a share of one repeat, mm.
    private static (double Length, double Width) Extent(GangRequest request, IReadOnlyList<PlacedPanel> share, DieWork work)
    {
        (PlacedPanel Panel, Point2 Low, Point2 High)[] all = Turned(request.Layout.Parts, share, work);
        FeedFold fold = new(
            [.. all.Select(a => (a.Panel.XMm + a.Low.X, a.Panel.XMm + a.High.X))], request.Layout.Bands[request.Band].Repeat.LengthMm,
            work);
        return (fold.LengthMm, all.Max(a => a.Panel.YMm + a.High.Y) - all.Min(a => a.Panel.YMm + a.Low.Y));
    }

    // Panels with what their outlines reach about their own places as they lie.
    private static (PlacedPanel Panel, Point2 Low, Point2 High)[] Turned(
        IReadOnlyList<LayoutPart> parts, IReadOnlyList<PlacedPanel> panels, DieWork work)
    {
        Dictionary<(int, double), (Point2 Low, Point2 High)> known = [];
        return [.. panels.Select(p =>
        {
            work.Look();
            if (!known.TryGetValue((p.Part, p.AngleDeg), out (Point2 Low, Point2 High) box))
            {
                Outline turned = parts[p.Part].Outline.Turned(double.DegreesToRadians(p.AngleDeg));
                known[(p.Part, p.AngleDeg)] = box = (new(turned.MinX, turned.MinY), new(turned.MaxX, turned.MaxY));
            }

            return (p, box.Low, box.High);
        })];
    }

    private static DieGang Of(GangRequest request, IReadOnlyList<DieEdge?> edges, GangCount count, DieWork work)
    {
        work.Build();
        IReadOnlyList<LayoutPart> parts = request.Layout.Parts;
        double repeat = request.Layout.Bands[request.Band].Repeat.LengthMm;
        double feed = count.Repeats * repeat;
        (PlacedPanel Panel, Point2 Low, Point2 High)[] folded =
            Folded(Turned(parts, StrikeDivision.Written(count.Share, count.Repeats, repeat), work), feed, work);
        double minX = folded.Min(f => f.Panel.XMm + f.Low.X);
        double maxX = folded.Max(f => f.Panel.XMm + f.High.X);
        double minY = folded.Min(f => f.Panel.YMm + f.Low.Y);
        double maxY = folded.Max(f => f.Panel.YMm + f.High.Y);
        double length = Math.Ceiling((maxX - minX + (2 * request.Order.Board.LandMm) - 1e-9) / BoardStepMm) * BoardStepMm;
        double width = Math.Ceiling((maxY - minY + (2 * request.Order.Board.LandMm) - 1e-9) / BoardStepMm) * BoardStepMm;
        Point2 origin = new(((minX + maxX) / 2) - (length / 2), ((minY + maxY) / 2) - (width / 2));
        DieCavity[] cavities = [.. folded.Select(f => f.Panel with { XMm = f.Panel.XMm - origin.X, YMm = f.Panel.YMm - origin.Y })
            .OrderBy(p => Math.Round(p.YMm, 3)).ThenBy(p => p.XMm).Select((p, i) => new DieCavity(i + 1, p))];
        CommonCuts common = request.Order.CommonCut ? CommonCutFinder.Of(cavities, edges, work) : CommonCuts.None;
        Point2 load = GangLoad.Centre(parts, cavities, common);
        return new DieGang
        {
            Band = request.Band,
            Cavities = cavities,
            Repeats = count.Repeats,
            FeedMm = feed,
            Places = count.Places,
            Origin = origin,
            EdgeLengthMm = maxX - minX,
            EdgeWidthMm = maxY - minY,
            BoardLengthMm = length,
            BoardWidthMm = width,
            LoadCentre = load,
            BoardCentreOnBed = GangLoad.OnBed(request.Press, length, width, load),
            Common = common,
        };
    }

    // Of the copies one feed apart those are taken that make the die shortest.
    private static (PlacedPanel Panel, Point2 Low, Point2 High)[] Folded(
        (PlacedPanel Panel, Point2 Low, Point2 High)[] all, double feed, DieWork work)
    {
        FeedFold fold = new([.. all.Select(a => (a.Panel.XMm + a.Low.X, a.Panel.XMm + a.High.X))], feed, work);
        return [.. all.Select(a => (a.Panel with { XMm = a.Panel.XMm + fold.Move(a.Panel.XMm + a.Low.X) }, a.Low, a.High))];
    }
}
