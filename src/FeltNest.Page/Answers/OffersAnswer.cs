using System.Text;
using FeltNest.Cost.Compare;
using FeltNest.Runs;

namespace FeltNest.Page.Answers;

/// <summary>Offers side by side, and the files of the comparison as texts: they hang on the list that was sent, which is not
/// kept.</summary>
/// <param name="Rows">Offers, cheapest first.</param>
/// <param name="Files">Texts by the names of their files.</param>
internal sealed record OffersAnswer(OfferAnswer[] Rows, IReadOnlyDictionary<string, string> Files)
{
    private static readonly string[] Names = ["offers.csv", "offers.json", "offers.svg", "offers.html"];

    /// <summary>The answer of a comparison.</summary>
    public static OffersAnswer Of((Comparison Comparison, Outcome Files) done) => new(
        [.. done.Comparison.Ranking.Select(OfferAnswer.Of)],
        Names.ToDictionary(name => name, name => Encoding.UTF8.GetString(PageFiles.Renamed(done.Files, name).Content)));
}
