namespace FeltNest.Rolls.Plan.Chain;

/// <summary>The best chain of strikes along the grid, by dynamic programming over the place and shift of the last strike: no other chain on
/// the grid has more good panels.</summary>
/// <remarks>R. Bellman, <i>Dynamic Programming</i>, 1957. Of chains with as many good panels the one with the fewest strikes is kept, then
/// with the fewest advances off the line, then with the least shifts. Advances that are always clear are served by a running best, ranges
/// before that by a moving window, so the work grows with the places and not with their pairs.</remarks>
internal sealed class StrikeChain
{
    // Merits in one whole number: good panels, then strikes, then what is asked of the hands; each part has room for a roll's worth of the
    // next.
    private const int GoodBits = 34;
    private const int StrikeBits = 20;
    private const int OffLine = 16;

    private readonly LossMap losses;
    private readonly StrikeSpacing spacing;
    private readonly StrikeGrid grid;
    private readonly int shifts;
    private readonly long[] merits;
    private readonly int[] before;
    private readonly long[] runningMerit;
    private readonly int[] runningPlace;

    internal StrikeChain(LossMap losses, StrikeSpacing spacing, StrikeGrid grid)
    {
        (this.losses, this.spacing, this.grid, shifts) = (losses, spacing, grid, grid.Shifts);
        int states = grid.Places * shifts;
        (merits, before, runningMerit, runningPlace) = (new long[states], new int[states], new long[states], new int[states]);
    }

    /// <summary>Places and shifts of the best chain, in order along the roll.</summary>
    internal List<(int Place, int Shift)> Best()
    {
        PlacesAhead[][] windows = [.. Enumerable.Range(0, shifts).Select(to => (PlacesAhead[])
            [
                ..
                from last in Enumerable.Range(0, shifts)
                from island in spacing.Islands(to - last) select new PlacesAhead(last, island.From, island.To),
            ])];
        int best = -1;
        for (int k = 0; k < grid.Places; k++)
        {
            for (int shift = 0; shift < shifts; shift++)
            {
                int state = (k * shifts) + shift;
                int good = losses.Good(k, shift);
                (long merit, int from) = Behind(k, shift, windows[shift]);
                if (good > 0)
                {
                    merits[state] = merit + ((long)good << GoodBits) - (1L << StrikeBits) - Math.Abs(shift - grid.SideSteps);
                    before[state] = from;
                    best = best < 0 || merits[state] > merits[best] ? state : best;
                }

                bool first = k == 0 || merits[state] > runningMerit[state - shifts];
                (runningMerit[state], runningPlace[state]) =
                    first ? (merits[state], k) : (runningMerit[state - shifts], runningPlace[state - shifts]);
            }
        }

        List<(int, int)> chain = [];
        for (int state = best; state >= 0; state = before[state])
        {
            chain.Add((state / shifts, state % shifts));
        }

        chain.Reverse();
        return chain;
    }

    // The best chain a strike at this place may follow, and the state it ends with; 0 and -1 for none.
    private (long Merit, int State) Behind(int k, int shift, PlacesAhead[] windows)
    {
        (long Merit, int State) best = (0, -1);
        for (int feeds = 1; feeds == 1 || feeds * grid.FeedSteps < spacing.ClearSteps; feeds++)
        {
            Offer(k - (feeds * grid.FeedSteps), shift, feeds == 1 ? 0 : OffLine);
        }

        foreach (PlacesAhead window in windows)
        {
            Offer(window.Best(k, merits, shifts), window.Shift, OffLine);
        }

        for (int from = 0; from < shifts; from++)
        {
            int last = k - spacing.Clear(shift - from);
            if (last >= 0 && runningMerit[(last * shifts) + from] > 0)
            {
                Offer(runningPlace[(last * shifts) + from], from, OffLine);
            }
        }

        return best;

        void Offer(int place, int from, int cost)
        {
            if (place >= 0 && merits[(place * shifts) + from] is > 0 and long merit && merit - cost > best.Merit)
            {
                best = (merit - cost, (place * shifts) + from);
            }
        }
    }
}
