using FeltNest.Rolls.Plan.Chain;
using Xunit;

namespace FeltNest.Tests.Rolls;

public sealed class PlacesAheadTests
{
    [Fact]
    public void The_moving_window_finds_what_looking_at_all_its_places_finds()
    {
        Random random = new(3);
        for (int run = 0; run < 200; run++)
        {
            int nearest = random.Next(1, 6);
            int farthest = nearest + random.Next(6);
            int shifts = random.Next(1, 4);
            int shift = random.Next(shifts);
            long[] merits = [.. Enumerable.Range(0, 60 * shifts).Select(_ => (long)random.Next(-3, 8))];
            PlacesAhead window = new(shift, nearest, farthest);
            for (int k = 0; k < 60; k++)
            {
                long[] seen =
                [
                    .. Enumerable.Range(k - farthest, farthest - nearest + 1)
                        .Where(at => at >= 0)
                        .Select(at => merits[(at * shifts) + shift])
                        .Where(m => m > 0),
                ];
                int found = window.Best(k, merits, shifts);

                Assert.Equal(seen.Length == 0 ? -1 : seen.Max(), found < 0 ? -1 : merits[(found * shifts) + shift]);
                Assert.True(found < 0 || (k - found >= nearest && k - found <= farthest));
            }
        }
    }
}
