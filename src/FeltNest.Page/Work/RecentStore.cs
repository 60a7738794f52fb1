namespace FeltNest.Page.Work;

/// <summary>Keeps the most recent results of slow work; a result that fails is not kept.</summary>
internal sealed class RecentStore<TKey, TValue>(int most)
    where TKey : notnull
{
    private readonly Lock entry = new();
    private readonly LinkedList<(TKey Key, Lazy<TValue> Value)> recent = [];

    /// <summary>The result for a key, made where it is not kept.</summary>
    public TValue Get(TKey key, Func<TValue> make)
    {
        Lazy<TValue> found;
        lock (entry)
        {
            LinkedListNode<(TKey Key, Lazy<TValue> Value)>? node = recent.First;
            while (node is not null && !node.Value.Key.Equals(key))
            {
                node = node.Next;
            }

            if (node is null)
            {
                // A failure is not kept: without caching of exceptions the next caller tries again.
                node = new((key, new Lazy<TValue>(make, LazyThreadSafetyMode.PublicationOnly)));
            }
            else
            {
                recent.Remove(node);
            }

            recent.AddFirst(node);
            found = node.Value.Value;
            while (recent.Count > most)
            {
                recent.RemoveLast();
            }
        }

        return found.Value;
    }
}
