namespace FeltNest.Files.Check;

/// <summary>Whether an entry of a study keeps the felt's limits.</summary>
internal static class FeltLimits
{
    // A panel solved to lie on a limit may pass it by so much, per cent.
    private const double Slack = 0.01;

    /// <summary>Checks one entry.</summary>
    public static void Check(StatedFields limits, StatedFields entry)
    {
        double stretch = entry.Number("maxStretchPercent");
        double edge = entry.Number("edgeMaxCompressionPercent");
        entry.Same("stretchAllowed", stretch <= limits.Number("maxStretchPercent") + Slack);
        entry.Same("edgeAllowed", edge <= limits.Number("maxEdgeCompressionPercent") + Slack);

        // The edge is part of the panel.
        entry.Keep(edge <= entry.Number("maxCompressionPercent") + Slack, "edgeMaxCompressionPercent", "is above that of the whole panel");
    }
}
