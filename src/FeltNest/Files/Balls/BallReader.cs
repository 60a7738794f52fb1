using System.Text.Json;
using FeltNest.Ball;
using FeltNest.Ball.Ranges;
using FeltNest.Ball.Tolerance;
using FeltNest.Files.Felts;
using FeltNest.Files.Json;
using FeltNest.Panel;
using static FeltNest.Files.Balls.BallDocument;

namespace FeltNest.Files.Balls;

/// <summary>Reads a ball specification (schema feltnest/ball/1).</summary>
internal static class BallReader
{
    /// <summary>The ball of a file, every number checked against its range, and the felt and the seam as wholes.</summary>
    /// <param name="path">The file.</param>
    /// <param name="changes">Fields that go before those of the file, or null.</param>
    /// <exception cref="InputException">Names the file, the field, the value found and what is allowed.</exception>
    public static BallInput Read(string path, IReadOnlyList<BallChange>? changes = null) => Read(InputText.OfFile(path), changes);

    /// <summary>The ball of a text.</summary>
    /// <param name="text">The text.</param>
    /// <param name="changes">Fields that go before those of the text, or null.</param>
    /// <exception cref="InputException">Names the text, the field, the value found and what is allowed.</exception>
    public static BallInput Read(InputText text, IReadOnlyList<BallChange>? changes = null) =>
        Read(text, JsonInput.ReadObject(text), changes);

    /// <summary>The ball of a JSON object already read from a text.</summary>
    internal static BallInput Read(InputText text, JsonElement written, IReadOnlyList<BallChange>? changes = null)
    {
        string file = text.Name;
        string[] given = [.. (changes ?? []).Select(change => change.Words)];
        string path = given.Length == 0 ? file : $"{file} with {string.Join(", ", given)}";
        JsonElement root = Given(written, path, text, changes ?? []);
        JsonFields top = JsonFields.Top(path, root, BallDocument.Document);
        BallSpec ball = Spec(top, path, changes ?? []) with { Given = given };
        try
        {
            // What a panel asks of felt and seam together is found out here, where the fault can still name the file.
            PanelRequest.For(BallRanges.Checked(ball));
            return new BallInput(ball, Assumed(root, path));
        }
        catch (InputException error)
        {
            throw error.File is null ? error.InFile(path) : error;
        }
    }

    // A felt file given beside the ball's goes before the one it names; other fields go before those of either.
    private static JsonElement Given(JsonElement written, string path, InputText text, IReadOnlyList<BallChange> changes)
    {
        ILookup<bool, BallChange> ofFile = changes.ToLookup(change => change.Field == BallChange.FeltFileField);
        JsonElement named = ChangedBall.Of(written, path, [.. ofFile[true]]);
        return ChangedBall.Of(NamedFelt.Of(named, path, text.Beside), path, [.. ofFile[false]]);
    }

    private static BallSpec Spec(JsonFields top, string path, IReadOnlyList<BallChange> changes)
    {
        JsonFields core = top.Object(Core);
        JsonFields cement = top.Object(Cement);
        JsonFields panel = top.Object(BallDocument.Panel);
        string changed = string.Concat(changes.Where(change => change.Field != Name.Name).Select(change => $", {change.TradeWords}"));
        return new BallSpec
        {
            Name = top.Text(Name) + changed,
            RuleType = top.Word(BallDocument.RuleType),
            Core = new CoreSpec
            {
                OuterDiameterMm = core.Number(CoreFields.OuterDiameterMm),
                MassG = core.Number(CoreFields.MassG),
            },
            Cement = new CementSpec
            {
                ThicknessMm = cement.Number(CementFields.ThicknessMm),
                MassPerAreaGsm = cement.Number(CementFields.MassPerAreaGsm),
            },
            Felt = FeltOf(top.Object(Felt)),
            Seam = BallSeam.Of(top, path),
            Panel = new PanelSpec(
                panel.Word(PanelFields.Flattening), panel.Word(PanelFields.Edge), panel.NumberOr(PanelFields.WarpAngleDeg))
            {
                DieOffsetMm = panel.Number(PanelFields.DieOffsetMm),
            },
            Tolerances = top.OptionalObject(Tolerances) is { } off ? Off(off) : null,
        };
    }

    private static ToleranceSpec Off(JsonFields off) => new()
    {
        CoreMassG = off.Number(TolerancesFields.CoreMassG),
        CementMassPerAreaGsm = off.Number(TolerancesFields.CementMassPerAreaGsm),
        FeltFinishedThicknessMm = off.Number(TolerancesFields.FeltFinishedThicknessMm),
        FeltMassPerAreaGsm = off.Number(TolerancesFields.FeltMassPerAreaGsm),
        CoreDiameterMm = off.OptionalNumber(TolerancesFields.CoreDiameterMm),
        CementThicknessMm = off.OptionalNumber(TolerancesFields.CementThicknessMm),
        FeltThicknessMm = off.OptionalNumber(TolerancesFields.FeltThicknessMm),
        NeutralLayer = off.OptionalNumber(TolerancesFields.NeutralLayer),
        WarpModulusNPerMm = off.OptionalNumber(TolerancesFields.WarpModulusNPerMm),
        WeftModulusNPerMm = off.OptionalNumber(TolerancesFields.WeftModulusNPerMm),
        ShearModulusNPerMm = off.OptionalNumber(TolerancesFields.ShearModulusNPerMm),
        Poisson = off.OptionalNumber(TolerancesFields.Poisson),
        CureShrinkWarpPercent = off.OptionalNumber(TolerancesFields.CureShrinkWarpPercent),
        CureShrinkWeftPercent = off.OptionalNumber(TolerancesFields.CureShrinkWeftPercent),
        ApplicationStretchWarpPercent = off.OptionalNumber(TolerancesFields.ApplicationStretchWarpPercent),
        ApplicationStretchWeftPercent = off.OptionalNumber(TolerancesFields.ApplicationStretchWeftPercent),
        WarpAngleDeg = off.OptionalNumber(TolerancesFields.WarpAngleDeg),
        DieOffsetMm = off.OptionalNumber(TolerancesFields.DieOffsetMm),
        PlacingAlongMm = off.OptionalNumber(TolerancesFields.PlacingAlongMm),
        PlacingAcrossMm = off.OptionalNumber(TolerancesFields.PlacingAcrossMm),
        PlacingTurnDeg = off.OptionalNumber(TolerancesFields.PlacingTurnDeg),
        ReadAs = off.Has(TolerancesFields.ReadAs) ? off.Word(TolerancesFields.ReadAs) : ToleranceReading.Uniform,
    };

    private static FeltSpec FeltOf(JsonFields felt) => new()
    {
        Name = felt.Text(FeltFields.Name),
        Construction = felt.Word(FeltFields.Construction),
        ThicknessMm = felt.Number(FeltFields.ThicknessMm),
        FinishedThicknessMm = felt.Number(FeltFields.FinishedThicknessMm),
        MassPerAreaGsm = felt.Number(FeltFields.MassPerAreaGsm),
        WarpModulusNPerMm = felt.Number(FeltFields.WarpModulusNPerMm),
        WeftModulusNPerMm = felt.Number(FeltFields.WeftModulusNPerMm),
        ShearModulusNPerMm = felt.Number(FeltFields.ShearModulusNPerMm),
        Poisson = felt.Number(FeltFields.Poisson),
        NeutralLayer = felt.Number(FeltFields.NeutralLayer),
        MaxStretchPercent = felt.Number(FeltFields.MaxStretchPercent),
        MaxEdgeCompressionPercent = felt.Number(FeltFields.MaxEdgeCompressionPercent),
        MaxCompressionPercent = felt.OptionalNumber(FeltFields.MaxCompressionPercent),
        CureShrinkWarpPercent = felt.Number(FeltFields.CureShrinkWarpPercent),
        CureShrinkWeftPercent = felt.Number(FeltFields.CureShrinkWeftPercent),
        ApplicationStretchWarpPercent = felt.Number(FeltFields.ApplicationStretchWarpPercent),
        ApplicationStretchWeftPercent = felt.Number(FeltFields.ApplicationStretchWeftPercent),
        Lot = felt.OptionalObject(FeltFields.Lot) is { } lot ? LotFields.Read(lot) : null,
    };

    private static string[] Assumed(JsonElement root, string path)
    {
        if (!root.TryGetProperty(Files.Fields.Document.AssumptionsField, out JsonElement list) || list.ValueKind == JsonValueKind.Null)
        {
            return [];
        }

        return list.ValueKind == JsonValueKind.Object
            ? [.. list.EnumerateObject().Select(item => OneLine.Of(item.Name))]
            : throw new InputException(
                path, Files.Fields.Document.AssumptionsField,
                $"is {JsonValues.KindName(list)} where an object {{ \"field\": \"reason\" }} is wanted");
    }
}
