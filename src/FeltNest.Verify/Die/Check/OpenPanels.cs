using FeltNest.Layout;

namespace FeltNest.Die.Check;

/// <summary>Panels of one feed that no strike has cut yet, found by their places.</summary>
/// <param name="feedMm">The feed: places along the roll are the same one feed on, mm.</param>
internal sealed class OpenPanels(double feedMm)
{
    private const double PlaceSlack = 1e-4;
    private const double AngleSlackDeg = 1e-6;

    // Panels are kept by squares of about a millimetre, which divide the feed evenly.
    private readonly long around = Math.Max(1, (long)feedMm);
    private readonly Dictionary<(int Part, long X, long Y), List<PlacedPanel>> squares = [];

    /// <summary>How many are left.</summary>
    public int Count { get; private set; }

    /// <summary>One more panel to be cut.</summary>
    public void Add(PlacedPanel panel)
    {
        (int, long, long) square = (panel.Part, Along(panel, 0), Across(panel, 0));
        (squares.TryGetValue(square, out List<PlacedPanel>? held) ? held : squares[square] = []).Add(panel);
        Count++;
    }

    /// <summary>Takes the panel at a place, or tells that none is there.</summary>
    public bool Take(PlacedPanel cut)
    {
        bool Same(PlacedPanel p) =>
            Math.Abs(Math.IEEERemainder(p.AngleDeg - cut.AngleDeg, 360)) < AngleSlackDeg && Math.Abs(p.YMm - cut.YMm) < PlaceSlack
            && Math.Abs(Math.IEEERemainder(p.XMm - cut.XMm, feedMm)) < PlaceSlack;
        foreach (long x in new[] { Along(cut, -PlaceSlack), Along(cut, PlaceSlack) })
        {
            foreach (long y in new[] { Across(cut, -PlaceSlack), Across(cut, PlaceSlack) })
            {
                if (squares.TryGetValue((cut.Part, x, y), out List<PlacedPanel>? held) && held.FindIndex(Same) is var at and >= 0)
                {
                    held.RemoveAt(at);
                    Count--;
                    return true;
                }
            }
        }

        return false;
    }

    private static long Across(PlacedPanel panel, double off) => (long)Math.Floor(panel.YMm + off);

    private long Along(PlacedPanel panel, double off)
    {
        double at = panel.XMm + off;
        return (long)Math.Floor((at - (Math.Floor(at / feedMm) * feedMm)) / feedMm * around) % around;
    }
}
