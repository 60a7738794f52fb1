namespace FeltNest.Rolls.Plan;

/// <summary>What one strike cuts: so many repeats of a layout, each panel of the repeat once for each. Strikes one feed apart are the
/// layout.</summary>
public sealed class StrikePattern
{
    /// <summary>A pattern of panels.</summary>
    /// <param name="panels">Panels in the strike's frame.</param>
    /// <param name="repeats">Repeats in one strike.</param>
    /// <param name="repeatMm">Length of one repeat, mm.</param>
    public StrikePattern(IReadOnlyList<StrikePanel> panels, int repeats, double repeatMm)
    {
        (Panels, Repeats, RepeatMm) = (panels, repeats, repeatMm);
        LengthMm = panels.Max(p => p.MaxX);
    }

    /// <summary>Panels in the strike's frame; the first cut edge stands at x = 0.</summary>
    public IReadOnlyList<StrikePanel> Panels { get; }

    /// <summary>Repeats in one strike.</summary>
    public int Repeats { get; }

    /// <summary>Length of one repeat, mm.</summary>
    public double RepeatMm { get; }

    /// <summary>What the feed advances from strike to strike where nothing is in the way, mm.</summary>
    public double FeedMm => Repeats * RepeatMm;

    /// <summary>Extent of the cut edges along the roll, mm: more than the feed, as strikes interlock.</summary>
    public double LengthMm { get; }
}
