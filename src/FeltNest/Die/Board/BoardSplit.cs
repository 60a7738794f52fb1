using FeltNest.Die.Order;

namespace FeltNest.Die.Board;

/// <summary>Where a board that is longer than the laser's bed is split.</summary>
internal static class BoardSplit
{
    // A board that comes to the bed's side within this goes on it, mm.
    private const double Slack = 1e-6;

    // Places looked at, mm apart.
    private const double Step = 1;

    /// <summary>Places, ascending, with the direction in which they count; none where the board goes on the bed, null where it does not
    /// even when split.</summary>
    /// <param name="lengthMm">Board along x.</param>
    /// <param name="widthMm">Along y.</param>
    /// <param name="laser">The bed.</param>
    /// <param name="crossings">How many slots a place cuts through, by the place and whether it counts along x.</param>
    public static (IReadOnlyList<double> Places, bool AlongX)? Of(
        double lengthMm, double widthMm, BoardLaser laser, Func<double, bool, int> crossings)
    {
        bool alongX = lengthMm >= widthMm;
        if (laser.BedLengthMm is not { } bed || laser.BedWidthMm is not { } wide)
        {
            return ([], alongX);
        }

        double longer = Math.Max(lengthMm, widthMm);
        double shorter = Math.Min(lengthMm, widthMm);
        if (longer <= bed + Slack && shorter <= wide + Slack)
        {
            return ([], alongX);
        }

        // Pieces lie on the bed with the board's shorter side along either side of it.
        double room = shorter <= wide + Slack ? bed : wide;
        if (shorter > bed + Slack)
        {
            return null;
        }

        int pieces = (int)Math.Ceiling((longer / room) - Slack);
        List<double> places = [];
        for (int k = 1; k < pieces; k++)
        {
            // Every piece must go on the bed, wherever the others were split.
            double before = places.Count > 0 ? places[^1] : 0;
            double low = Math.Max(before + 1, longer - ((pieces - k) * room));
            double high = Math.Min(before + room, longer - 1);
            places.Add(Best(low, high, longer * k / pieces, x => crossings(x, alongX)));
        }

        return (places, alongX);
    }

    private static double Best(double low, double high, double even, Func<double, int> crossings)
    {
        int looks = Math.Max(1, (int)((high - low) / Step));
        return Enumerable.Range(0, looks + 1)
            .Select(i => low + ((high - low) * i / looks))
            .OrderBy(crossings)
            .ThenBy(x => Math.Abs(x - even))
            .First();
    }
}
