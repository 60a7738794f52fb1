namespace FeltNest.Cli.Progress;

/// <summary>Tells on the message stream each aim of a plan as it is reached.</summary>
internal sealed class PlanLine(Terminal terminal) : IProgress<string>
{
    /// <inheritdoc/>
    public void Report(string value) => terminal.Say(value);
}
