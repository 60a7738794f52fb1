namespace FeltNest.Cost.Compare.Handover;

/// <summary>A figure of a finding, its name and its unit apart.</summary>
internal readonly record struct FigureName
{
    private static readonly string[] Units = ["mm", "m", "%", "g/m2"];

    /// <summary>Its name.</summary>
    public required string Name { get; init; }

    /// <summary>Its unit behind a space, or nothing.</summary>
    public required string Unit { get; init; }

    /// <summary>The parts of a finding's words, which end in a comma and the unit where there is one.</summary>
    public static FigureName Of(string words)
    {
        int comma = words.LastIndexOf(", ", StringComparison.Ordinal);
        return comma > 0 && Units.Contains(words[(comma + 2)..])
            ? new FigureName { Name = words[..comma], Unit = " " + words[(comma + 2)..] }
            : new FigureName { Name = words, Unit = string.Empty };
    }
}
