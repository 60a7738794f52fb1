using FeltNest.Rolls;

namespace FeltNest.Files.Rolls;

/// <summary>How files write the direction of the nap.</summary>
internal static class NapWord
{
    /// <summary>All words.</summary>
    public static IReadOnlyList<string> Words { get; } = ["+x", "-x"];

    /// <summary>The word of a direction.</summary>
    public static string Of(NapDirection nap) => nap == NapDirection.Forward ? "+x" : "-x";

    /// <summary>The direction of a word, or null.</summary>
    public static NapDirection? Find(string word) => word switch
    {
        "+x" => NapDirection.Forward,
        "-x" => NapDirection.Backward,
        _ => null,
    };
}
