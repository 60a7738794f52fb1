using static FeltNest.InvariantText;

namespace FeltNest;

/// <summary>Counts in words.</summary>
internal static class CountWords
{
    /// <summary>A count with the name of what is counted, which gets an s unless it is one.</summary>
    public static string Of(long count, string thing) => count == 1 ? $"1 {thing}" : Invariant($"{count} {thing}s");

    /// <summary>How often.</summary>
    public static string Times(int times) => times == 1 ? "once" : Invariant($"{times} times");
}
