namespace FeltNest.Files.Check;

/// <summary>Checks the results that hold no layout, from the file alone: sums, shares, ranks, areas of outlines.</summary>
/// <remarks>What a file does not let one work out again is not checked, and is listed by name (<see cref="StatedFile.NotSeen"/>).</remarks>
internal static class FigureCheck
{
    private static readonly Dictionary<string, Action<StatedFields>> Checks = new()
    {
        ["feltnest/panel/1"] = PanelFigures.Check,
        ["feltnest/wrap/1"] = WrapFigures.Check,
        ["feltnest/trace/1"] = TraceFigures.Check,
        ["feltnest/proven/1"] = ProvenFigures.Check,
        ["feltnest/trial/1"] = TrialFigures.Check,
        ["feltnest/gap-budget/1"] = GapBudgetFigures.Check,
        ["feltnest/felt/1"] = FeltFigures.Check,
        ["feltnest/lot/1"] = LotFigures.Check,
        ["feltnest/waist/1"] = WaistFigures.Check,
        ["feltnest/seams/1"] = SeamsFigures.Check,
        ["feltnest/seam-design/1"] = SeamDesignFigures.Check,
        ["feltnest/compare/1"] = CompareFigures.Check,
        ["feltnest/family/1"] = FamilyFigures.Check,
        ["feltnest/usage/1"] = UsageFigures.Check,
        ["feltnest/period-usage/1"] = PeriodFigures.Check,
        ["feltnest/first-article/1"] = ArticleFigures.Check,
        ["feltnest/made-die/1"] = MadeDieFigures.Check,
        ["feltnest/die-life/1"] = LifeFigures.Check,
    };

    /// <summary>Kinds of result it takes, by their schema.</summary>
    public static IReadOnlyList<string> Schemas => [.. Checks.Keys];

    /// <summary>Looks at a file; what is wrong stands in the file afterwards.</summary>
    /// <exception cref="InputException">A field is missing, or of the wrong kind.</exception>
    public static void Run(StatedFile file) => Checks[file.Schema](file.Top);
}
