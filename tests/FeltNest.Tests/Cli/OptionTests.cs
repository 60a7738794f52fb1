using FeltNest.Cli;
using FeltNest.Cli.Options;
using FeltNest.Layout;
using FeltNest.Layout.Limits;
using FeltNest.Tests.Files;
using Xunit;

namespace FeltNest.Tests.Cli;

public sealed class OptionTests
{
    private static readonly LayoutRequest Usual = new()
    {
        Part = SampleLayout.Part,
        RollWidthMm = 1500,
        Trims = EdgeTrims.Both(15),
        GapMm = 4,
        Rules = new LayoutRules(null, 0, RowRule.Same, false),
        Effort = 5,
        Seed = 1,
    };

    [Theory]
    [InlineData("1370", 1370)]
    [InlineData("1370mm", 1370)]
    [InlineData("137cm", 1370)]
    [InlineData("1.37m", 1370)]
    [InlineData("54in", 1371.6)]
    [InlineData("54 IN", 1371.6)]
    [InlineData("1.5e3", 1500)]
    public void Lengths_may_carry_a_unit(string text, double millimetres) => Assert.Equal(millimetres, LengthText.Read(text)!.Value, 9);

    [Theory]
    [InlineData("")]
    [InlineData("mm")]
    [InlineData("1,5m")]
    [InlineData("1.370.5")]
    [InlineData("54\"")]
    [InlineData("5ft")]
    [InlineData("Infinity")]
    public void Anything_else_is_no_length(string text) => Assert.Null(LengthText.Read(text));

    [Fact]
    public void The_default_folder_names_the_input_the_width_and_the_gap() =>
        Assert.Equal("output/type-2-w1500-g4", DefaultFolder.OfLayout("shapes/balls/type-2.json", Usual, Usual, null));

    [Fact]
    public void Each_setting_that_is_not_the_usual_one_gives_a_folder_of_its_own()
    {
        LayoutRequest[] requests =
        [
            Usual, Usual with { RollWidthMm = 1371.6 }, Usual with { GapMm = 0 }, Usual with { Trims = EdgeTrims.Both(10) },
            Usual with { Effort = 50 },
            Usual with { Seed = 2 },
            Usual with { Rules = Usual.Rules with { WarpAngleDeg = 30 } }, Usual with { Rules = Usual.Rules with { WarpToleranceDeg = 3 } },
            Usual with { Rules = Usual.Rules with { Rows = RowRule.Any } }, Usual with { Rules = Usual.Rules with { OneWay = true } },
        ];
        string[] folders =
        [
            .. requests.Select(request => DefaultFolder.OfLayout("a/type-2.json", request, Usual, null)),
            DefaultFolder.OfLayout("a/type-2.json", Usual, Usual, 30),
        ];

        Assert.Equal(folders.Length, folders.Distinct().Count());
        Assert.Equal("output/type-2-w1371.6-g4", folders[1]);
    }

    [Fact]
    public void A_result_used_as_input_is_called_after_its_folder()
    {
        Assert.Equal("output/type-2-panel-w1500-g4", DefaultFolder.OfLayout("output/type-2-panel/panel.json", Usual, Usual, null));
        Assert.Equal("output/type-3-panel", DefaultFolder.OfPanel("balls/type-3.json"));
    }
}
