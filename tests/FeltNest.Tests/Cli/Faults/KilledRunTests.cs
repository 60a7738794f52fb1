using System.Diagnostics;
using System.Text.RegularExpressions;
using FeltNest.Tests.Files;
using Xunit;

namespace FeltNest.Tests.Cli.Faults;

/// <summary>Runs killed without warning at any moment, and runs that write one folder at once: every result file left is whole.</summary>
public sealed partial class KilledRunTests : IDisposable
{
    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact, Trait("tier", "long")]
    public async Task A_run_killed_at_any_moment_leaves_every_file_whole_or_absent()
    {
        CancellationToken stop = TestContext.Current.CancellationToken;
        Stopwatch watch = Stopwatch.StartNew();
        Assert.Equal(0, (await ProgramProcess.Run(ProgramProcess.Program, Lay("whole"), stop)).Code);
        TimeSpan usual = watch.Elapsed;
        Random random = new(1);
        for (int run = 0; run < Runs.Count(4); run++)
        {
            string name = $"run{run}";
            using Process process = ProgramProcess.Start(ProgramProcess.Program, Lay(name));
            if (run % 2 == 0)
            {
                await Task.Delay(usual * random.NextDouble(), stop);
            }
            else
            {
                // The moment that matters: files are being written.
                while (!process.HasExited && !Names(name).Any(file => !file.Contains("probe", StringComparison.Ordinal)))
                {
                    Thread.SpinWait(100);
                }

                Thread.SpinWait(random.Next(200_000));
            }

            process.Kill();
            await process.WaitForExitAsync(stop);
            RequireWhole(name);
        }
    }

    [Fact, Trait("tier", "long")]
    public async Task Of_two_runs_into_one_folder_one_writes_and_the_other_says_so()
    {
        CancellationToken stop = TestContext.Current.CancellationToken;
        Assert.Equal(0, (await ProgramProcess.Run(ProgramProcess.Program, Lay("whole"), stop)).Code);

        CommandRun[] both = await Task.WhenAll(
            ProgramProcess.Run(ProgramProcess.Program, Lay("shared"), stop),
            ProgramProcess.Run(ProgramProcess.Program, Lay("shared"), stop));

        Assert.Equal([0, 2], both.Select(run => run.Code).Order());
        Assert.Contains("exist", Assert.Single(both.Single(run => run.Code == 2).Messages), StringComparison.Ordinal);
        RequireWhole("shared");
        Assert.Equal(Directory.GetFiles(folder.Path("whole")).Length, Directory.GetFiles(folder.Path("shared")).Length);
    }

    private string[] Lay(string name) =>
        [
            "layout", RepositoryFile.PathOf("shapes", "outlines", "dog-bone.json"), "--width", "600", "--effort", "1", "--quiet", "--out",
            folder.Path(name),
        ];

    // A file of the run is the file of a run that was left alone; what is left beside it has the name of a file begun.
    private void RequireWhole(string name)
    {
        foreach (string file in Names(name))
        {
            string left = Path.GetFileName(file);
            if (!Begun().IsMatch(left))
            {
                Assert.Equal(File.ReadAllBytes(folder.Path($"whole/{left}")), File.ReadAllBytes(file));
            }
        }
    }

    // The folder comes and goes while the program finds out whether it may write there.
    private string[] Names(string name)
    {
        try
        {
            return Directory.GetFiles(folder.Path(name));
        }
        catch (DirectoryNotFoundException)
        {
            return [];
        }
    }

    [GeneratedRegex(@"^\.[a-z.-]+\.\d+\.tmp$")]
    private static partial Regex Begun();
}
