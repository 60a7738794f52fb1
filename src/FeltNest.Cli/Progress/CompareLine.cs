using System.Globalization;
using FeltNest.Cost.Compare;

namespace FeltNest.Cli.Progress;

/// <summary>Tells on the message stream each row of a comparison as it is done; of many rows every tenth part.</summary>
internal sealed class CompareLine(Terminal terminal, int count) : IProgress<CompareRow>
{
    // Up to so many rows each is told.
    private const int Each = 20;

    private int done;

    /// <inheritdoc/>
    public void Report(CompareRow value)
    {
        done++;
        if (count <= Each || done == count || done % (count / 10) == 0)
        {
            terminal.Say(string.Create(
                CultureInfo.InvariantCulture,
                $"{value.Case.Name} ({done} of {count}): {value.Account.PerThousandBalls.SquareMetres:0.00} m2"
                    + $"{(value.Sheet is { } sheet ? $", {sheet.Total:0.00} {sheet.Currency}" : string.Empty)} per thousand balls, "
                    + $"bought"));
        }
    }
}
