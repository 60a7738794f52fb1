using FeltNest.Files.Csv;
using FeltNest.Files.Layouts;
using FeltNest.Layout;
using FeltNest.Rolls.Orders;
using FeltNest.Rolls.Plan;
using static FeltNest.Files.Orders.DiesListing;

namespace FeltNest.Files.Orders;

/// <summary>Reads the list of dies (CSV): what each cuts is said by its layout.</summary>
internal static class DiesReader
{
    /// <summary>Most dies of one list.</summary>
    public const int MostDies = 200;

    /// <summary>The dies of a file in its order.</summary>
    /// <exception cref="InputException">Names the file, the line, the column, the value found and what is allowed.</exception>
    public static IReadOnlyList<CutDie> Read(string path) => Read(InputText.OfFile(path));

    /// <summary>The dies of a text in its order.</summary>
    /// <exception cref="InputException">Names the text, the line, the column, the value found and what is allowed.</exception>
    public static IReadOnlyList<CutDie> Read(InputText text) => [.. Entries(text).Select(entry => entry.Die)];

    /// <summary>The dies of a text in its order, each with the file of its layout.</summary>
    /// <exception cref="InputException">Names the text, the line, the column, the value found and what is allowed.</exception>
    public static IReadOnlyList<DieEntry> Entries(InputText text)
    {
        Dictionary<string, RollLayout> layouts = [];
        HashSet<string> names = [];
        return CsvTable.Read(text, Listing).Each(row =>
        {
            CutDie die = Read(row, text, layouts);
            if (!names.Add(die.Name))
            {
                throw row.Fault(DiesListing.Die, $"'{die.Name}' stands in the list twice: every die needs a name of its own");
            }

            return names.Count <= MostDies
                ? new DieEntry(die, text.Beside(row.Text(DiesListing.Layout))) { Band = row.OptionalWhole(Band) }
                : throw row.TooMany(DiesListing.Die, $"is one too many: at most {MostDies} dies are planned at once");
        });
    }

    // Long because it reads the columns of a row in their order.
    private static CutDie Read(CsvRow row, InputText text, Dictionary<string, RollLayout> layouts)
    {
        string file = text.Beside(row.Text(DiesListing.Layout));
        int repeats = row.Whole(Repeats);
        int reRules = row.Whole(ReRules);
        if (!layouts.TryGetValue(file, out RollLayout? layout))
        {
            layouts.Add(file, layout = LayoutReader.Read(file).Layout);
        }

        bool make = row.Has(MakePrice);
        int left = row.OptionalWhole(StrikesLeft)
            ?? throw row.Fault(StrikesLeft, "is blank: a number is wanted, 0 for a die not made yet");
        if (make && left > 0)
        {
            throw row.Fault(
                MakePrice, $"stands beside {left} strikes left: a die with a price to make is not there yet, so its strikesLeft is 0");
        }

        if ((make || reRules > 0) && !row.Has(LifeStrikes))
        {
            string renewed = make ? "made" : "ruled again";
            throw row.Fault(LifeStrikes, $"is blank: a die that is {renewed} needs the strikes of a new rule");
        }

        if (make && row.Has(From))
        {
            throw row.Fault(From, "stands beside a price to make it: say in makeDays how many days that takes");
        }

        if (!make && row.Whole(MakeDays) > 0)
        {
            throw row.Fault(MakeDays, "stands beside no price to make it: say in from when a die that is made already comes");
        }

        try
        {
            RollLayout cut = row.OptionalWhole(Band) is { } band ? BandLayout.Of(layout, band) : layout;
            return new CutDie
            {
                Name = row.Text(DiesListing.Die),
                Ball = row.Text(DiesListing.Ball),
                Shape = StrikeShape.Of(cut, repeats, row.Text(DiesListing.Ball)),
                MostWidthMm = row.OptionalNumber(MostWidthMm) ?? MostWidthMm.Default!.Value,
                StrikesLeft = left,
                MakePrice = make ? row.Money(MakePrice) : null,
                LifeStrikes = row.OptionalWhole(LifeStrikes) ?? 0,
                ReRulePrice = reRules > 0 ? row.Money(ReRulePrice) : 0,
                MostReRules = reRules,
                From = row.OptionalDay(From),
                MakeDays = row.Whole(MakeDays),
                Drawn = (cut, repeats),
            };
        }
        catch (InputException error) when (error.File is null)
        {
            throw error.InFile(file);
        }
    }
}
