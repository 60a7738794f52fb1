using FeltNest.Layout;
using FeltNest.Layout.Limits;
using FeltNest.Rolls.Orders;
using FeltNest.Runs.Rolls;

namespace FeltNest.Cli;

/// <summary>Names the folder of a run that was not given one: the input and whatever sets the run apart, so that two different runs never
/// share a folder.</summary>
internal static class DefaultFolder
{
    private const string Root = "output";

    /// <summary>Folder of a panel run.</summary>
    public static string OfPanel(string input) => Path.Combine(Root, $"{NameOf(input)}-panel");

    /// <summary>Folder of what is done with an outline on a ball: its word is <c>wrap</c>, <c>proven</c> or <c>trial</c>.</summary>
    public static string OfOutline(string ball, string word, string outline) =>
        Path.Combine(Root, $"{NameOf(ball)}-{word}-{NameOf(outline)}");

    /// <summary>Folder of a traced picture.</summary>
    public static string OfTrace(string picture) => Path.Combine(Root, $"{NameOf(picture)}-trace");

    /// <summary>Folder of the sheet of reference marks.</summary>
    public static string OfMarkSheet() => Path.Combine(Root, "marks");

    /// <summary>Folder of what a die cuts against a new lot of felt.</summary>
    public static string OfLot(string ball, string outline, string lot) =>
        Path.Combine(Root, $"{NameOf(ball)}-wrap-{NameOf(outline)}-lot-{NameOf(lot)}");

    /// <summary>Folder of the sheets for the tests of felt.</summary>
    public static string OfFeltTests() => Path.Combine(Root, "felt-tests");

    /// <summary>Folder of a measured felt.</summary>
    public static string OfFelt(string readings) => Path.Combine(Root, $"{NameOf(readings)}-felt");

    /// <summary>Folder of the record sheet of a trial wrap.</summary>
    public static string OfTrialSheet(string ball) => Path.Combine(Root, $"{NameOf(ball)}-trial-sheet");

    /// <summary>Folder of a budget of the seam gap.</summary>
    public static string OfGapBudget(string ball) => Path.Combine(Root, $"{NameOf(ball)}-gap-budget");

    /// <summary>Folder of a layout run: width and gap always, every other setting where it is not the usual one.</summary>
    public static string OfLayout(string input, LayoutRequest request, LayoutRequest usual, double? seconds) =>
        OfRoll(NameOf(input), request, usual, seconds);

    /// <summary>Folder of a study of waists: its range, and the roll as for a layout.</summary>
    public static string OfWaists(string input, IReadOnlyList<double> waists, LayoutRequest request, LayoutRequest usual, double? seconds)
    {
        string step = waists.Count > 1 ? Word("-by", Math.Round(waists[1] - waists[0], 9)) : string.Empty;
        return OfRoll($"{NameOf(input)}-waist{Word(string.Empty, waists[0])}{Word("to", waists[^1])}{step}", request, usual, seconds);
    }

    /// <summary>Folder of the seam families side by side.</summary>
    public static string OfSeams(string input, LayoutRequest request, LayoutRequest usual, double? seconds) =>
        OfRoll($"{NameOf(input)}-seams", request, usual, seconds);

    /// <summary>Folder of a design of seams: what sets it apart, and the roll as for a layout.</summary>
    public static string OfSeamDesign(string input, string design, LayoutRequest request, LayoutRequest usual, double? seconds) =>
        OfRoll($"{NameOf(input)}-{design}", request, usual, seconds);

    /// <summary>Folder of a comparison: what is compared, the files it takes in, and the lay as for a layout.</summary>
    public static string OfCompare(
        string input, string compared, string? costs, string? life, string? kept, double keptFeedMm, double? balls,
        LayoutRequest request, LayoutRequest usual, double? seconds)
    {
        string files = Given("-", costs)
            + (balls is { } count ? Word("-balls", count) : string.Empty)
            + Given("-", life)
            + Given("-die-", kept)
            + FeedWord(kept, keptFeedMm);
        return OfRoll($"{NameOf(input)}-compare-{compared}{files}", request, usual, seconds);
    }

    /// <summary>Folder of the widths to stock for a family: list, widths and costs, and the lay as for a layout.</summary>
    public static string OfFamily(
        string list, string compared, string costs, int mostWidths, LayoutRequest request, LayoutRequest usual, double? seconds) =>
        OfRoll($"{NameOf(list)}-family-{compared}{Given("-", costs)}{Word("-m", mostWidths)}", request, usual, seconds);

    private static string FeedWord(string? kept, double feedMm) => kept is not null && feedMm > 0 ? Word("-feed", feedMm) : string.Empty;

    // The word of a file that may be given.
    private static string Given(string mark, string? file) => file is null ? string.Empty : mark + NameOf(file);

    /// <summary>Word for a list of widths or a range.</summary>
    public static string WidthsWord(IReadOnlyList<double> widths, bool range)
    {
        string first = Word("w", widths[0]);
        if (!range)
        {
            return first + string.Concat(widths.Skip(1).Select(w => Word("_", w)));
        }

        string step = widths.Count > 1 ? Word("by", Math.Round(widths[1] - widths[0], 9)) : string.Empty;
        return first + Word("to", widths[^1]) + step;
    }

    /// <summary>Name of an input file without folder and ending.</summary>
    public static string FileWord(string input) => NameOf(input);

    /// <summary>Folder of felt used against standard.</summary>
    public static string OfUsage(string layout, string actuals, string? costs) =>
        Path.Combine(Root, $"{NameOf(layout)}-usage-{NameOf(actuals)}{Given("-", costs)}");

    /// <summary>Folder of a period's tickets against standard.</summary>
    public static string OfPeriod(string book, string since, string? until, string by) =>
        Path.Combine(Root, $"{Plain(book)}-usage-{since}{(until is null ? string.Empty : $"-to-{until}")}-by-{by}");

    /// <summary>Folder of the strikes of one roll.</summary>
    public static string OfRollPlan(RollAsk asked, int repeats) => Path.Combine(
        Root,
        $"{NameOf(asked.LayoutFile)}-{NameOf(asked.RollFile)}{(repeats > 1 ? Word("-x", repeats) : string.Empty)}"
            + $"{(asked.SideShiftMm > 0 ? Word("-play", asked.SideShiftMm) : string.Empty)}"
            + $"{(asked.FromMm > 0 ? Word("-from", asked.FromMm) : string.Empty)}{(asked.PastEnd ? "-past-end" : string.Empty)}"
            + $"{(asked.Band is { } band ? Word("-band", band) : string.Empty)}");

    /// <summary>Folder of a die.</summary>
    public static string OfDie(string layout, string? order, string? press, int? cavities, int band) => Path.Combine(
        Root,
        $"{NameOf(layout)}-{(order is null ? "die" : NameOf(order))}{(press is null ? string.Empty : $"-{NameOf(press)}")}"
            + $"{(cavities is { } count ? Word("-x", count) : string.Empty)}{(band > 1 ? Word("-band", band) : string.Empty)}");

    /// <summary>Folder of what is found of a file measured on a die or outline: its word is <c>measured</c> or <c>life</c>.</summary>
    public static string OfMeasured(string input, string word, string file) => Path.Combine(Root, $"{NameOf(input)}-{word}-{NameOf(file)}");

    /// <summary>Folder of orders planned against stock.</summary>
    public static string OfOrders(OrdersAsk asked) => Path.Combine(
        Root,
        (asked.Book is { } book ? $"{Plain(book.Name)}-orders" : $"{NameOf(asked.OrdersFile!)}-{NameOf(asked.StockFile!)}")
            + $"{(asked.OffersFile is { } offers ? $"-{NameOf(offers)}" : string.Empty)}"
            + $"{(asked.CostsFile is { } costs ? $"-{NameOf(costs)}" : string.Empty)}-"
            + $"{asked.Start.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture)}"
            + $"{(asked.Nap == NapHandling.Apart ? "-apart" : string.Empty)}{(asked.FromPlanFile is null ? string.Empty : "-begun")}");

    private static string OfRoll(string name, LayoutRequest request, LayoutRequest usual, double? seconds)
    {
        List<string> words = request.RollWidthMm > 0 ? [name, Word("w", request.RollWidthMm)] : [name];
        words.Add(Word("g", request.GapMm));
        LayoutRules rules = request.Rules;
        AddIf(
            request.Trims != usual.Trims,
            Word("e", request.Trims.LowerMm) + (request.Trims.AreEqual ? string.Empty : Word("to", request.Trims.UpperMm)));
        AddIf(rules.WarpAngleDeg != usual.Rules.WarpAngleDeg, rules.WarpAngleDeg is { } angle ? Word("a", angle) : "free");
        AddIf(rules.WarpToleranceDeg != 0, Word("t", rules.WarpToleranceDeg));
        AddIf(rules.Rows != usual.Rules.Rows, EnumWord.Of(rules.Rows));
        AddIf(rules.OneWay, "oneway");
        AddIf(rules.Bands > 1, Word("bands", rules.Bands));
        foreach (ForbiddenStrip strip in rules.Forbidden)
        {
            words.Add(Word("not", strip.YFromMm) + Word("to", strip.YToMm));
        }

        AddIf(rules.Die is not null, $"die{rules.Die?.MostPanels}{Bed(rules.Die)}");
        AddIf(rules.LeastRepeatMm > 0, Word("repeat", rules.LeastRepeatMm));
        AddIf(rules.Plies != Plies.One, Word("plies", rules.Plies.Count) + (rules.Plies.FaceToFace ? "f" : string.Empty));
        AddIf(
            request.Second is not null,
            $"with-{Plain(request.Second?.Part.Name ?? string.Empty)}"
                + $"{(request.Second?.SharePercent is { } share ? Word(string.Empty, share) : string.Empty)}");
        AddIf(request.Effort != usual.Effort, Word("n", request.Effort));
        AddIf(request.Seed != usual.Seed, Word("s", request.Seed));
        AddIf(seconds is not null, Word("sec", seconds ?? 0));
        return Path.Combine(Root, string.Join('-', words));

        void AddIf(bool differs, string word)
        {
            if (differs)
            {
                words.Add(word);
            }
        }
    }

    // A name out of a file is anybody's: of separators, dots and what else leads elsewhere nothing is left, and no folder gets too long a
    // name.
    private static string Plain(string name) =>
        string.Concat(name.Take(40).Select(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '_' ? c : '-'));

    private static string Bed(DieLimit? die) =>
        die is { BedLengthMm: { } length, BedWidthMm: { } width } ? Word("bed", length) + Word("x", width) : string.Empty;

    private static string Word(string letter, double value) =>
        letter + Math.Round(value, 9).ToString("R", System.Globalization.CultureInfo.InvariantCulture);

    // A result used as input is called after its folder: "panel" and "layout" say nothing.
    private static string NameOf(string input)
    {
        string name = Path.GetFileNameWithoutExtension(input);
        string? parent = Path.GetFileName(Path.GetDirectoryName(Path.GetFullPath(input)));
        return name is "panel" or "layout" or "die" or "felt" && !string.IsNullOrEmpty(parent) ? parent : name;
    }
}
