using System.Text.Json.Nodes;
using FeltNest.Die;
using FeltNest.Die.Check;
using FeltNest.Die.Gang;
using FeltNest.Die.Order;
using FeltNest.Files.Dies;
using FeltNest.Layout.Check;
using FeltNest.Tests.Die.Make;
using FeltNest.Tests.Files;
using Xunit;

namespace FeltNest.Tests.Die.Check;

public sealed class DieCheckTests : IDisposable
{
    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Dies_of_panels_and_of_plates_pass()
    {
        Assert.Empty(Verdict(DieCases.Panels, _ => { }).Violations);
        Assert.Empty(Verdict(DieDesigner.Run(Plates(200, 70), TestContext.Current.CancellationToken), _ => { }).Violations);
        Assert.Empty(Verdict(DieDesigner.Run(Plates(190, 200), TestContext.Current.CancellationToken), _ => { }).Violations);
    }

    [Theory]
    [InlineData("feed", "not a whole number of repeats")]
    [InlineData("cavity", "strikes do not tile the layout")]
    [InlineData("place", "strikes do not tile the layout")]
    [InlineData("edge", "off the outline of the layout")]
    [InlineData("rule", "ruleLengthMm")]
    [InlineData("edge for rule", "ruleLengthMm")]
    [InlineData("edge length", "edgeLengthMm")]
    [InlineData("force", "forceKn")]
    [InlineData("joint", "joint.worstMm")]
    [InlineData("gap", "leastGapMm")]
    [InlineData("across", "joint.acrossMm")]
    [InlineData("across worst", "joint.acrossWorstMm")]
    [InlineData("board", "from the board's side")]
    public void A_die_that_was_changed_is_a_violation(string change, string told)
    {
        CheckVerdict verdict = Verdict(DieDesigner.Run(Plates(200, 70), TestContext.Current.CancellationToken), root =>
        {
            switch (change)
            {
                case "feed": root["feedMm"] = 130.0; break;
                case "cavity": root["cavities"]![0]!["xMm"] = 55.0; break;
                case "place": root["strike"]!["places"]![1]!["yMm"] = 25.0; break;
                case "edge": root["edges"]![0]!["arcs"]![0]!["x"] = -20.1; break;
                case "rule": root["ruleLengthMm"] = 1.0; break;
                case "edge for rule": root["ruleLengthMm"] = (double)root["edgeLengthMm"]!; break;
                case "edge length": root["edgeLengthMm"] = (double)root["edgeLengthMm"]! + 0.1; break;
                case "force": root["forceKn"] = 1.0; break;
                case "joint": root["joint"]!["worstMm"] = 3.9; break;
                case "across": root["joint"]!["acrossMm"] = 5.0; break;
                case "across worst": root["joint"]!["acrossWorstMm"] = 3.0; break;
                case "gap": root["leastGapMm"] = 4.5; break;
                default: root["board"]!["widthMm"] = 50.0; break;
            }
        });

        Assert.Contains(verdict.Violations, v => v.Contains(told, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(3, true)]
    [InlineData(3, false)]
    [InlineData(1.6, true)]
    public void A_slit_and_a_neck_and_the_force_they_add_are_measured_again(double wide, bool slit)
    {
        DieDesign design = slit
            ? NarrowPlacesTests.Design(NarrowPlacesTests.Slit(wide), RuleBevel.SideWaste)
            : NarrowPlacesTests.Design(NarrowPlacesTests.Neck(wide), RuleBevel.SidePanel);
        Assert.Empty(Verdict(design, _ => { }).Violations);
        Assert.Contains(
            Verdict(design, root => root["edges"]![0]!["narrow"]![0]!["widthMm"] = wide + 0.05).Violations,
            v => v.StartsWith(
                $"edges[].narrow of part 0: {(slit ? "slit" : "neck")} of {InvariantText.Invariant($"{wide + 0.05:0.###}")} mm is stated"));
        Assert.Contains(
            Verdict(design, root => root["edges"]![0]!.AsObject().Remove("narrow")).Violations, v => v.StartsWith("edges[].narrow"));
        Assert.Contains(
            Verdict(design, root => root["rule"]!["thicknessMm"] = 2.0).Violations, v => v.EndsWith("has no room for the rule"));
        Assert.Contains(
            Verdict(design, root => root["force"]!["closeAddedMm"] = (double)root["force"]!["closeAddedMm"]! - 10).Violations,
            v => v.StartsWith("force.closeAddedMm"));
    }

    [Theory]
    [InlineData("bend", "strips[0].bends[3]")]
    [InlineData("angle", "turn in degrees")]
    [InlineData("radius", "they end")]
    [InlineData("middle", "middleMm")]
    [InlineData("blank", "blankMm")]
    [InlineData("notch", "strips[0].notches")]
    [InlineData("count", "not one of each piece")]
    [InlineData("cut", "of piece 0 are cut")]
    [InlineData("bound", "stock: ")]
    [InlineData("offcut", "stock.cuts[0]")]
    public void A_rule_that_was_changed_is_a_violation(string change, string told)
    {
        CheckVerdict verdict = Verdict(DieCases.Panels, root =>
        {
            JsonNode strip = root["strips"]![0]!;
            JsonNode bend = strip["bends"]![3]!;
            switch (change)
            {
                case "bend": bend["toMm"] = (double)bend["toMm"]! + 0.1; break;
                case "angle": bend["turnDeg"] = (double)bend["turnDeg"]! + 0.1; break;
                case "radius": bend["insideRadiusMm"] = (double)bend["insideRadiusMm"]! + 1; break;
                case "middle": strip["middleMm"] = (double)strip["middleMm"]! + 0.1; break;
                case "blank": strip["blankMm"] = (double)strip["blankMm"]! - 2.23; break;
                case "notch": strip["notches"]![0]![0] = 1e4; break;
                case "count": strip["count"] = 1; break;
                case "cut": root["stock"]!["cuts"]![0]!["times"] = 1; break;
                case "bound": root["stock"]!["bound"] = (int)root["stock"]!["bound"]! - 1; break;
                default: root["stock"]!["cuts"]![0]!["offcutMm"] = 500.0; break;
            }
        });

        Assert.Contains(verdict.Violations, v => v.Contains(told, StringComparison.Ordinal));
    }

    [Fact]
    public void A_file_of_before_that_tells_the_edge_alone_still_passes() =>
        Assert.Empty(Verdict(DieDesigner.Run(Plates(200, 70), TestContext.Current.CancellationToken), root =>
        {
            root["ruleLengthMm"] = (double)root["edgeLengthMm"]!;
            root.AsObject().Remove("edgeLengthMm");
        }).Violations);

    [Fact]
    public void Common_cuts_are_measured_again()
    {
        Assert.Empty(Verdict(DieCases.Common(DieCases.Bricks), _ => { }).Violations);

        // The layout itself is no sound one where arcs take each other up, as its polygons must hold them; the die's own figures are.
        Assert.All(
            Verdict(DieCases.Common(DieCases.RoundEnds), _ => { }).Violations,
            v => Assert.Contains("its arcs leave its polygon", v, StringComparison.Ordinal));
        Assert.Contains(
            Verdict(DieCases.Common(DieCases.Bricks), root => root["commonCuts"]![0]!["lengthMm"] = 19.0).Violations,
            v => v.Contains("cavities 1 and 2 share 20 mm of edge, 19 is stated", StringComparison.Ordinal));
        Assert.Contains(
            Verdict(DieCases.Common(DieCases.Bricks), root => root["commonCuts"]!.AsArray().RemoveAt(0)).Violations,
            v => v.StartsWith("commonCuts: ", StringComparison.Ordinal));

        // Rule counted for every cavity alone, as if nothing were shared.
        Assert.Contains(
            Verdict(DieCases.Common(DieCases.Bricks), root => root["ruleLengthMm"] = 120.0 * root["cavities"]!.AsArray().Count).Violations,
            v => v.StartsWith("ruleLengthMm", StringComparison.Ordinal));
        Assert.Contains(
            Verdict(
                DieCases.Common(DieCases.Bricks),
                root => root["force"]!["lengthMm"] = 120.0 * root["cavities"]!.AsArray().Count).Violations,
                v => v.StartsWith("force.lengthMm", StringComparison.Ordinal));
    }

    [Fact]
    public void The_room_to_the_band_beside_is_measured_again()
    {
        DieDesign design = DieDesigner.Run(
            new GangRequest(SampleLayout.TwoBands, 0, DieCases.Order, DieCases.Press(200, 100), null),
            TestContext.Current.CancellationToken);

        Assert.DoesNotContain(Verdict(design, _ => { }).Violations, v => v.Contains("joint.", StringComparison.Ordinal));
        Assert.Contains(
            Verdict(design, root => root["joint"]!["bandMm"] = 9.0).Violations,
            v => v.StartsWith("joint.bandMm", StringComparison.Ordinal));
        Assert.Contains(
            Verdict(design, root => root["joint"]!["bandWorstMm"] = 8.9).Violations,
            v => v.StartsWith("joint.bandWorstMm", StringComparison.Ordinal));
        Assert.Contains(
            Verdict(design, root => root["joint"]!["bandMm"] = null).Violations,
            v => v.StartsWith("joint.bandMm", StringComparison.Ordinal));
    }

    private static GangRequest Plates(double length, double width) =>
        new(DieCases.Plates, 0, DieCases.Order, DieCases.Press(length, width), null);

    private CheckVerdict Verdict(DieDesign design, Action<JsonNode> change)
    {
        JsonNode root = JsonNode.Parse(DieWriter.Write(design))!;
        change(root);
        string path = folder.Path("die.json");
        File.WriteAllText(path, root.ToJsonString());
        DieInput read = DieReader.Read(path);
        return DieCheck.Verify(read.Layout.Layout, read.Die);
    }
}
