using System.CommandLine;
using System.Globalization;
using FeltNest.Cli;
using Xunit;

namespace FeltNest.Tests.Cli;

/// <summary>Help shows defaults as one would type them.</summary>
public sealed class HelpTests
{
    [Fact]
    public void Every_default_that_help_shows_can_be_typed_and_means_the_same()
    {
        RootCommand root = CommandLine.Root(new Terminal { Results = TextWriter.Null, Messages = TextWriter.Null });
        int tried = 0;
        foreach (Command command in root.Subcommands)
        {
            foreach (Option option in command.Options.Where(o => o.HasDefaultValue && o.ValueType != typeof(bool)))
            {
                object? value = option.GetDefaultValue();
                string shown = Convert.ToString(value, CultureInfo.InvariantCulture) ?? string.Empty;
                if (value is null or Array || shown.Length == 0)
                {
                    continue;
                }

                ParseResult parse = root.Parse([command.Name, option.Name, shown]);
                Assert.DoesNotContain(parse.Errors, error => error.Message.Contains(option.Name, StringComparison.Ordinal));
                Assert.Equal(value, parse.GetValue<object>(option.Name));
                tried++;
            }
        }

        Assert.True(tried > 20, $"only {tried} options have a default");
    }

    [Fact]
    public async Task The_edge_trim_and_the_rows_are_shown_as_they_are_typed()
    {
        CommandRun run = await CommandRun.Of("layout", "--help");

        Assert.Contains("[default: 15]", run.Out, StringComparison.Ordinal);
        Assert.Contains("[default: same]", run.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("EdgeTrims", run.Out, StringComparison.Ordinal);
    }
}
