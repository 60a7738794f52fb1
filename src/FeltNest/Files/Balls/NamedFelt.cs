using System.Text.Json;
using System.Text.Json.Nodes;
using FeltNest.Ball.Passport;
using FeltNest.Files.Felts;
using FeltNest.Files.Json;
using static FeltNest.Files.Balls.BallDocument;

namespace FeltNest.Files.Balls;

/// <summary>Puts the figures of a felt file that a ball names into the ball's felt, so that the one reader checks them like any
/// other.</summary>
internal static class NamedFelt
{
    /// <summary>The ball's object with the figures in it; the object itself where it names no felt file.</summary>
    /// <param name="root">The ball's object.</param>
    /// <param name="ball">The ball's file, for messages.</param>
    /// <param name="beside">Where a file lies that the ball names.</param>
    /// <exception cref="InputException">The felt file cannot be used, or a figure stands in both files.</exception>
    public static JsonElement Of(JsonElement root, string ball, Func<string, string> beside)
    {
        if (!root.TryGetProperty(Felt.Name, out JsonElement written) || written.ValueKind != JsonValueKind.Object
            || !written.TryGetProperty(FeltFields.File.Name, out JsonElement named))
        {
            return root;
        }

        string field = $"{Felt.Name}.{FeltFields.File.Name}";
        if (named.ValueKind != JsonValueKind.String || string.IsNullOrWhiteSpace(named.GetString()))
        {
            throw new InputException(ball, field, $"is {JsonValues.KindName(named)} where the path of a felt file is wanted");
        }

        FeltFile file = FeltReader.Read(beside(named.GetString()!));
        JsonObject top = JsonObject.Create(root)!.DeepClone().AsObject();
        JsonObject felt = top[Felt.Name]!.AsObject();
        foreach ((string name, JsonNode value) in Figures(file))
        {
            if (felt.ContainsKey(name))
            {
                throw new InputException(
                    ball, $"{Felt.Name}.{name}",
                    $"stands here and in {OneLine.Of(named.GetString()!)}, which {field} names: leave it out here, or name no file");
            }

            felt[name] = value;
        }

        return JsonSerializer.SerializeToElement(top);
    }

    private static IEnumerable<(string Name, JsonNode Value)> Figures(FeltFile file)
    {
        yield return (FeltFields.Name.Name, JsonValue.Create(file.Name));
        foreach ((FeltQuantity quantity, (double value, _)) in file.Values)
        {
            yield return (PassportWords.NameOf(quantity), JsonValue.Create(value));
        }

        yield return (FeltFields.Lot.Name, new JsonObject
        {
            [LotFields.Name.Name] = file.Lot.Name,
            [LotFields.Date.Name] = file.Lot.Date,
            [LotFields.FromPercent.Name] = file.Lot.FromPercent,
            [LotFields.ToPercent.Name] = file.Lot.ToPercent,
            [LotFields.CurveBends.Name] = file.Lot.CurveBends,
        });
    }
}
