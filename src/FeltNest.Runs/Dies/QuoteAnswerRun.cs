using System.Security.Cryptography;
using FeltNest.Die.Order;
using FeltNest.Files;
using FeltNest.Files.Costs;
using FeltNest.Files.Dies;
using FeltNest.Report;
using static FeltNest.InvariantText;

namespace FeltNest.Runs.Dies;

/// <summary>A maker's answer to a request for a quote, put into the costs of the shop.</summary>
internal sealed class QuoteAnswerRun : IRun
{
    private readonly DieQuote quote;
    private readonly InputText costs;

    /// <summary>Reads what is asked about.</summary>
    /// <param name="dieFile">The die that was asked about.</param>
    /// <param name="answerFile">The answer.</param>
    /// <param name="costsFile">The costs.</param>
    /// <exception cref="InputException">A file that cannot be used, or an answer about another die.</exception>
    public QuoteAnswerRun(string dieFile, string answerFile, string costsFile)
    {
        DieInput die = DieReader.Read(dieFile);
        quote = DieQuoteReader.Read(answerFile);
        costs = InputText.OfFile(costsFile);
        string hash = Convert.ToHexStringLower(SHA256.HashData(File.ReadAllBytes(dieFile)));
        if (quote.Die != die.Die.Name)
        {
            throw new InputException(
                answerFile, DieQuoteDocument.Die.Name, $"'{OneLine.Of(quote.Die)}' is another die than '{OneLine.Of(die.Die.Name)}'");
        }

        if (quote.Revision is { } revision && revision != die.Die.Revision)
        {
            throw new InputException(
                answerFile, DieQuoteDocument.Revision.Name,
                $"'{OneLine.Of(revision)}' is not the die's: {OneLine.Of(die.Die.Revision ?? "it has none")}");
        }

        if (quote.DieSha256 is { } said && said != hash)
        {
            throw new InputException(
                answerFile, DieQuoteDocument.DieSha256.Name, "is the hash of another file: the die was changed after it was asked about");
        }
    }

    /// <inheritdoc/>
    public IReadOnlyList<string> FileNames { get; } = ["costs.json"];

    /// <inheritdoc/>
    public IReadOnlyList<string> Notes => [];

    /// <inheritdoc/>
    public Outcome Execute(Action? resultThere, CancellationToken search, CancellationToken interrupt)
    {
        byte[] written = QuotedCosts.Of(costs, quote);
        DieWear wear = quote.Wear;
        TextTable table = new();
        table.Heading($"{quote.Die}: quoted")
            .Line("price of one die", (double)wear.Price, "0.00", wear.Currency)
            .Line("strikes to the first re-ruling", Invariant($"{wear.LifeStrikes}"))
            .Line("can be ruled again", Invariant($"{wear.ReRules}"), "times")
            .Line("price of each re-ruling", wear.ReRules > 0 ? (double)wear.ReRulePrice : null, "0.00", wear.Currency)
            .Line("days to delivery", quote.DeliveryDays is { } days ? Invariant($"{days}") : "not stated");
        return new Outcome { Files = [new(FileNames[0], () => written)], Table = table.ToString() };
    }
}
