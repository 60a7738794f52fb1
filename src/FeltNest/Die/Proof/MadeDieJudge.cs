using FeltNest.Die.Check;
using FeltNest.Geometry;
using FeltNest.Layout;

namespace FeltNest.Die.Proof;

/// <summary>Holds a die as it was made against its drawing: each edge by its best zone, each cavity by its place.</summary>
internal static class MadeDieJudge
{
    // The polygon stays within this of the edge, mm: far below what can be measured.
    private const double Chord = 0.001;

    // A mirrored fit has to leave less than this share of the distances before the die counts as seen from behind.
    private const double MirrorShare = 0.4;

    /// <summary>Judges the rings measured.</summary>
    /// <param name="die">The die as drawn.</param>
    /// <param name="rings">Points of its cavities, all in one frame.</param>
    /// <param name="rule">By what its edges are judged.</param>
    /// <param name="positionMm">Position tolerance, mm.</param>
    /// <exception cref="InputException">Rings that are not those of this die, or too few points of one.</exception>
    public static MadeDie Of(StatedDie die, IReadOnlyList<MeasuredRing> rings, ProfileRule rule, double positionMm)
    {
        Dictionary<int, OutlineFeet> edges =
            die.Edges.ToDictionary(pair => pair.Key, pair => new OutlineFeet(pair.Value.ContainingPolygon(Chord)));
        Point2[] wanted = [.. die.Cavities.Select(placed => Home(placed).Apply(edges[placed.Part].Centre))];
        (IReadOnlyList<int> match, bool mirrored) = Matched(rings, wanted);
        IReadOnlyList<MeasuredRing> seen = mirrored ? Mirrored(rings) : rings;
        RigidMove rough = rule.InFrame ? RigidMove.None : PlaceFit.Squares([.. seen.Select((ring, i) => (Middle(ring), wanted[match[i]]))]);
        Ring[] found =
        [
            .. seen.Select((ring, i) => Fitted(
                match[i] + 1, ring, edges[die.Cavities[match[i]].Part], rule, rough, Home(die.Cavities[match[i]]), seen.Count > 1)),
        ];
        RigidMove pose = rule.InFrame
            ? RigidMove.None
            : PlaceFit.Settle([.. found.Select(ring => (ring.Middle, wanted[ring.Number - 1]))]);
        MadeCavity[] cavities =
            [.. found.OrderBy(r => r.Number).Select(r => Cavity(die, r, wanted[r.Number - 1], pose, edges, positionMm))];
        return new MadeDie
        {
            Name = die.Name,
            Rule = rule,
            PositionMm = positionMm,
            Cavities = cavities,
            NotMeasured = [.. Enumerable.Range(1, wanted.Length).Except(cavities.Select(c => c.Number))],
            TurnDeg = pose.TurnDeg,
            Mirrored = mirrored,
            Bends = [.. edges.OrderBy(e => e.Key).SelectMany(e => Bends(e.Key, e.Value.Outline, die, cavities))],
        };
    }

    private static MeasuredRing[] Mirrored(IEnumerable<MeasuredRing> rings) =>
        [.. rings.Select(ring => ring with { Points = [.. ring.Points.Select(p => new Point2(-p.X, p.Y))] })];

    // Which ring is which cavity; where the list does not say it, and where it lies much better mirrored, the die was seen from behind.
    private static (IReadOnlyList<int> Match, bool Mirrored) Matched(IReadOnlyList<MeasuredRing> rings, Point2[] wanted)
    {
        if (rings.FirstOrDefault(ring => ring.Cavity is null) is null)
        {
            int[] named = [.. rings.Select(ring => ring.Cavity!.Value - 1)];
            double straight = Left(rings, named, wanted);
            double turned = Left(Mirrored(rings), named, wanted);
            return (named, turned < MirrorShare * straight && straight > 1);
        }

        try
        {
            return (CavityMatch.Of([.. rings.Select(Middle)], wanted), false);
        }
        catch (InputException) when (rings.Count > 2)
        {
            return (CavityMatch.Of([.. Mirrored(rings).Select(Middle)], wanted), true);
        }
    }

    private static double Left(IReadOnlyList<MeasuredRing> rings, int[] named, Point2[] wanted)
    {
        (Point2 From, Point2 To)[] pairs = [.. rings.Select((ring, i) => (Middle(ring), wanted[named[i]]))];
        RigidMove pose = PlaceFit.Squares(pairs);
        return Math.Sqrt(pairs.Average(p => (pose.Apply(p.From) - p.To) is var off ? off.Dot(off) : 0));
    }

    // Middle of the box round a ring: near enough to tell cavities apart, however the points are spread.
    private static Point2 Middle(MeasuredRing ring) => new(
        (ring.Points.Min(p => p.X) + ring.Points.Max(p => p.X)) / 2, (ring.Points.Min(p => p.Y) + ring.Points.Max(p => p.Y)) / 2);

    private static RigidMove Home(PlacedPanel placed) =>
        new(double.DegreesToRadians(placed.AngleDeg), new Point2(placed.XMm, placed.YMm));

    // Laid roughly where it belongs first, so that an edge that is the same after half a turn keeps its own ends. One ring alone tells no
    // turn.
    private static Ring Fitted(
        int number, MeasuredRing ring, OutlineFeet edge, ProfileRule rule, RigidMove rough, RigidMove home, bool turnIsKnown)
    {
        Point2[] near = [.. ring.Points.Select(p => home.Back(rough.Apply(p)))];
        (MeasuredPanel panel, RigidMove pose) = PanelFitter.Laid(edge, near, rule with { InFrame = false }, turnIsKnown);
        Point2 middle = rough.Back(home.Apply(pose.Back(edge.Centre)));
        return new Ring(number, ring.Points, panel, middle);
    }

    private static MadeCavity Cavity(
        StatedDie die, Ring ring, Point2 wanted, RigidMove pose, Dictionary<int, OutlineFeet> edges, double positionMm)
    {
        PlacedPanel placed = die.Cavities[ring.Number - 1];
        OutlineFeet feet = edges[placed.Part];
        RigidMove home = Home(placed);
        Point2 off = pose.Apply(ring.Middle) - wanted;
        double inPlace = ring.Points
            .Select(p => feet.Foot(home.Back(pose.Apply(p))).Signed)
            .MaxBy(Math.Abs);
        double? uncertainty = ring.Panel.Rule.UncertaintyMm;
        double limit = (ring.Panel.Rule.ToleranceMm + positionMm) / 2;
        double guard = ConformityRule.AcceptGuard(uncertainty);
        double reject = ConformityRule.RejectGuard(uncertainty, ring.Points.Count);
        Conformity place = ConformityRule.Of(off.Length, off.Length, positionMm / 2, guard, ConformityRule.RejectGuard(uncertainty, 1));
        Conformity shape = ConformityRule.Of(Math.Abs(inPlace), Math.Abs(inPlace), limit, guard, reject);
        return new MadeCavity
        {
            Number = ring.Number,
            Edge = ring.Panel,
            Wanted = wanted,
            OffMm = off,
            InPlaceMm = inPlace,
            Position = Worse(place, shape),
        };
    }

    private static Conformity Worse(Conformity a, Conformity b)
    {
        if (a == Conformity.DoesNotConform || b == Conformity.DoesNotConform)
        {
            return Conformity.DoesNotConform;
        }

        return a == Conformity.Conforms && b == Conformity.Conforms ? a : Conformity.Undecided;
    }

    // The mean of the cavities of a part; their scatter is the error, and with one cavity that of its points.
    private static IEnumerable<(int Part, OpenedBend Bend)> Bends(int part, Outline edge, StatedDie die, MadeCavity[] cavities)
    {
        IReadOnlyList<OpenedBend>[] all =
        [
            .. cavities.Where(c => die.Cavities[c.Number - 1].Part == part)
                .Select(c => BendOpening.Of(edge, [.. c.Edge.Points.Select(p => (p.AlongMm, p.OffMm))])),
        ];
        foreach (IGrouping<Point2, OpenedBend> same in all.SelectMany(bends => bends).GroupBy(b => b.Place))
        {
            double mean = same.Average(b => b.OpenedShare);
            double spread = same.Count() > 1
                ? Math.Sqrt(same.Sum(b => Math.Pow(b.OpenedShare - mean, 2)) / (same.Count() - 1) / same.Count())
                : same.First().ErrorShare;
            yield return (part, same.First() with { OpenedShare = mean, ErrorShare = spread });
        }
    }

    private sealed record Ring(int Number, IReadOnlyList<Point2> Points, MeasuredPanel Panel, Point2 Middle);
}
