using System.CommandLine;
using FeltNest.Cli;
using FeltNest.Tests.Files;
using Xunit;

namespace FeltNest.Tests.Readme;

/// <summary>The page of all commands is what the command line says of itself.</summary>
public sealed class CommandPageTests
{
    private const string Write = "FELTNEST_WRITE_PAGES";

    private static readonly string Page = RepositoryFile.PathOf("src", "FeltNest.Cli", "COMMANDS.md");

    [Fact]
    public void The_page_of_commands_is_in_step_with_the_options()
    {
        string made = CommandPage.Of(CommandLine.Root(new Terminal { Results = TextWriter.Null, Messages = TextWriter.Null }));
        if (Environment.GetEnvironmentVariable(Write) == "1")
        {
            File.WriteAllText(Page, made);
        }

        string written = File.Exists(Page) ? File.ReadAllText(Page).ReplaceLineEndings("\n") : string.Empty;
        Assert.True(written == made, $"{Page} does not say what the options say; run this test once with {Write}=1 to write it again");
    }

    [Fact]
    public void The_page_of_commands_names_every_option_with_its_default()
    {
        Command command = new("cut", "Cut felt.")
        {
            new Argument<string>("ROLL") { Description = "The roll." },
            new Option<int>("--plies", "-p") { Description = "Layers: one|two.", HelpName = "n", DefaultValueFactory = _ => 2 },
            new Option<string>("--die") { Description = "The die <now>.", HelpName = "file", Required = true },
            new Option<string>("--secret") { Description = "Nobody sees it.", Hidden = true },
        };

        string page = CommandPage.Of([command, new Command("mend", "Mend felt.")]);

        Assert.Contains("\n## cut\n\nCut felt.\n\n```\nfeltnest cut ROLL --die <file> [options]\n```\n\n", page, StringComparison.Ordinal);
        Assert.Contains("\n| `ROLL` | The roll. |\n", page, StringComparison.Ordinal);
        Assert.Contains("\n| `--plies, -p <n>` | Layers: one\\|two. | 2 |\n", page, StringComparison.Ordinal);
        Assert.Contains("\n| `--die <file>` | The die &lt;now>. | must be given |\n", page, StringComparison.Ordinal);
        Assert.DoesNotContain("--secret", page, StringComparison.Ordinal);
    }
}
