namespace FeltNest.Rolls.Plan.Chain;

/// <summary>The best of the places a window behind the strike being planned holds, as the window moves on.</summary>
internal sealed class PlacesAhead(int shift, int nearest, int farthest)
{
    private readonly int[] queue = new int[farthest - nearest + 2];
    private int head;
    private int tail;

    /// <summary>Shift of the places looked at.</summary>
    internal int Shift => shift;

    /// <summary>Moves the window so that it ends behind place <paramref name="k"/>; comes back with the best place in it, or -1.</summary>
    /// <param name="k">Place of the strike being planned.</param>
    /// <param name="merits">Merits of places and shifts.</param>
    /// <param name="shifts">Shifts a place has.</param>
    internal int Best(int k, long[] merits, int shifts)
    {
        if (head != tail && queue[head] < k - farthest)
        {
            head = (head + 1) % queue.Length;
        }

        int entering = k - nearest;
        if (entering >= 0 && merits[(entering * shifts) + shift] > 0)
        {
            while (tail != head && merits[(queue[Before(tail)] * shifts) + shift] <= merits[(entering * shifts) + shift])
            {
                tail = Before(tail);
            }

            queue[tail] = entering;
            tail = (tail + 1) % queue.Length;
        }

        return head == tail ? -1 : queue[head];
    }

    private int Before(int at) => at == 0 ? queue.Length - 1 : at - 1;
}
