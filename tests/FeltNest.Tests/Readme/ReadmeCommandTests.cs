using System.Diagnostics;
using System.Text.RegularExpressions;
using FeltNest.Tests.Files;
using Xunit;

namespace FeltNest.Tests.Readme;

/// <summary>Every feltnest command of README.md and then of DEVELOPERS.md runs, in its order, in a folder that holds nothing but the
/// shapes.</summary>
public sealed partial class ReadmeCommandTests : IDisposable
{
    private const string Run = "dotnet run --project src/FeltNest.Cli -c Release -- ";

    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task Every_command_of_the_readme_and_the_developers_page_runs()
    {
        string shapes = RepositoryFile.PathOf("shapes");
        foreach (string file in Directory.GetFiles(shapes, "*", SearchOption.AllDirectories))
        {
            string copy = folder.Path(Path.Combine("shapes", Path.GetRelativePath(shapes, file)));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(file, copy);
        }

        string[] readme = [.. Commands()];
        string[] developers =
        [
            .. Inline().Matches(File.ReadAllText(RepositoryFile.PathOf("DEVELOPERS.md"))).Select(match => match.Groups[1].Value),
        ];
        Assert.True(readme.Length >= 7, "the README shows its commands in fenced blocks");
        Assert.True(developers.Length >= 7, "the developers' page shows its commands as code in a line");
        foreach (string command in readme.Concat(developers).Distinct())
        {
            (int code, string messages) = await RunAsync(command);
            Assert.True(code == 0, $"{command}: exit code {code}: {messages}");
        }

        Assert.True(File.Exists(folder.Path("output/type-2-w1500-g4/layout.png")), "the main command writes where the README says");
    }

    private static IEnumerable<string> Commands()
    {
        bool fenced = false;
        foreach (string line in File.ReadLines(RepositoryFile.PathOf("README.md")))
        {
            if (line.StartsWith("```", StringComparison.Ordinal))
            {
                fenced = !fenced;
            }
            else if (fenced && line.StartsWith(Run, StringComparison.Ordinal))
            {
                yield return line[Run.Length..];
            }
            else if (fenced && line.StartsWith("feltnest ", StringComparison.Ordinal))
            {
                yield return line["feltnest ".Length..];
            }
        }
    }

    [GeneratedRegex("`feltnest ([^`]+)`")]
    private static partial Regex Inline();

    private async Task<(int Code, string Messages)> RunAsync(string command)
    {
        string program = Path.Combine(AppContext.BaseDirectory, "FeltNest.Cli.dll");
        ProcessStartInfo start = new("dotnet", [program, .. command.Split(' ', StringSplitOptions.RemoveEmptyEntries)])
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
