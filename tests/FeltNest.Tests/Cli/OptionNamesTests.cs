using FeltNest.Cli;
using Xunit;

namespace FeltNest.Tests.Cli;

public sealed class OptionNamesTests
{
    private static readonly string[] Known =
    [
        .. CommandLine.Root(new Terminal { Results = TextWriter.Null, Messages = TextWriter.Null }).Subcommands
            .SelectMany(c => c.Subcommands.Append(c))
            .SelectMany(c => c.Options)
            .Select(o => o.Name),
    ];

    [Theory]
    [MemberData(nameof(All))]
    public void Everything_a_fault_can_be_about_is_an_option_of_some_command(AskedFor asked) =>
        Assert.Contains(OptionNames.Of(asked), Known);

    [Fact]
    public void A_fault_without_a_file_is_told_by_its_option_and_one_in_a_file_by_its_field()
    {
        InputException fault = new(AskedFor.SideShift, "60 is outside 0 to 50 mm");

        Assert.Equal("--side-shift: 60 is outside 0 to 50 mm", OptionNames.LineOf(fault));
        Assert.Equal("a.json: side shift: 60 is outside 0 to 50 mm", OptionNames.LineOf(fault.InFile("a.json")));
    }

    public static TheoryData<AskedFor> All() => [.. Enum.GetValues<AskedFor>()];
}
