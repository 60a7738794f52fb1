using System.Text.Json;
using FeltNest.Ball;
using FeltNest.Ball.Ranges;
using FeltNest.Ball.Tolerance;
using FeltNest.Files.Json;
using FeltNest.Panel;

namespace FeltNest.Files.Balls;

/// <summary>Reads a ball specification (schema feltnest/ball/1).</summary>
public static class BallReader
{
    /// <summary>The ball of a file, every number checked against its range, and the felt and the seam as wholes.</summary>
    /// <param name="path">The file.</param>
    /// <param name="changes">Fields that go before those of the file, or null.</param>
    /// <exception cref="InputException">Names the file, the field, the value found and what is allowed.</exception>
    public static BallInput Read(string path, IReadOnlyList<BallChange>? changes = null) => Read(path, JsonInput.ReadObject(path), changes);

    /// <summary>The ball of a text that is at hand already.</summary>
    /// <param name="name">What messages call it.</param>
    /// <param name="text">The text, UTF-8.</param>
    /// <param name="changes">Fields that go before those of the text, or null.</param>
    /// <exception cref="InputException">Names the text, the field, the value found and what is allowed.</exception>
    public static BallInput Read(string name, ReadOnlyMemory<byte> text, IReadOnlyList<BallChange>? changes = null) =>
        Read(name, JsonInput.ReadObject(name, text), changes);

    /// <summary>The ball of a JSON object already read from a file.</summary>
    internal static BallInput Read(string file, JsonElement written, IReadOnlyList<BallChange>? changes = null)
    {
        string[] given = [.. (changes ?? []).Select(change => change.Words)];
        string path = given.Length == 0 ? file : $"{file} with {string.Join(", ", given)}";
        JsonElement root = ChangedBall.Of(written, path, changes ?? []);
        JsonInput.SchemaOf(root, path, SchemaName.Ball);
        JsonFields top = JsonFields.Top(path, root, "schema", "name", "ruleType", "core", "cement", "felt", "seam", "panel", "tolerances");
        JsonFields core = top.Object("core", "outerDiameterMm", "massG");
        JsonFields cement = top.Object("cement", "thicknessMm", "massPerAreaGsm");
        JsonFields panel = top.Object("panel", "flattening", "edge", "warpAngleDeg", "dieOffsetMm");
        BallSpec ball = new(
            top.Text("name")
                + string.Concat((changes ?? []).Where(change => change.Field != "name").Select(change => $", {change.TradeWords}")),
            top.Word<RuleType>("ruleType"),
            new CoreSpec(core.Number("outerDiameterMm"), core.Number("massG")),
            new CementSpec(cement.Number("thicknessMm"), cement.Number("massPerAreaGsm")),
            Felt(top),
            BallSeam.Of(top, path),
            new PanelSpec(panel.Word<FlatteningMethod>("flattening"), panel.Word<EdgeRule>("edge"), panel.NumberOr("warpAngleDeg", "any"))
            {
                DieOffsetMm = panel.OptionalNumber("dieOffsetMm") ?? 0,
            })
        {
            Tolerances = Tolerances(top),
            Given = given,
        };
        try
        {
            // What a panel asks of felt and seam together is found out here, where the fault can still name the file.
            PanelRequest.For(BallRanges.Checked(ball));
            return new BallInput(ball, Assumed(top, root));
        }
        catch (InputException error)
        {
            throw error.File is null ? error.InFile(path) : error;
        }
    }

    // Every tolerance may be left out; one that is counts as none.
    private static ToleranceSpec? Tolerances(JsonFields top)
    {
        if (!top.Has("tolerances"))
        {
            return null;
        }

        JsonFields off = top.Object(
            "tolerances", "coreDiameterMm", "coreMassG", "cementThicknessMm", "cementMassPerAreaGsm", "feltFinishedThicknessMm",
            "feltMassPerAreaGsm");
        double Of(string name) => off.OptionalNumber(name) ?? 0;
        return new ToleranceSpec(
            Of("coreDiameterMm"), Of("coreMassG"), Of("cementThicknessMm"), Of("cementMassPerAreaGsm"), Of("feltFinishedThicknessMm"),
            Of("feltMassPerAreaGsm"));
    }

    private static FeltSpec Felt(JsonFields top)
    {
        JsonFields felt = top.Object(
            "felt", "name", "construction", "thicknessMm", "finishedThicknessMm", "massPerAreaGsm", "warpModulusNPerMm",
            "weftModulusNPerMm", "shearModulusNPerMm",
            "poisson", "neutralLayer", "maxStretchPercent", "maxEdgeCompressionPercent", "cureShrinkWarpPercent", "cureShrinkWeftPercent",
            "applicationStretchWarpPercent", "applicationStretchWeftPercent");
        return new FeltSpec(
            felt.Text("name"),
            felt.Word<FeltConstruction>("construction"),
            felt.Number("thicknessMm"),
            felt.Number("finishedThicknessMm"),
            felt.Number("massPerAreaGsm"),
            felt.Number("warpModulusNPerMm"),
            felt.Number("weftModulusNPerMm"),
            felt.Number("shearModulusNPerMm"),
            felt.Number("poisson"),
            felt.Number("neutralLayer"),
            felt.Number("maxStretchPercent"),
            felt.Number("maxEdgeCompressionPercent"),
            felt.Number("cureShrinkWarpPercent"),
            felt.Number("cureShrinkWeftPercent"))
        {
            ApplicationStretchWarpPercent = felt.OptionalNumber("applicationStretchWarpPercent") ?? 0,
            ApplicationStretchWeftPercent = felt.OptionalNumber("applicationStretchWeftPercent") ?? 0,
        };
    }

    private static string[] Assumed(JsonFields top, JsonElement root)
    {
        if (!top.Has("assumptions"))
        {
            return [];
        }

        JsonElement list = root.GetProperty("assumptions");
        return list.ValueKind == JsonValueKind.Object
            ? [.. list.EnumerateObject().Select(item => OneLine.Of(item.Name))]
            : throw top.Fault("assumptions", $"is {JsonFields.KindName(list)} where an object {{ \"field\": \"reason\" }} is wanted");
    }
}
