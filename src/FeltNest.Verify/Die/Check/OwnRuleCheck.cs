using FeltNest.Geometry;
using NetTopologySuite.Geometries;
using NetTopologySuite.Index.Strtree;
using static FeltNest.InvariantText;

namespace FeltNest.Die.Check;

/// <summary>Looks in short chords where the edge of one cavity stands near to itself; shares no code with the design.</summary>
/// <remarks>Two places of an edge are two rules where the way along is more than half round the circle over them, and face each other where
/// the line between them leans less than 15 degrees from square to both.</remarks>
internal sealed class OwnRuleCheck
{
    // Longest chord, and how near stated and found must be: mm.
    private const double Longest = 0.2;
    private const double Slack = 5e-3;

    // Sine of 15 degrees, and half round a circle over its diameter with a thousandth more.
    private static readonly double Lean = Math.Sin(Math.PI / 12);
    private static readonly double Half = Math.PI / 2 * 1.001;

    private readonly Coordinate[] ring;
    private readonly double[] along;
    private readonly double length;
    private readonly STRtree<int> tree = new();

    private OwnRuleCheck(ArcOutline edge)
    {
        ring = Divided(DieEdgeCheck.Walk(edge.Vertices, 1e-4));
        along = new double[ring.Length + 1];
        for (int i = 0; i < ring.Length; i++)
        {
            along[i + 1] = along[i] + ring[i].Distance(ring[(i + 1) % ring.Length]);
            tree.Insert(new Envelope(ring[i], ring[(i + 1) % ring.Length]), i);
        }

        length = along[^1];
    }

    /// <summary>Checks every edge of a die; what is wrong is added to the violations.</summary>
    public static void Run(StatedDie die, List<string> violations)
    {
        if (die.Own is not { } own)
        {
            return;
        }

        foreach ((int part, ArcOutline edge) in die.Edges.Where(e => die.Cavities.Any(c => c.Part == e.Key)))
        {
            OwnRuleCheck check = new(edge);
            foreach (bool inPanel in new[] { true, false })
            {
                double body = inPanel ? own.ThicknessMm - own.BodyInWasteMm : own.BodyInWasteMm;
                double wanted = (2 * body) + own.RoomMm;
                (double found, Coordinate at) = check.Least(inPanel, wanted);
                double stated = own.Narrow.Where(n => n.Part == part && n.InPanel == inPanel).Select(n => n.WidthMm)
                    .DefaultIfEmpty(double.PositiveInfinity).Min();
                string name = inPanel ? "neck" : "slit";
                if (found < Math.Max(own.ThicknessMm, 2 * body) - Slack)
                {
                    violations.Add(
                        Invariant(
                            $"edge of part {part}: a {name} of {found:0.###} mm near ({at.X:0.#}, {at.Y:0.#}) has no room for the rule"));
                }

                if (Math.Min(stated, found) < wanted - Slack && !(Math.Abs(stated - found) <= Slack))
                {
                    violations.Add(
                        Invariant(
                            $"edges[].narrow of part {part}: {name} of {stated:0.###} mm is stated, {found:0.###} near ({at.X:0.#}, "
                                + $"{at.Y:0.#}) was found"));
                }
            }
        }
    }

    private (double Wide, Coordinate At) Least(bool inPanel, double within)
    {
        (double Wide, Coordinate At) least = (double.PositiveInfinity, new Coordinate());
        for (int i = 0; i < ring.Length; i++)
        {
            Coordinate p = ring[i];
            Envelope near = new(p);
            near.ExpandBy(Math.Min(within, least.Wide));
            foreach (int k in tree.Query(near))
            {
                (double share, Coordinate foot) = Foot(p, k);
                double wide = p.Distance(foot);
                double way = Math.Abs(along[k] + (share * (along[k + 1] - along[k])) - along[i]);
                bool another = wide > 1e-9 && Math.Min(way, length - way) > Half * wide;
                if (another && wide < least.Wide && wide < within && Face(i, k, share, foot, inPanel))
                {
                    least = (wide, new Coordinate((p.X + foot.X) / 2, (p.Y + foot.Y) / 2));
                }
            }
        }

        return least;
    }

    private (double Share, Coordinate At) Foot(Coordinate p, int k)
    {
        Coordinate a = ring[k];
        Coordinate b = ring[(k + 1) % ring.Length];
        (double x, double y) = (b.X - a.X, b.Y - a.Y);
        double share = Math.Clamp((((p.X - a.X) * x) + ((p.Y - a.Y) * y)) / ((x * x) + (y * y)), 0, 1);
        return (share, new Coordinate(a.X + (share * x), a.Y + (share * y)));
    }

    private bool Face(int i, int k, double share, Coordinate foot, bool inPanel)
    {
        double angle = Math.Atan2(foot.Y - ring[i].Y, foot.X - ring[i].X);
        int before = (i + ring.Length - 1) % ring.Length;
        int comes = share <= 0 ? (k + ring.Length - 1) % ring.Length : k;
        int goes = share >= 1 ? (k + 1) % ring.Length : k;
        return Looks(angle, before, i, inPanel) && Looks(angle + Math.PI, comes, goes, inPanel);
    }

    // Whether the way at an angle leaves the edge squarely, to the panel or to the waste, where one chord ends and the next begins.
    private bool Looks(double angle, int comes, int goes, bool inPanel)
    {
        double from = angle - Heading(comes);
        double to = angle - Heading(goes);
        return Math.Cos(to) <= Lean && Math.Cos(from) >= -Lean && Math.Sin(from) + Math.Sin(to) > 0 == inPanel;
    }

    private double Heading(int chord)
    {
        Coordinate a = ring[chord];
        Coordinate b = ring[(chord + 1) % ring.Length];
        return Math.Atan2(b.Y - a.Y, b.X - a.X);
    }

    private static Coordinate[] Divided(Coordinate[] places)
    {
        List<Coordinate> all = [];
        for (int i = 0; i < places.Length; i++)
        {
            Coordinate a = places[i];
            Coordinate b = places[(i + 1) % places.Length];
            int count = Math.Max(1, (int)Math.Ceiling(a.Distance(b) / Longest));
            for (int k = 0; k < count; k++)
            {
                all.Add(new Coordinate(a.X + ((b.X - a.X) * k / count), a.Y + ((b.Y - a.Y) * k / count)));
            }
        }

        return [.. all];
    }
}
