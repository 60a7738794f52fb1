namespace FeltNest.Die.SharedRule;

/// <summary>The rule of a gang in which neighbours share cuts: every shared run once, and what is left of each cavity's edge.</summary>
/// <param name="Runs">Runs of the cavities that share any; a cavity that shares none is not in it, its edge is one closed loop.</param>
public sealed record CommonCuts(IReadOnlyList<RuleRun> Runs)
{
    /// <summary>A gang without any.</summary>
    public static CommonCuts None { get; } = new([]);

    /// <summary>Length of rule that serves two cavities, mm.</summary>
    public double SharedMm => Runs.Where(r => r.Other is not null).Sum(r => r.LengthMm);

    private readonly ILookup<int, RuleRun> byCavity = Runs.SelectMany(r =>
        r.Other is { } other ? new[] { (Cavity: r.Cavity, Run: r), (Cavity: other, Run: r) } : [(r.Cavity, r)])
        .ToLookup(r => r.Cavity, r => r.Run);

    /// <summary>Whether a cavity, by its place in the list, shares a cut.</summary>
    public bool Has(int cavity) => byCavity.Contains(cavity);

    /// <summary>Runs that serve a cavity, by its place in the list.</summary>
    public IEnumerable<RuleRun> Of(int cavity) => byCavity[cavity];
}
