using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using FeltNest.Die.Order;
using static FeltNest.Files.Costs.CostsDocument;

namespace FeltNest.Files.Costs;

/// <summary>A costs file with the die as a maker quoted it; all else stays as it was written.</summary>
internal static class QuotedCosts
{
    private static readonly JsonSerializerOptions Written =
        new() { WriteIndented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The bytes of the new costs file.</summary>
    /// <param name="costs">The costs file as it is.</param>
    /// <param name="quote">The answer.</param>
    /// <exception cref="InputException">The costs cannot be used, or count in another currency.</exception>
    public static byte[] Of(InputText costs, DieQuote quote)
    {
        string currency = CostsReader.Read(costs).Currency;
        if (currency != quote.Wear.Currency)
        {
            throw new InputException(
                costs.Name, Currency.Name, $"is {currency} and the quote is in {quote.Wear.Currency}: write the quote in {currency}");
        }

        JsonObject root = JsonNode.Parse(costs.Bytes.Span)!.AsObject();
        JsonObject die = new()
        {
            [DieFields.Price.Name] = quote.Wear.Price,
            [DieFields.LifeStrikes.Name] = quote.Wear.LifeStrikes,
            [DieFields.ReRules.Name] = quote.Wear.ReRules,
        };
        if (quote.Wear.ReRules > 0)
        {
            die[DieFields.ReRulePrice.Name] = quote.Wear.ReRulePrice;
        }

        root[CostsDocument.Die.Name] = die;
        byte[] written = [.. JsonSerializer.SerializeToUtf8Bytes(root, Written), (byte)'\n'];
        CostsReader.Read(InputText.Of(costs.Name, written));
        return written;
    }
}
