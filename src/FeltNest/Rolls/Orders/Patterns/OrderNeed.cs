namespace FeltNest.Rolls.Orders.Patterns;

/// <summary>What an order takes of felt at the very least.</summary>
internal static class OrderNeed
{
    // Strikes of the first of two dies that are tried one by one; more are weighed by their shares.
    private const int MostTried = 5000;

    /// <summary>Least sum of feeds that gives so many balls, m: whole strikes of any of the dies, each with its best share.</summary>
    /// <param name="balls">Balls wanted.</param>
    /// <param name="dies">Dies with balls a strike at the most, and feed in metres.</param>
    public static double LeastFeedM(int balls, IReadOnlyList<(double Balls, double FeedM)> dies)
    {
        if (balls <= 0)
        {
            return 0;
        }

        if (dies.Count == 1)
        {
            return Strikes(balls, dies[0].Balls) * dies[0].FeedM;
        }

        double loose = balls * dies.Min(d => d.FeedM / d.Balls);
        if (dies.Count > 2 || balls / dies[0].Balls > MostTried)
        {
            return loose;
        }

        double least = double.PositiveInfinity;
        for (int n = 0; n <= Strikes(balls, dies[0].Balls); n++)
        {
            double rest = Math.Max(0, balls - (n * dies[0].Balls));
            least = Math.Min(least, (n * dies[0].FeedM) + (Strikes(rest, dies[1].Balls) * dies[1].FeedM));
        }

        return Math.Max(loose, least);
    }

    // A thousandth of a millionth is rounding.
    private static double Strikes(double balls, double perStrike) => Math.Max(0, Math.Ceiling((balls / perStrike) - 1e-9));
}
