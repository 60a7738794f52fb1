namespace FeltNest.Layout.Check;

/// <summary>What the independent check found.</summary>
/// <param name="LeastGapMm">Least distance measured between two cut edges, mm; 0 where parts touch or overlap; null where none was
/// measured.</param>
/// <param name="Pairs">How many pairs of panels were measured.</param>
/// <param name="Violations">One clear line each; empty when all is kept.</param>
internal sealed record CheckVerdict(double? LeastGapMm, int Pairs, IReadOnlyList<string> Violations)
{
    /// <summary>Fields of the file that nothing was held against, by name.</summary>
    public IReadOnlyList<string> NotChecked { get; init; } = [];

    /// <summary>The verdict on a file that holds no cuts, only figures.</summary>
    public static CheckVerdict WithoutCuts(IReadOnlyList<string> violations) => new(null, 0, violations);

    /// <summary>True when nothing is violated.</summary>
    public bool Passed => Violations.Count == 0;
}
