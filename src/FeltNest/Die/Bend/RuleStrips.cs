using FeltNest.Die.Edge;
using FeltNest.Die.Order;
using FeltNest.Die.SharedRule;
using FeltNest.Geometry;

namespace FeltNest.Die.Bend;

/// <summary>Works out the pieces of rule of a die: blank lengths, bends, notches.</summary>
/// <remarks>Bend allowance = angle in radians x (inside radius + K x thickness). K is the shop's own, else 0.33 below an inside radius of
/// twice the thickness and 0.50 from there on (M. P. Groover, <em>Fundamentals of Modern Manufacturing</em>, chapter on sheet metal; from
/// memory).</remarks>
internal sealed class RuleStrips
{
    // Stretches shorter than this are none, mm.
    private const double Least = 1e-6;

    // Runs that begin and end this near to each other are one kind, mm.
    private const int Decimals = 3;

    private readonly DieEdge edge;
    private readonly EdgeWalk walk;
    private readonly DieRule rule;
    private readonly double[] bridges;
    private readonly double bridgeMm;
    private readonly Springback? springback;

    private RuleStrips(DieDesign design, int part)
    {
        edge = design.Edges[part]!;
        walk = new EdgeWalk(edge.Pieces);
        rule = design.Request.Order.Rule;
        bridges = [.. design.Places[part]!.Bridges.Select(b => walk.Along(b.Place)).Order()];
        bridgeMm = design.Request.Order.Board.BridgeMm;
        springback = design.Springback;
    }

    /// <summary>The pieces of a die, part by part.</summary>
    public static IReadOnlyList<RuleStrip> Of(DieDesign design) => [.. design.Parts.SelectMany(part => OfPart(design, part))];

    /// <summary>Share of the thickness from the inner face at which a bend keeps its length.</summary>
    public static double NeutralShare(DieRule rule, double insideRadiusMm) =>
        rule.NeutralShare ?? (insideRadiusMm < 2 * rule.ThicknessMm ? 0.33 : 0.5);

    private static IEnumerable<RuleStrip> OfPart(DieDesign design, int part)
    {
        RuleStrips of = new(design, part);
        List<(double From, double To, int Count)> stretches = [];
        int rings = 0;
        Dictionary<(double, double), int> runs = [];
        foreach ((int i, Gang.DieCavity cavity) in design.Gang.Cavities.Index().Where(c => c.Item.Placed.Part == part))
        {
            rings += design.Gang.Common.Has(i) ? 0 : 1;
            foreach (RuleRun run in design.Gang.Common.Of(i).Where(r => r.Cavity == i))
            {
                (double, double) kind = (Math.Round(run.FromMm, Decimals), Math.Round(run.ToMm, Decimals));
                runs[kind] = runs.GetValueOrDefault(kind) + 1;
            }
        }

        if (rings > 0)
        {
            double start = of.walk.Along(design.Places[part]!.Joint);
            stretches.Add((start, start + of.walk.Length, rings));
        }

        stretches.AddRange(runs.OrderBy(r => r.Key).Select(r => (r.Key.Item1, r.Key.Item2, r.Value)));
        int number = 1;
        foreach ((double from, double to, int count) in stretches)
        {
            double[] cuts = [from, .. of.Corners(from, to), to];
            for (int k = 0; k + 1 < cuts.Length; k++)
            {
                yield return of.Strip(cuts[k], cuts[k + 1]) with { Part = part, Number = number++, Count = count };
            }
        }
    }

    // Corners strictly between two lengths along the edge.
    private IEnumerable<double> Corners(double from, double to) => edge.Corners
        .Select(c => walk.Along(c, 0))
        .SelectMany(a => Turns(a))
        .Where(a => a > from + Least && a < to - Least)
        .Order();

    private IEnumerable<double> Turns(double along) => [along - walk.Length, along, along + walk.Length, along + (2 * walk.Length)];

    // Long because it goes once along the piece and then writes it down.
    private RuleStrip Strip(double from, double to)
    {
        double outside = rule.MiddleInWasteMm;
        double? start = MitreDeg(from);
        double? end = MitreDeg(to);
        double flat = Longer(start, outside);
        double middle = flat;
        List<RuleBend> bends = [];
        List<(double Edge, double Flat)> places = [(from, flat)];
        double along = from;
        foreach ((double length, double turn) in Runs(from, to))
        {
            along += length;
            if (turn == 0)
            {
                (flat, middle) = (flat + length, middle + length);
            }
            else
            {
                double bent = Math.Max(0, length + (outside * turn));
                RuleBend bend = Bend(flat, turn, bent / Math.Abs(turn));
                bends.Add(bend);
                (flat, middle) = (bend.ToMm, middle + bent);
            }

            places.Add((along, flat));
        }

        double over = Longer(end, outside);
        return new RuleStrip
        {
            Part = 0,
            Number = 0,
            Count = 0,
            MiddleMm = middle + over,
            BlankMm = flat + over,
            StartMitreDeg = start,
            EndMitreDeg = end,
            Bends = bends,
            Notches = [.. Notches(places)],
        };
    }

    // Lengths and turns of the edge from piece to piece. What joints turn that are no corners, some thousandths of a degree, belongs to the
    // bend before or after, so that a ring turns just once round.
    private (double Length, double Turn)[] Runs(double from, double to)
    {
        (int Piece, double First, double Last)[] spans = [.. walk.Between(from, to)];
        (double Length, double Turn)[] runs =
        [
            .. spans.Select(s => (walk.Pieces[s.Piece].LengthMm * (s.Last - s.First), walk.Pieces[s.Piece].Turn * (s.Last - s.First))),
        ];
        bool[] bends = [.. runs.Select(r => r.Turn != 0)];
        for (int k = 0; k < spans.Length; k++)
        {
            if (spans[k].First > 0 || edge.Corners.Contains(spans[k].Piece))
            {
                continue;
            }

            int nearest = Enumerable.Range(0, runs.Length).Where(n => bends[n]).OrderBy(n => n < k ? k - n : n - k + 1).FirstOrDefault(-1);
            if (nearest >= 0)
            {
                runs[nearest].Turn += Turned(spans[k].Piece);
            }
        }

        return runs;
    }

    // What the edge turns where a piece begins, radians.
    private double Turned(int piece)
    {
        Point2 a = walk.Pieces[(piece + walk.Pieces.Count - 1) % walk.Pieces.Count].Direction(1);
        Point2 b = walk.Pieces[piece].Direction(0);
        return Math.Atan2(a.Cross(b), a.Dot(b));
    }

    private RuleBend Bend(double from, double turn, double middleRadius)
    {
        double inside = Math.Max(0, middleRadius - (rule.ThicknessMm / 2));
        double share = NeutralShare(rule, inside);
        double deg = double.RadiansToDegrees(turn);
        return new RuleBend
        {
            FromMm = from,
            ToMm = from + (Math.Abs(turn) * (inside + (share * rule.ThicknessMm))),
            TurnDeg = deg,
            InsideRadiusMm = inside,
            NeutralShare = share,
            Setting = springback?.For(deg, inside),
        };
    }

    private IEnumerable<(double FromMm, double ToMm)> Notches(List<(double Edge, double Flat)> places)
    {
        double from = places[0].Edge;
        double to = places[^1].Edge;
        return bridges
            .SelectMany(Turns)
            .Select(b => (From: Math.Max(from, b - (bridgeMm / 2)), To: Math.Min(to, b + (bridgeMm / 2))))
            .Where(n => n.To - n.From > Least)
            .OrderBy(n => n.From)
            .Select(n => (Flat(places, n.From), Flat(places, n.To)));
    }

    private static double Flat(List<(double Edge, double Flat)> places, double at)
    {
        int k = 1;
        while (k + 1 < places.Count && places[k].Edge < at)
        {
            k++;
        }

        (double edge, double flat) = places[k - 1];
        double span = places[k].Edge - edge;
        return flat + ((places[k].Flat - flat) * (span > 0 ? (at - edge) / span : 0));
    }

    // Half the bend of the corner that stands at a length along, degrees, or null where none does.
    private double? MitreDeg(double along)
    {
        foreach (int corner in edge.Corners)
        {
            if (Turns(walk.Along(corner, 0)).Any(a => Math.Abs(a - along) < Least))
            {
                return double.RadiansToDegrees(Turned(corner)) / 2;
            }
        }

        return null;
    }

    // The middle of the body goes on to the mitre, as the length of the ring counts it.
    private static double Longer(double? mitreDeg, double outside) =>
        mitreDeg is { } deg ? outside * Math.Tan(double.DegreesToRadians(Math.Clamp(deg, -85, 85))) : 0;
}
