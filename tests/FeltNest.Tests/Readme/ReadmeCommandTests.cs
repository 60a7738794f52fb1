using System.Diagnostics;
using System.Text.RegularExpressions;
using FeltNest.Tests.Files;
using Xunit;

namespace FeltNest.Tests.Readme;

/// <summary>Every feltnest command of the README and then of each worked day runs, in its order, in a folder that holds nothing but the
/// shapes.</summary>
public sealed partial class ReadmeCommandTests : IDisposable
{
    // A day may build on what the README and the days before it wrote.
    private static readonly string[][] Pages =
    [
        ["README.md"],
        ["shapes", "demo", "cover-engineer.md"],
        ["shapes", "demo", "planner.md"],
        ["shapes", "demo", "toolmaker.md"],
        ["shapes", "demo", "cost-engineer.md"],
    ];

    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact, Trait("tier", "long")]
    public async Task Every_command_of_the_readme_and_of_the_worked_days_runs()
    {
        string shapes = RepositoryFile.PathOf("shapes");
        foreach (string file in Directory.GetFiles(shapes, "*", SearchOption.AllDirectories))
        {
            string copy = folder.Path(Path.Combine("shapes", Path.GetRelativePath(shapes, file)));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(file, copy);
        }

        HashSet<string> done = [];
        foreach (string[] page in Pages)
        {
            string[] commands = [.. PageCommands.Of(page)];
            Assert.True(commands.Length > 0, $"{page[^1]} shows its commands in fenced blocks");
            foreach (string command in commands.Where(done.Add))
            {
                (int code, string messages) = await RunAsync(command);
                Assert.True(code == 0, $"{page[^1]}: {command}: exit code {code}: {messages}");
            }
        }

        Assert.True(File.Exists(folder.Path("output/type-2-w1500-g4/layout.png")), "the main command writes where the README says");
    }

    // A name with a blank stands in quotes.
    [GeneratedRegex("\"[^\"]*\"|[^ ]+")]
    private static partial Regex Words();

    private async Task<(int Code, string Messages)> RunAsync(string command)
    {
        string program = Path.Combine(AppContext.BaseDirectory, "FeltNest.Cli.dll");
        ProcessStartInfo start = new("dotnet", [program, .. Words().Matches(command).Select(word => word.Value.Trim('"'))])
        {
            WorkingDirectory = folder.Root,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        using Process process = Process.Start(start)!;
        if (command == "page")
        {
            await Ended(process);
        }

        Task<string> results = process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        string messages = await process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        await results;
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        return (process.ExitCode, messages);
    }

    // A page runs until it is interrupted: it is asked once, then ended as by Ctrl-C.
    private static async Task Ended(Process process)
    {
        string address = (await process.StandardOutput.ReadLineAsync(TestContext.Current.CancellationToken))!;
        using HttpClient client = new();
        Assert.Equal("ready\n", await client.GetStringAsync(new Uri(address + "health"), TestContext.Current.CancellationToken));
        using Process interrupt = Process.Start("kill", ["-INT", process.Id.ToString(System.Globalization.CultureInfo.InvariantCulture)]);
        await interrupt.WaitForExitAsync(TestContext.Current.CancellationToken);
    }
}
