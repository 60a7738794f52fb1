using FeltNest.Cli;
using FeltNest.Cli.Ending;
using Xunit;

namespace FeltNest.Tests.Cli.Faults;

/// <summary>Which of command and signal ends a run: the first of them, and the other keeps still.</summary>
public sealed class StopSignalsTests
{
    [Fact]
    public async Task A_command_that_hands_nothing_over_is_ended_with_the_word_that_nothing_was_written()
    {
        HandOver handOver = new();
        TaskCompletionSource<int> ended = new();
        List<string> said = [];
        using StopSignals signals = new(handOver, said.Add, ended.SetResult, TimeSpan.Zero);

        signals.Ask();
        signals.Ask();

        Assert.Equal(130, await ended.Task);
        Assert.Equal("interrupted before there was a result; nothing was written", Assert.Single(said));
        Assert.True(signals.Token.IsCancellationRequested);
        Assert.False(handOver.Begin());
    }

    [Fact]
    public void A_command_that_hands_over_is_not_ended()
    {
        HandOver handOver = new();

        Assert.True(handOver.Begin());
        Assert.False(handOver.End());
        Assert.True(handOver.Begin());
    }

    [Fact]
    public void A_cap_that_is_over_without_a_result_is_no_interrupt()
    {
        using StringWriter messages = new();
        Terminal terminal = new() { Results = TextWriter.Null, Messages = messages };

        Assert.Equal(3, FaultLine.Tell(new OperationCanceledException(), terminal, CancellationToken.None));
        Assert.StartsWith("feltnest: --seconds was over before there was a result", messages.ToString(), StringComparison.Ordinal);
        Assert.Equal(130, FaultLine.Tell(new OperationCanceledException(), terminal, new CancellationToken(canceled: true)));
        Assert.Contains("interrupted before there was a result", messages.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Messages_that_cannot_be_written_are_lost_and_nothing_else()
    {
        KeptMessages messages = new(() => new LostWriter());
        Terminal terminal = new() { Results = TextWriter.Null, Messages = messages };

        terminal.Say("of no use");
        messages.Flush();
        new KeptMessages(() => throw new IOException("no such stream")).WriteLine("of no use");

        Assert.Throws<IOException>(() => new LostWriter().WriteLine("of no use"));
    }

    private sealed class LostWriter : StringWriter
    {
        public override void WriteLine(string? value) => throw new IOException("no space left");

        public override void Flush() => throw new IOException("no space left");
    }
}
