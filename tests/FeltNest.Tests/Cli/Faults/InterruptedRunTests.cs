using System.ComponentModel;
using System.Diagnostics;
using FeltNest.Files.Layouts;
using FeltNest.Tests.Files;
using FeltNest.Yield;
using Xunit;

namespace FeltNest.Tests.Cli.Faults;

/// <summary>Ctrl-C, a request to end or a closed terminal at any time of any command: it ends soon, with the code for it or for done, plain
/// lines and whole files.</summary>
public sealed class InterruptedRunTests : IDisposable
{
    private static readonly string[] Commands =
        [
            "panel", "panel --wrap", "panel --seams", "panel --waist-range", "panel --proven", "layout", "compare", "roll", "orders",
            "usage", "die", "check", "page",
        ];

    private static readonly string[] Signals = ["INT", "TERM", "HUP"];

    // Two seconds of a machine with two cores.
    private static readonly TimeSpan MostWork = TimeSpan.FromSeconds(2 * 2);

    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    // All commands at once: each waits for the others more than for itself, so that moments fall all over its work.
    [Fact, Trait("tier", "long")]
    public async Task An_interrupt_at_any_time_ends_every_command_in_order()
    {
        Inputs();
        for (int run = 0; run < Runs.Count(1); run++)
        {
            await Task.WhenAll(Commands.Select((command, i) => Interrupted(command, run, new Random((run * Commands.Length) + i))));
        }
    }

    private async Task Interrupted(string command, int run, Random random)
    {
        CancellationToken stop = TestContext.Current.CancellationToken;
        string place = folder.Path($"{command.Replace(' ', '-')}{run}");
        string[] folders = command is "check" or "page" ? [] : ["--out", place];
        using Process process = ProgramProcess.Start(ProgramProcess.Program, [.. Arguments(command), .. folders]);
        Task<CommandRun> ended = ProgramProcess.Ended(process, stop);
        await Task.Delay(random.Next(2500), stop);
        await ProgramProcess.Signal(process, Signals[(run + Array.IndexOf(Commands, command)) % Signals.Length], stop);
        TimeSpan work = await WorkUntil(ended, process, stop);
        CommandRun left = await ended;

        Assert.True(work < MostWork, $"{command}, run {run}: worked {work.TotalSeconds:0.0} processor seconds after the signal");
        // A signal before the program hears any ends the process in the system's own way, without a word.
        bool early = left.Code is 129 or 130 or 143 && left.Err.Length == 0;
        Assert.True(early || left.Code is 0 or 130, $"{command}, run {run}: exit code {left.Code}: {left.Err}");
        Assert.All(left.Messages, line => Assert.StartsWith("feltnest: ", line, StringComparison.Ordinal));
        Assert.DoesNotContain(left.Messages, line => line.Contains("internal error", StringComparison.Ordinal));
        string[] files = Directory.Exists(place) ? Directory.GetFiles(place) : [];
        Assert.DoesNotContain(files, file => file.EndsWith(".tmp", StringComparison.Ordinal));
        Assert.All(files.Where(file => file.EndsWith("layout.json", StringComparison.Ordinal)), file => LayoutReader.Read(file));
    }

    // Processor time and not the clock: how long it takes beside all the others says nothing.
    private static async Task<TimeSpan> WorkUntil(Task ended, Process process, CancellationToken stop)
    {
        TimeSpan? before = null;
        TimeSpan last = default;
        while (!ended.IsCompleted)
        {
            try
            {
                last = process.TotalProcessorTime;
                before ??= last;
            }
            catch (Exception gone) when (gone is InvalidOperationException or Win32Exception or IOException)
            {
                // The process ended between two looks.
                break;
            }

            await Task.WhenAny(ended, Task.Delay(20, stop));
        }

        return last - (before ?? last);
    }

    private void Inputs()
    {
        File.WriteAllBytes(folder.Path("layout.json"), LayoutWriter.Write(SampleLayout.OneRepeat, YieldAccount.Of(SampleLayout.OneRepeat)));
        File.WriteAllText(
            folder.Path("dies.csv"), "die,ball,layout,strikesLeft\nD1,type 2,layout.json,500000\nD2,type 2 woven,layout.json,500000\n");
    }

    private string[] Arguments(string command)
    {
        string ball = RepositoryFile.PathOf("shapes", "balls", "type-2.json");
        string demo = RepositoryFile.PathOf("shapes", "demo");
        return command switch
        {
            "panel" => ["panel", ball],
            "panel --wrap" => ["panel", ball, "--wrap", RepositoryFile.PathOf("shapes", "outlines", "dog-bone.json")],
            "panel --seams" => ["panel", ball, "--seams", "--width", "600", "--effort", "20"],
            "panel --waist-range" => ["panel", ball, "--waist-range", "22:34:1", "--width", "1500", "--effort", "20"],
            "panel --proven" => ["panel", ball, "--proven", RepositoryFile.PathOf("shapes", "outlines", "traced-panel.dxf")],
            "usage" =>
            [
                "usage", folder.Path("layout.json"), "--actuals", Path.Combine(demo, "actuals.csv"), "--costs",
                Path.Combine(demo, "costs.json"),
            ],
            "die" => ["die", folder.Path("layout.json")],
            "check" => ["check", folder.Path("layout.json")],
            "page" => ["page"],
            "layout" => ["layout", ball, "--width", "1500", "--effort", "60"],
            "compare" =>
            [
                "compare", ball, "--offers", Path.Combine(demo, "offers.csv"), "--costs", Path.Combine(demo, "costs.json"), "--effort",
                "20",
            ],
            "roll" => ["roll", folder.Path("layout.json"), "--roll", Path.Combine(demo, "rolls", "roll-a17.json"), "--side-shift", "5"],
            _ => ["orders", Path.Combine(
                demo, "orders.csv"), "--stock", Path.Combine(demo, "stock.csv"), "--dies", folder.Path("dies.csv"), "--press",
                Path.Combine(demo, "presses", "beam-press.json"), "--offers",
                Path.Combine(demo, "offers.csv"), "--costs", Path.Combine(demo, "costs.json"), "--start", "2026-03-02"],
        };
    }
}
