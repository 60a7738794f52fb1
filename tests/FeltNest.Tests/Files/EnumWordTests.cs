using FeltNest.Ball;
using FeltNest.Layout;
using Xunit;

namespace FeltNest.Tests.Files;

public sealed class EnumWordTests
{
    [Fact]
    public void Words_are_those_the_files_promise()
    {
        Assert.Equal(
            ["type-1", "type-2", "type-3", "high-altitude", "stage-1", "stage-2", "stage-3-felt", "stage-3-foam", "none"],
            EnumWord.All<RuleType>());
        Assert.Equal(["two-harmonic", "four-arc", "elastica", "points", "shaped"], EnumWord.All<SeamFamily>());
        Assert.Equal(["elastic", "conformal", "equidistant"], EnumWord.All<FlatteningMethod>());
        Assert.Equal(["free", "mated", "true"], EnumWord.All<EdgeRule>());
        Assert.Equal(["same", "alternate", "any"], EnumWord.All<RowRule>());
    }

    [Fact]
    public void A_word_finds_its_value_and_an_unknown_one_finds_none()
    {
        Assert.Equal(RuleType.Stage3Felt, EnumWord.Find<RuleType>("stage-3-felt"));
        Assert.Null(EnumWord.Find<RuleType>("Stage-3-Felt"));
        Assert.Null(EnumWord.Find<RuleType>("3"));
    }
}
