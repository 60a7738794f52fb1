using System.CommandLine;
using FeltNest.Cli;
using FeltNest.Cli.Options;
using FeltNest.Runs;
using FeltNest.Tests.Files;
using Xunit;

namespace FeltNest.Tests.Cli;

/// <summary>How a run that is interrupted ends, by whether it has a best so far to hand over.</summary>
public sealed class AnswerTests : IDisposable
{
    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void A_search_that_was_interrupted_is_handed_over_before_anything_is_drawn()
    {
        (int code, string said, bool handing) = Given(searches: true);

        Assert.Equal(ExitCode.Interrupted, code);
        Assert.Contains("interrupted: the best so far is saved", said, StringComparison.Ordinal);
        Assert.True(handing, "the file was made before the run was handing over");
        Assert.True(File.Exists(folder.Path("out/a.json")));
    }

    [Fact]
    public void A_run_without_a_search_that_came_to_its_end_is_whole()
    {
        (int code, string said, _) = Given(searches: false);

        Assert.Equal(ExitCode.Done, code);
        Assert.DoesNotContain("interrupted", said, StringComparison.Ordinal);
        Assert.True(File.Exists(folder.Path("out/a.json")));
    }

    // The interrupt comes while the run is at work.
    private (int Code, string Said, bool Handing) Given(bool searches)
    {
        StringWriter messages = new();
        Terminal terminal = new() { Results = TextWriter.Null, Messages = messages };
        Command command = new("run");
        CommonOptions common = new(command);
        using CancellationTokenSource stop = new();
        SmallRun run = new(terminal, stop, searches);
        int code = new Answer(terminal, command.Parse([]), common).Give(run, folder.Path("out"), false, stop.Token, stop.Token);
        return (code, messages.ToString(), run.Handing);
    }

    private sealed class SmallRun(Terminal terminal, CancellationTokenSource stop, bool searches) : IRun
    {
        public bool Handing { get; private set; }

        public IReadOnlyList<string> FileNames => ["a.json"];

        public IReadOnlyList<string> Notes => [];

        public Outcome Execute(Action? resultThere, CancellationToken search, CancellationToken interrupt)
        {
            stop.Cancel();
            if (searches)
            {
                resultThere?.Invoke();
            }

            return new Outcome { Files = [new ResultFile("a.json", Made)], Table = string.Empty };
        }

        // A run that is handing over can no longer be ended.
        private byte[] Made()
        {
            Handing = searches && !terminal.HandOver.End();
            return "{}"u8.ToArray();
        }
    }
}
