namespace FeltNest.Rolls.Orders.Clock;

/// <summary>Changes of a sequence: a piece, the pieces of one order or a whole run of a die go before or after another piece, on its
/// press.</summary>
/// <param name="shop">The shop.</param>
/// <param name="random">Numbers drawn; the same seed gives the same changes.</param>
internal sealed class ClockMoves(ClockShop shop, Random random)
{
    // Shares of the kinds of changes, measured on shops of 60 to 1,000 pieces.
    private const double OfLateOrders = 0.6;
    private const double SinglePieces = 0.45;
    private const double OfOneOrder = 0.75;
    private const double ToOwnDie = 0.45;
    private const double ToEnd = 0.04;

    private readonly bool[] moved = new bool[shop.Pieces.Count];
    private readonly ILookup<int, int> ofDie = Enumerable.Range(0, shop.Pieces.Count).ToLookup(piece => shop.DieOf[piece]);
    private readonly int[][] sameDie = new int[shop.DieFrom.Length][];

    /// <summary>Makes a changed sequence.</summary>
    /// <param name="sequence">The sequence.</param>
    /// <param name="pressOf">Press of each piece.</param>
    /// <param name="late">Pieces of late orders and pieces without a place.</param>
    /// <param name="changed">Takes the new sequence.</param>
    /// <param name="changedPress">Takes the new presses.</param>
    /// <returns>Whether there is a change.</returns>
    public bool Change(int[] sequence, int[] pressOf, List<int> late, int[] changed, int[] changedPress)
    {
        int piece = late.Count > 0 && random.NextDouble() < OfLateOrders
            ? late[random.Next(late.Count)]
            : sequence[random.Next(sequence.Length)];
        List<int> block = Block(sequence, pressOf, piece);
        (int target, int press) = Target(sequence, pressOf, piece);
        if (block.Exists(one => shop.First[one]) || (target >= 0 && shop.First[target])
            || target == piece || block.Contains(target) || block.Exists(one => double.IsInfinity(shop.Hours[press][one])))
        {
            return false;
        }

        foreach (int one in block)
        {
            moved[one] = true;
        }

        Put(sequence, block, (target, Before: random.Next(2) == 0), changed);
        pressOf.CopyTo(changedPress, 0);
        foreach (int one in block)
        {
            (moved[one], changedPress[one]) = (false, press);
        }

        return true;
    }

    // The place to go to: beside a piece, or behind all others of a press.
    private (int Target, int Press) Target(int[] sequence, int[] pressOf, int piece)
    {
        if (random.NextDouble() < ToEnd)
        {
            return (-1, random.Next(shop.Open.Length));
        }

        int die = shop.DieOf[piece];
        int[] same = sameDie[die] ??= [.. ofDie[die]];
        int target = random.NextDouble() < ToOwnDie ? same[random.Next(same.Length)] : sequence[random.Next(sequence.Length)];
        return (target, pressOf[target]);
    }

    private void Put(int[] sequence, List<int> block, (int Target, bool Before) place, int[] changed)
    {
        int next = 0;
        foreach (int one in sequence)
        {
            if (one == place.Target && place.Before)
            {
                next = Copy(block, changed, next);
            }

            if (!moved[one])
            {
                changed[next++] = one;
            }

            if (one == place.Target && !place.Before)
            {
                next = Copy(block, changed, next);
            }
        }

        if (place.Target < 0)
        {
            Copy(block, changed, next);
        }
    }

    private static int Copy(List<int> block, int[] changed, int next)
    {
        foreach (int one in block)
        {
            changed[next++] = one;
        }

        return next;
    }

    // The piece alone, with those of its order beside it, or with its whole run.
    private List<int> Block(int[] sequence, int[] pressOf, int piece)
    {
        double kind = random.NextDouble();
        if (kind < SinglePieces)
        {
            return [piece];
        }

        bool oneOrder = kind < OfOneOrder;
        int[] onPress = [.. sequence.Where(one => pressOf[one] == pressOf[piece])];
        int at = Array.IndexOf(onPress, piece);
        int first = at;
        int last = at;
        while (first > 0 && Goes(onPress[first - 1]))
        {
            first--;
        }

        while (last < onPress.Length - 1 && Goes(onPress[last + 1]))
        {
            last++;
        }

        return [.. onPress[first..(last + 1)]];

        bool Goes(int other) =>
            shop.DieOf[other] == shop.DieOf[piece] && (!oneOrder || shop.OrderOf[other] == shop.OrderOf[piece]);
    }
}
