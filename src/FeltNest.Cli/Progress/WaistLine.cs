using System.Globalization;
using FeltNest.Design;

namespace FeltNest.Cli.Progress;

/// <summary>Tells on the message stream each waist of a study as it is done.</summary>
internal sealed class WaistLine(Terminal terminal, int count) : IProgress<WaistPoint>
{
    private int done;

    /// <inheritdoc/>
    public void Report(WaistPoint value)
    {
        done++;
        terminal.Say(string.Create(
            CultureInfo.InvariantCulture,
            $"waist {value.WaistMm:0.###} mm ({done} of {count}): edge {value.Strain.EdgeMaxCompressionPercent:0.0} %, "
                + $"{value.Yield.PerThousandBalls.SquareMetres:0.00} m2 per thousand balls before losses"));
    }
}
