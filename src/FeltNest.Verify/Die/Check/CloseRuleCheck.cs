using FeltNest.Layout;
using FeltNest.Layout.Check;
using NetTopologySuite.Geometries;
using static FeltNest.InvariantText;

namespace FeltNest.Die.Check;

/// <summary>Counts again the length that close rules add to the force, of cavities beside each other and of one beside itself; shares no
/// code with the design.</summary>
internal static class CloseRuleCheck
{
    // The design looks in steps of 2 mm, so each end of a close stretch may be off by half of one; more where edges near slowly.
    private const double DesignStep = 2;
    private const double Slowly = 0.3;
    private const double Half = Math.PI / 2 * 1.001;

    // Our own steps, mm, longer on dies with more places than so many.
    private const double Step = 0.5;
    private const double MostPlaces = 100_000;

    /// <summary>Adds a line where the length stated is not the one found. Dies with common cuts are passed over: there a rule has two
    /// cavities.</summary>
    public static void Run(RollLayout layout, StatedDie die, List<string> violations)
    {
        if (die.Own is not { CloseMm: > 0 } own || die.CommonCuts.Count > 0 || layout.GapMm == 0)
        {
            return;
        }

        LinearRing[] rings = [.. die.Cavities.Select(c => (LinearRing)PlacedShape.Of(layout, c).ExteriorRing)];
        double step = Math.Max(Step, rings.Sum(r => r.Length) / MostPlaces);
        Coordinate[][] places = [.. rings.Select(r => Walk(r, step))];
        Dictionary<(int, int), List<(int Ring, int At)>> cells = [];
        foreach ((int i, Coordinate[] ring) in places.Index())
        {
            foreach ((int k, Coordinate p) in ring.Index())
            {
                (int, int) cell = Cell(p, own.CloseMm);
                (cells.TryGetValue(cell, out List<(int, int)>? there) ? there : cells[cell] = []).Add((i, k));
            }
        }

        double length = 0;
        int ends = 0;
        for (int i = 0; i < rings.Length; i++)
        {
            double share = rings[i].Length / places[i].Length;
            bool[] close = [.. Enumerable.Range(0, places[i].Length).Select(k => Close(places, cells, (i, k), own.CloseMm, share))];
            length += share * close.Count(c => c);
            ends += Enumerable.Range(0, close.Length).Count(k => close[k] != close[(k + 1) % close.Length]);
        }

        double slack = ((ends * ((DesignStep / 2) + (step / 2) + Slowly)) + (0.02 * length)) / 4;
        if (!(Math.Abs(die.Force.CloseAddedMm - (length / 4)) <= slack + 1e-6))
        {
            violations.Add(
                Invariant(
                    $"force.closeAddedMm: {die.Force.CloseAddedMm:0.#} is stated, {length / 4:0.#} was found, {slack:0.#} either way"));
        }
    }

    private static bool Close(
        Coordinate[][] places, Dictionary<(int, int), List<(int Ring, int At)>> cells, (int Ring, int At) of, double reach, double share)
    {
        Coordinate p = places[of.Ring][of.At];
        (int x, int y) = Cell(p, reach);
        for (int dx = -1; dx <= 1; dx++)
        {
            for (int dy = -1; dy <= 1; dy++)
            {
                if (cells.TryGetValue((x + dx, y + dy), out List<(int Ring, int At)>? there)
                    && there.Any(o => p.Distance(places[o.Ring][o.At]) is var wide && wide <= reach && Another(of, o, wide)))
                {
                    return true;
                }
            }
        }

        return false;

        bool Another((int Ring, int At) one, (int Ring, int At) other, double wide)
        {
            int way = Math.Abs(one.At - other.At);
            return one.Ring != other.Ring || Math.Min(way, places[one.Ring].Length - way) * share > Half * wide;
        }
    }

    private static (int X, int Y) Cell(Coordinate p, double reach) => ((int)Math.Floor(p.X / reach), (int)Math.Floor(p.Y / reach));

    private static Coordinate[] Walk(LinearRing ring, double step)
    {
        int count = (int)Math.Ceiling(ring.Length / step);
        double share = ring.Length / count;
        List<Coordinate> places = [];
        double next = share / 2;
        Coordinate[] corners = ring.Coordinates;
        for (int i = 0; i + 1 < corners.Length; i++)
        {
            double length = corners[i].Distance(corners[i + 1]);
            for (; next < length; next += share)
            {
                double part = next / length;
                places.Add(
                    new Coordinate(
                        corners[i].X + ((corners[i + 1].X - corners[i].X) * part),
                        corners[i].Y + ((corners[i + 1].Y - corners[i].Y) * part)));
            }

            next -= length;
        }

        return [.. places];
    }
}
