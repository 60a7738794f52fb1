using System.Diagnostics;
using FeltNest.Layout;

namespace FeltNest.Cli.Progress;

/// <summary>Tells on the message stream how far a search is and what no layout can exceed, not more often than a person can read; each new
/// stage at once.</summary>
internal sealed class ProgressLine(Terminal terminal, double? most = null) : IProgress<SearchProgress>
{
    // Seconds between two lines of the same stage.
    private const double Pause = 2;

    private readonly Lock gate = new();
    private readonly Stopwatch clock = Stopwatch.StartNew();
    private string stage = string.Empty;
    private double next;

    /// <inheritdoc/>
    public void Report(SearchProgress value)
    {
        lock (gate)
        {
            double now = clock.Elapsed.TotalSeconds;
            if (value.Stage == stage && now < next)
            {
                return;
            }

            stage = value.Stage;
            next = now + Pause;
            string found = value.PanelsPerMetre > 0 ? BestSoFar(value.PanelsPerMetre) : string.Empty;
            terminal.Say(FormattableString.Invariant($"{value.Stage} ({100 * value.Share:0} %){found}"));
        }
    }

    private string BestSoFar(double panelsPerMetre)
    {
        string ofMost = most is { } bound ? FormattableString.Invariant($" of at most {bound:0.00}") : string.Empty;
        return FormattableString.Invariant($", best so far {panelsPerMetre:0.00} panels per metre{ofMost}");
    }
}
