using System.CommandLine;

namespace FeltNest.Cli.Options;

/// <summary>Options every command that writes results has.</summary>
internal sealed class CommonOptions
{
    /// <summary>Adds the options to a command.</summary>
    public CommonOptions(Command command)
    {
        command.Add(Out);
        command.Add(Force);
        command.Add(Json);
        command.Add(Quiet);
        command.Add(Report);
    }

    /// <summary>Folder of the results.</summary>
    public Option<string?> Out { get; } = new("--out")
    {
        Description = "Folder for the results (default: output/<input>-<what sets the run apart>).",
        HelpName = "folder",
    };

    /// <summary>Whether results may be overwritten.</summary>
    public Option<bool> Force { get; } = new("--force") { Description = "Overwrite existing results." };

    /// <summary>Whether stdout is the result's JSON alone.</summary>
    public Option<bool> Json { get; } = new("--json") { Description = "Print the result's JSON on stdout and nothing else." };

    /// <summary>Whether to write a report to hand over.</summary>
    public Option<bool> Report { get; } = new("--report")
    {
        Description = "Also write report.html: pictures, figures, warnings and inputs in one file to hand over.",
    };

    /// <summary>Whether to keep still.</summary>
    public Option<bool> Quiet { get; } = new("--quiet", "-q") { Description = "No progress and no table; warnings and errors only." };
}
