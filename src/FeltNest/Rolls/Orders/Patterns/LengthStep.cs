namespace FeltNest.Rolls.Orders.Patterns;

/// <summary>Chooses the step in which lengths along a roll are counted, so that feeds are near to whole numbers of it.</summary>
internal static class LengthStep
{
    // Steps that are tried, as a share of the usual one.
    private const double Shortest = 0.75;
    private const double Longest = 1.25;
    private const int Tried = 2000;

    // Most steps of a table; a longer roll has longer steps.
    private const int MostSteps = 200_000;

    /// <summary>The step, m.</summary>
    /// <param name="feeds">Feeds of the dies, m.</param>
    /// <param name="longest">Longest roll, m.</param>
    /// <param name="up">Whether lengths are rounded up, so that all that is counted fits; else down, so that all that fits is
    /// counted.</param>
    /// <param name="usual">About how long a step is to be, m.</param>
    public static double Of(IReadOnlyList<double> feeds, double longest, bool up, double usual)
    {
        double middle = Math.Max(usual, longest / Shortest / MostSteps);
        (double Lost, double Step) best = (double.PositiveInfinity, 0);
        for (int k = 0; k <= Tried; k++)
        {
            double step = middle * (Shortest + ((Longest - Shortest) * k / Tried));
            double lost = feeds.Max(feed => Math.Abs(feed - (step * Count(feed, step, up))) / feed);
            best = lost < best.Lost - 1e-12 ? (lost, step) : best;
        }

        return best.Step;
    }

    /// <summary>Steps of a length.</summary>
    public static int Count(double metres, double step, bool up) =>
        (int)(up ? Math.Ceiling((metres / step) - 1e-6) : Math.Floor((metres / step) + 1e-6));
}
