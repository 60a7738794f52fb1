using FeltNest.Cost.Families;
using static FeltNest.InvariantText;

namespace FeltNest.Cli.Progress;

/// <summary>Tells on the message stream each ball of a family as it is laid on all widths.</summary>
internal sealed class FamilyLine(Terminal terminal, FamilyRequest question) : IProgress<FamilyPair>
{
    /// <inheritdoc/>
    public void Report(FamilyPair value) => terminal.Say(Invariant(
        $"{question.Balls[value.Ball].Name} ({value.Ball + 1} of {question.Balls.Count}): cheapest on "
            + $"{question.Widths[value.Width].Name}, {value.PerYear:0} {question.Costs.Currency} a year"));
}
