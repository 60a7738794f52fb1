using FeltNest.Cli.Ending;

namespace FeltNest.Cli;

/// <summary>Where a command speaks: results to one stream, messages and progress to the other.</summary>
internal sealed record Terminal
{
    /// <summary>Results, and nothing else.</summary>
    public required TextWriter Results { get; init; }

    /// <summary>Messages, warnings and progress.</summary>
    public required TextWriter Messages { get; init; }

    /// <summary>How the run ends after an interrupt.</summary>
    public HandOver HandOver { get; init; } = new();

    /// <summary>How long the run has been at work.</summary>
    public RunClock Clock { get; } = new();

    /// <summary>One message line with the program's name.</summary>
    public void Say(string line) => Messages.WriteLine($"feltnest: {PlainLine.Of(line)}");
}
