using FeltNest.Files.Layouts;
using FeltNest.Tests.Die;
using FeltNest.Tests.Files;
using FeltNest.Yield;

namespace FeltNest.Tests.Cli;

/// <summary>A die designed once by the command, for the tests that only use it.</summary>
public sealed class DesignedDie : IDisposable
{
    private readonly TempFolder folder = new();

    /// <summary>Designs it.</summary>
    public DesignedDie()
    {
        File.WriteAllBytes(Layout, LayoutWriter.Write(DieCases.PanelLay, YieldAccount.Of(DieCases.PanelLay)));
        Run = Design().GetAwaiter().GetResult();
    }

    /// <summary>What the command said.</summary>
    public CommandRun Run { get; }

    /// <summary>The layout's file.</summary>
    public string Layout => folder.Path("layout.json");

    /// <summary>Folder of the results.</summary>
    public string Results => folder.Path("out");

    /// <summary>The die's file.</summary>
    public string Die => folder.Path("out/die.json");

    /// <summary>Designs it (again) with more options.</summary>
    public Task<CommandRun> Design(params string[] more) => CommandRun.Of(
        [
            "die", Layout, "--order", RepositoryFile.PathOf("shapes", "demo", "dies", "gang-die.json"), "--press",
            RepositoryFile.PathOf("shapes", "demo", "presses", "beam-press.json"), "--out", Results, "--json", "--quiet", .. more,
        ]);

    /// <inheritdoc/>
    public void Dispose() => folder.Dispose();
}
