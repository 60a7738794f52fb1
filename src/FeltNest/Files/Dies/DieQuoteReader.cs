using FeltNest.Die.Order;
using FeltNest.Files.Json;
using static FeltNest.Files.Dies.DieQuoteDocument;

namespace FeltNest.Files.Dies;

/// <summary>Reads a maker's answer to a request for a quote (schema feltnest/die-quote/1).</summary>
internal static class DieQuoteReader
{
    /// <summary>The answer of a file.</summary>
    /// <exception cref="InputException">Names the file, the field, the value found and what is allowed.</exception>
    public static DieQuote Read(string path) => Read(InputText.OfFile(path));

    /// <summary>The answer of a text.</summary>
    /// <exception cref="InputException">Names the text, the field, the value found and what is allowed.</exception>
    public static DieQuote Read(InputText text)
    {
        JsonFields top = JsonFields.Top(text, Document);
        int reRules = top.Whole(ReRules);
        if (reRules > 0 && !top.Has(ReRulePrice))
        {
            throw top.Fault(ReRulePrice, $"is missing: the die can be ruled again {reRules} times, at which price?");
        }

        return new DieQuote
        {
            Die = top.Text(DieQuoteDocument.Die),
            Revision = top.OptionalText(Revision),
            DieSha256 = top.OptionalText(DieSha256)?.ToLowerInvariant(),
            DeliveryDays = top.OptionalWhole(DeliveryDays),
            Wear = new DieWear
            {
                Price = (decimal)top.Number(Price),
                Currency = top.Currency(Currency),
                LifeStrikes = top.Whole(LifeStrikes),
                ReRules = reRules,
                ReRulePrice = (decimal)(top.OptionalNumber(ReRulePrice) ?? 0),
            },
        };
    }
}
