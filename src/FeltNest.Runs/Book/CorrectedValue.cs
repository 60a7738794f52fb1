using System.Globalization;
using FeltNest.Book;
using FeltNest.Files;
using FeltNest.Files.Csv;
using FeltNest.Files.Fields;
using FeltNest.Files.Orders;

namespace FeltNest.Runs.Book;

/// <summary>Holds a corrected value to what the lists allow: what no list could bring in is not corrected into the book either.</summary>
internal static class CorrectedValue
{
    /// <summary>Refuses a value that its column of a list does not take.</summary>
    /// <param name="kind">What entry is corrected.</param>
    /// <param name="name">The field of its body.</param>
    /// <param name="value">The value; blank for none.</param>
    /// <exception cref="InputException">Names the field, the value and what is allowed.</exception>
    public static void Require(EntryKind kind, string name, string value)
    {
        if (value.Length > 0 && Allowed(ColumnOf(kind, name), value) is { } allowed)
        {
            throw new InputException(AskedFor.SetValues, $"{name}={OneLine.Of(value)} is not allowed: {allowed}");
        }
    }

    private static Field? ColumnOf(EntryKind kind, string name) => (kind, name) switch
    {
        (EntryKind.RollReceived, _) => Named(StockListing.Listing, name),
        (EntryKind.DieMade, _) => Named(DiesListing.Listing, name),
        (EntryKind.OrderTaken or EntryKind.OrderChanged, "balls") => new NumberField(
            name, 1, 1000 * OrdersListing.ThousandBalls.Range.High),
        (EntryKind.OrderTaken or EntryKind.OrderChanged, _) or (EntryKind.TicketFilledIn, "day") => Named(OrdersListing.Listing, name),
        _ => null,
    };

    private static Field? Named(Listing listing, string name) => listing.Columns.All.FirstOrDefault(column => column.Name == name);

    // What is allowed where the value is not; null where it is, or where the body's own type says it.
    private static string? Allowed(Field? column, string value) => column switch
    {
        NumberField number when decimal.TryParse(value, NumberStyles.Float, CultureInfo.InvariantCulture, out decimal amount)
            && !((double)amount >= number.Range.Low && (double)amount <= number.Range.High) =>
            FormattableString.Invariant($"{number.Range.Low} to {number.Range.High}"),
        DayField when DayText.Of(value) is null => "a day as 2026-03-31",
        CurrencyField when !CurrencyWord.IsSound(value) => CurrencyWord.Allowed,
        WordField word when word.Find(value) is null => string.Join(", ", word.Words),
        _ => null,
    };
}
