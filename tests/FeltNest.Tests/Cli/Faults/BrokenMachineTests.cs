using System.Diagnostics;
using FeltNest.Tests.Files;
using Xunit;

namespace FeltNest.Tests.Cli.Faults;

/// <summary>A machine without room or without the program's libraries: one clear line, nothing half written.</summary>
public sealed class BrokenMachineTests : IDisposable
{
    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Theory]
    [InlineData("layout", "google-ortools-native")]
    [InlineData("panel", "libSkiaSharp")]
    public async Task A_library_that_is_missing_is_told_in_one_line(string command, string library)
    {
        // The managed files alone: every native library is missing.
        foreach (string file in Directory.GetFiles(AppContext.BaseDirectory).Where(file => Path.GetExtension(file) is ".dll" or ".json"))
        {
            File.Copy(file, folder.Path(Path.GetFileName(file)));
        }

        string[] what =
            command == "layout"
                ? ["layout", Shape("outlines/dog-bone.json"), "--width", "600", "--rows", "any"]
                : ["panel", Shape("balls/type-2.json")];
        CommandRun run = await ProgramProcess.Run(
            folder.Path("FeltNest.Cli.dll"), [.. what, "--quiet", "--out", folder.Path("out")], TestContext.Current.CancellationToken);

        Assert.Equal((1, string.Empty), (run.Code, run.Out));
        string line = Assert.Single(run.Messages);
        Assert.StartsWith(
            "feltnest: a library of the program is missing or does not fit this machine: install the program again (", line,
            StringComparison.Ordinal);
        Assert.Contains(library, line, StringComparison.Ordinal);
        Assert.False(Directory.Exists(folder.Path("out")));
    }

    [Fact]
    public async Task Too_little_memory_is_told_in_one_line()
    {
        CommandRun run = await ProgramProcess.Run(
            ProgramProcess.Program, ["layout", Shape("balls/type-2.json"), "--width", "1500", "--quiet", "--out", folder.Path("out")],
            TestContext.Current.CancellationToken, ("DOTNET_GCHeapHardLimit", "0x400000"));

        Assert.Equal(1, run.Code);
        Assert.StartsWith("feltnest: there is not enough memory for this: ", Assert.Single(run.Messages), StringComparison.Ordinal);
        Assert.False(Directory.Exists(folder.Path("out")));
    }

    [Fact]
    public async Task A_full_disk_is_told_and_nothing_half_written_is_left()
    {
        // A tiny disk in a name space of its own; making one needs unshare, mount and the right to use them.
        string disk = folder.Path("disk");
        string program =
            $"dotnet {ProgramProcess.Program} layout {Shape("outlines/dog-bone.json")} --width 600 --effort 1 --quiet --out {disk}/out";
        Directory.CreateDirectory(disk);
        CommandRun run;
        try
        {
            using Process process = ProgramProcess.StartTool(
                "unshare",
                [
                    "-m", "sh", "-c",
                    $"mount -t tmpfs -o size=32k tmpfs {disk} || exit 99; {program}; code=$?; find {disk} -type f; exit $code",
                ]);
            run = await ProgramProcess.Ended(process, TestContext.Current.CancellationToken);
        }
        catch (System.ComponentModel.Win32Exception)
        {
            Assert.Skip("no unshare");
            return;
        }

        Assert.SkipWhen(
            run.Code is 99 || run.Err.StartsWith("unshare", StringComparison.Ordinal), "unshare and mount are not allowed here");
        Assert.Equal((2, string.Empty), (run.Code, run.Out));
        Assert.Equal($"feltnest: {disk}/out: cannot be written (No space left on device", Assert.Single(run.Messages).Split(" : ")[0]);
    }

    private static string Shape(string name) => RepositoryFile.PathOf("shapes", name);
}
