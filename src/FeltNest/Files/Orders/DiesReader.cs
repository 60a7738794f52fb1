using FeltNest.Files.Csv;
using FeltNest.Files.Layouts;
using FeltNest.Layout;
using FeltNest.Rolls.Orders;
using FeltNest.Rolls.Plan;

namespace FeltNest.Files.Orders;

/// <summary>Reads the list of dies (CSV): what each cuts is said by its layout.</summary>
public static class DiesReader
{
    /// <summary>Most dies of one list.</summary>
    public const int MostDies = 200;

    private static readonly string[] Required = ["die", "ball", "layout", "strikesLeft"];
    private static readonly string[] Optional = ["repeats", "mostWidthMm", "makePrice", "lifeStrikes", "reRules", "reRulePrice"];

    /// <summary>The dies of a file in its order.</summary>
    /// <exception cref="InputException">Names the file, the line, the column, the value found and what is allowed.</exception>
    public static IReadOnlyList<CutDie> Read(string path)
    {
        Dictionary<string, RollLayout> layouts = [];
        List<CutDie> dies = [];
        foreach (CsvRow row in CsvTable.Read(path, Required, Optional).Rows)
        {
            CutDie die = Die(row, path, layouts);
            if (dies.Exists(d => d.Name == die.Name))
            {
                throw row.Fault("die", $"'{die.Name}' stands in the list twice: every die needs a name of its own");
            }

            dies.Add(dies.Count < MostDies ? die : throw row.Fault("die", $"is one too many: at most {MostDies} dies are planned at once"));
        }

        return dies;
    }

    private static CutDie Die(CsvRow row, string path, Dictionary<string, RollLayout> layouts)
    {
        string file = Path.Combine(Path.GetDirectoryName(path) ?? string.Empty, row.Text("layout"));
        int repeats = Whole(row, "repeats", 1, StrikePlanner.MostRepeats) ?? 1;
        int reRules = Whole(row, "reRules", 0, 1000) ?? 0;
        if (!layouts.TryGetValue(file, out RollLayout? layout))
        {
            layouts.Add(file, layout = LayoutReader.Read(file).Layout);
        }

        bool make = row.Has("makePrice");
        int left = Whole(row, "strikesLeft", 0, 1_000_000_000)
            ?? throw row.Fault("strikesLeft", "is blank: a number is wanted, 0 for a die not made yet");
        if (make && left > 0)
        {
            throw row.Fault(
                "makePrice", $"stands beside {left} strikes left: a die with a price to make is not there yet, so its strikesLeft is 0");
        }

        if ((make || reRules > 0) && !row.Has("lifeStrikes"))
        {
            throw row.Fault("lifeStrikes", $"is blank: a die that is {(make ? "made" : "ruled again")} needs the strikes of a new rule");
        }

        try
        {
            return new CutDie(
                row.Text("die"), row.Text("ball"), StrikeShape.Of(layout, repeats),
                row.OptionalNumber("mostWidthMm", 10, 10_000, "mm") ?? 10_000, left,
                make ? row.Money("makePrice", 0, 1_000_000_000m, "in the currency of the plan") : null,
                Whole(row, "lifeStrikes", 1, 1_000_000_000) ?? 0,
                reRules > 0 ? row.Money("reRulePrice", 0, 1_000_000_000m, "in the currency of the plan") : 0, reRules)
            {
                Drawn = (layout, repeats),
            };
        }
        catch (InputException error) when (error.File is null)
        {
            throw error.InFile(file);
        }
    }

    private static int? Whole(CsvRow row, string column, int low, int high) =>
        row.OptionalNumber(column, low, high, string.Empty) is not { } value ? null
        : value == Math.Floor(value) ? (int)value : throw row.Fault(column, FormattableString.Invariant($"{value} is not a whole number"));
}
