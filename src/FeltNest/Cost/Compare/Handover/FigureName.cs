namespace FeltNest.Cost.Compare.Handover;

/// <summary>A figure of a finding, its name and its unit apart.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Unit">Its unit behind a space, or nothing.</param>
internal readonly record struct FigureName(string Name, string Unit)
{
    private static readonly string[] Units = ["mm", "m", "%", "g/m2"];

    /// <summary>The parts of a finding's words, which end in a comma and the unit where there is one.</summary>
    public static FigureName Of(string words)
    {
        int comma = words.LastIndexOf(", ", StringComparison.Ordinal);
        return comma > 0 && Units.Contains(words[(comma + 2)..])
            ? new FigureName(words[..comma], " " + words[(comma + 2)..])
            : new FigureName(words, string.Empty);
    }
}
