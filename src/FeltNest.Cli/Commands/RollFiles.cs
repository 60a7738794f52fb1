using FeltNest.Files.Rolls;
using FeltNest.Rolls.Plan;

namespace FeltNest.Cli.Commands;

/// <summary>Files that a roll plan writes.</summary>
internal static class RollFiles
{
    /// <summary>Their names.</summary>
    public static IReadOnlyList<string> Names { get; } = ["roll.json", "roll.csv"];

    /// <summary>Their contents.</summary>
    public static IReadOnlyList<(string Name, byte[] Content)> Make(RollPlan plan) => [(Names[0], RollPlanWriter.Json(plan)), (Names[1], RollPlanWriter.Csv(plan))];
}
