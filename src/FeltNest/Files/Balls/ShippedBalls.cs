using System.Reflection;

namespace FeltNest.Files.Balls;

/// <summary>The example balls that come with the program.</summary>
internal static class ShippedBalls
{
    private const string Prefix = "balls/";
    private const string Ending = ".json";

    /// <summary>Name of the ball that stands in where none is given.</summary>
    public const string Example = "type-2";

    /// <summary>Names, the example first.</summary>
    public static IReadOnlyList<string> Names { get; } =
    [
        .. typeof(ShippedBalls).Assembly.GetManifestResourceNames()
            .Where(name => name.StartsWith(Prefix, StringComparison.Ordinal))
            .Select(name => name[Prefix.Length..^Ending.Length])
            .OrderBy(name => name != Example).ThenBy(name => name, StringComparer.Ordinal),
    ];

    /// <summary>A ball of that name, with what goes before its file.</summary>
    /// <exception cref="InputException">A change that the ball does not take.</exception>
    public static BallInput Read(string name, IReadOnlyList<BallChange>? changes = null)
    {
        Assembly here = typeof(ShippedBalls).Assembly;
        using Stream from = here.GetManifestResourceStream(Prefix + name + Ending)!;
        using MemoryStream text = new();
        from.CopyTo(text);
        return BallReader.Read(InputText.Of($"{name} (shipped example)", text.ToArray()), changes);
    }
}
