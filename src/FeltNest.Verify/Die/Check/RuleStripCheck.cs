using static FeltNest.InvariantText;

namespace FeltNest.Die.Check;

/// <summary>Folds the flat pieces of rule again by their tables, and cuts the stock again; shares no code with the design.</summary>
/// <remarks>A ring is laid as a path of straight runs and arcs of the middle of its body. It must turn once round, come back to where it
/// began, and be as long as a line beside the cutting edge walked in short chords. The neutral line keeps the length of a bend.</remarks>
internal static class RuleStripCheck
{
    // Lengths and closing this near are right, mm; angles, degrees.
    private const double Slack = 2e-3;
    private const double SlackDeg = 1e-4;

    // Joints of arcs turn by some thousandths of a degree, which the bend beside them takes: so far a ring may be from closing, mm.
    private const double Closing = 0.01;

    // The design counts sharper mitres as this sharp, degrees off square: such a ring is no closed path.
    private const double SharpestMitreDeg = 84;

    // Stages of the functions that bound a plan of stock from below.
    private const int MostStages = 60;

    /// <summary>Adds a line for whatever does not hold.</summary>
    public static void Run(StatedDie die, List<string> violations)
    {
        if (die.Strips is not { } strips || die.Own is not { } own)
        {
            return;
        }

        foreach ((int i, StatedStrip strip) in strips.Index())
        {
            Bends(i, strip, own.ThicknessMm, violations);
        }

        if (die.CommonCuts.Count == 0)
        {
            foreach (IGrouping<int, StatedStrip> ring in strips.GroupBy(s => s.Part))
            {
                Ring(ring.Key, [.. ring], die, own.ThicknessMm, violations);
            }
        }

        if (die.Stock is { } stock)
        {
            Stock(stock, strips, violations);
        }
    }

    // Each bend keeps its neutral length, bends follow each other, and notches lie on the piece.
    private static void Bends(int at, StatedStrip strip, double thick, List<string> violations)
    {
        double before = 0;
        foreach ((int k, (double from, double to, double turn, double inside, double share)) in strip.Bends.Index())
        {
            double length = Math.Abs(turn) * Math.PI / 180 * (inside + (share * thick));
            if (!(Math.Abs(to - from - length) <= Slack) || from < before - Slack || to > strip.BlankMm + Slack)
            {
                violations.Add(
                    Invariant($"strips[{at}].bends[{k}]: {from:0.###} to {to:0.###} is stated, a length of {length:0.###} was found"));
            }

            before = to;
        }

        if (strip.Notches.Any(n => n.From < -Slack || n.To > strip.BlankMm + Slack || n.To <= n.From))
        {
            violations.Add($"strips[{at}].notches: not on the piece");
        }
    }

    private static void Ring(int part, StatedStrip[] ring, StatedDie die, double thick, List<string> violations)
    {
        (_, double beside) = DieEdgeCheck.Lengths(die.Edges[part].Vertices, die.MiddleInWasteMm);
        int cavities = die.Cavities.Count(c => c.Part == part);
        if (ring.Any(s => s.Count != cavities))
        {
            violations.Add($"strips of part {part}: not one of each piece to each of {cavities} cavities");
        }

        StatedNumber.Same(violations, $"strips of part {part}: middleMm", ring.Sum(s => s.MiddleMm), beside, Slack);
        Folded folded = new();
        double grown = 0;
        foreach (StatedStrip strip in ring)
        {
            grown += strip.Bends.Sum(b => Math.Abs(b.TurnDeg) * Math.PI / 180 * ((0.5 - b.Share) * thick));
            folded.Add(strip, thick);
        }

        StatedNumber.Same(violations, $"strips of part {part}: blankMm", ring.Sum(s => s.BlankMm), beside - grown, Slack);
        StatedNumber.Same(violations, $"strips of part {part}: turn in degrees", folded.TurnedDeg, 360, SlackDeg);
        if (!folded.Sharp && !(folded.Off <= Closing))
        {
            violations.Add(Invariant($"strips of part {part}: folded by their bends they end {folded.Off:0.###} mm from where they began"));
        }
    }

    private static void Stock(StatedStock stock, IReadOnlyList<StatedStrip> strips, List<string> violations)
    {
        int[] cut = new int[strips.Count];
        foreach ((int i, (int times, IReadOnlyList<(int Strip, int Count)> pieces, double offcut)) in stock.Cuts.Index())
        {
            double used = pieces.Sum(p => p.Count * (strips[p.Strip].BlankMm + stock.LossMm)) - stock.LossMm;
            if (used > stock.LengthMm + Slack || Math.Abs(Math.Max(0, stock.LengthMm - used - stock.LossMm) - offcut) > Slack)
            {
                violations.Add(Invariant($"stock.cuts[{i}]: {used:0.###} of {stock.LengthMm:0.###} mm are used, {offcut:0.###} left over"));
            }

            foreach ((int strip, int count) in pieces)
            {
                cut[strip] += times * count;
            }
        }

        for (int i = 0; i < cut.Length; i++)
        {
            if (cut[i] != strips[i].Count * stock.Dies)
            {
                violations.Add($"stock: {cut[i]} of piece {i} are cut, {strips[i].Count * stock.Dies} are wanted");
            }
        }

        int least = Least(stock, strips);
        if (stock.Cuts.Sum(c => c.Times) != stock.Lengths || stock.Bound > stock.Lengths || stock.Bound < least)
        {
            violations.Add(
                $"stock: {stock.Lengths} lengths and a bound of {stock.Bound} are stated, {stock.Cuts.Sum(c => c.Times)} are cut and a "
                    + $"bound "
                    + $"of {least} was found");
        }
    }

    // Dual feasible functions (G. S. Lueker 1983; S. P. Fekete, J. Schepers, Mathematical Programming 91 (2001) 11-31; from memory):
    // whatever goes on one length sums to at most 1 under each, so the sum of all pieces is a bound from below.
    private static int Least(StatedStock stock, IReadOnlyList<StatedStrip> strips)
    {
        double room = stock.LengthMm + stock.LossMm;
        (double Share, int Count)[] pieces =
        [
            .. strips.Select(s => ((s.BlankMm + stock.LossMm) / room, s.Count * stock.Dies)),
        ];
        double best = pieces.Sum(p => p.Share * p.Count);
        for (int k = 1; k <= MostStages; k++)
        {
            best = Math.Max(best, pieces.Sum(p => p.Count * Stage(p.Share, k)));
        }

        return (int)Math.Ceiling(best - 1e-6);
    }

    private static double Stage(double share, int k)
    {
        double times = share * (k + 1);
        return Math.Abs(times - Math.Round(times)) < 1e-9 ? share : Math.Floor(times) / k;
    }

    // A path of straight runs and arcs, from where it began.
    private sealed class Folded
    {
        private double x;
        private double y;
        private double heading;

        public double TurnedDeg => heading * 180 / Math.PI;

        public double Off => Math.Sqrt((x * x) + (y * y));

        public bool Sharp { get; private set; }

        public void Add(StatedStrip strip, double thick)
        {
            double at = 0;
            Corner(strip.StartMitreDeg);
            foreach ((double from, double to, double turn, double inside, _) in strip.Bends)
            {
                Go(from - at);
                Arc(turn * Math.PI / 180, inside + (thick / 2));
                at = to;
            }

            Go(strip.BlankMm - at);
            Corner(strip.EndMitreDeg);
        }

        // Each piece at a corner turns half of its bend.
        private void Corner(double? mitreDeg)
        {
            heading += (mitreDeg ?? 0) * Math.PI / 180;
            Sharp |= Math.Abs(mitreDeg ?? 0) > SharpestMitreDeg;
        }

        private void Go(double length) => (x, y) = (x + (length * Math.Cos(heading)), y + (length * Math.Sin(heading)));

        private void Arc(double turn, double radius)
        {
            double chord = 2 * radius * Math.Sin(Math.Abs(turn) / 2);
            heading += turn / 2;
            Go(chord);
            heading += turn / 2;
        }
    }
}
