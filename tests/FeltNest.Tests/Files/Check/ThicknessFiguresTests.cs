using System.Text.Json;
using System.Text.Json.Nodes;
using FeltNest.Files.Check;
using FeltNest.Files.Panels;
using FeltNest.Panel;
using FeltNest.Tests.Panel;
using Xunit;

namespace FeltNest.Tests.Files.Check;

public sealed class ThicknessFiguresTests
{
    private static readonly byte[] Sound = PanelWriter.Write(Balls.Usual(), PanelFlattener.Flatten(Balls.Usual()));

    [Fact]
    public void A_panel_as_it_is_written_passes() => Assert.Empty(Violations(_ => { }));

    [Theory]
    [InlineData("bendingNmm", 99)]
    [InlineData("bendingNPerMm", -1)]
    [InlineData("edgeTackNPerMm", 0.5)]
    [InlineData("edgeStrainS", 7)]
    [InlineData("puckerLimitPercent", 3)]
    [InlineData("puckerSharePercent", 101)]
    [InlineData("puckerSharePercent", 1)]
    [InlineData("thicknessMm", 3.3)]
    public void A_figure_that_does_not_follow_from_the_others_is_told(string field, double value) =>
        Assert.NotEmpty(Violations(thickness => thickness[field] = value));

    [Theory]
    [InlineData(0, "maxCompressionPercent")]
    [InlineData(1, "fromNeutralMm")]
    [InlineData(2, "maxStretchPercent")]
    public void A_layer_whose_strain_does_not_follow_from_its_radius_is_told(int layer, string field)
    {
        IReadOnlyList<string> told = Violations(thickness =>
        {
            JsonObject item = thickness["layers"]![layer]!.AsObject();
            item[field] = item[field]!.GetValue<double>() + 0.1;
        });

        Assert.Contains(told, line => line.Contains($"layers[{layer}].{field}", StringComparison.Ordinal));
    }

    [Fact]
    public void A_layer_under_another_name_is_told() =>
        Assert.NotEmpty(Violations(thickness => thickness["layers"]![0]!["layer"] = "nap-face"));

    private static IReadOnlyList<string> Violations(Action<JsonObject> spoil)
    {
        JsonObject root = JsonNode.Parse(Sound)!.AsObject();
        spoil(root["thickness"]!.AsObject());
        StatedFile file = new("panel.json", "feltnest/panel/1", JsonSerializer.SerializeToElement(root));
        FigureCheck.Run(file);
        return file.Violations;
    }
}
