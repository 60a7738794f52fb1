namespace FeltNest.Panel.Budget;

/// <summary>What one part that is off does to the gap at each station.</summary>
internal sealed record GapEffect
{
    /// <summary>Index of its tolerance.</summary>
    public required int Source { get; init; }

    /// <summary>The panels it is off on: <c>both</c> alike, or <c>A</c> or <c>B</c> alone.</summary>
    public required string Panels { get; init; }

    /// <summary>Change of the gap with the part off by all of its tolerance downwards, mm, a value a station.</summary>
    public required IReadOnlyList<double> AtMinus { get; init; }

    /// <summary>Likewise upwards.</summary>
    public required IReadOnlyList<double> AtPlus { get; init; }

    /// <summary>Half of the change from end to end: the slope times the tolerance.</summary>
    public double Slope(int station) => (AtPlus[station] - AtMinus[station]) / 2;

    /// <summary>What the ends have in common: half of the second difference.</summary>
    public double Bend(int station) => (AtPlus[station] + AtMinus[station]) / 2;

    /// <summary>Change of the gap for a share of the tolerance.</summary>
    /// <param name="station">The station.</param>
    /// <param name="share">Share, -1 to 1 from end to end; beyond the ends where parts may lie outside.</param>
    public double At(int station, double share) => ((Bend(station) * share) + Slope(station)) * share;

    /// <summary>The share within the tolerance at which the gap is least, or greatest.</summary>
    /// <param name="station">The station.</param>
    /// <param name="least">True for the least gap.</param>
    public double Worst(int station, bool least)
    {
        double side = least ? 1 : -1;
        double a = side * Slope(station);
        double b = side * Bend(station);
        double middle = b > 0 ? Math.Clamp(-a / (2 * b), -1, 1) : -1;
        double[] shares = [-1, 1, middle];
        return shares.MinBy(share => side * At(station, share));
    }
}
