using System.Text.Json;
using FeltNest.Die.Order;
using FeltNest.Files.Json;
using FeltNest.Files.Rolls;

namespace FeltNest.Files.Dies;

/// <summary>Reads what a shop wants of a die (schema feltnest/die-order/1).</summary>
public static class DieOrderReader
{
    // Longest text on a sheet, letters.
    private const int MostLetters = 60;

    private static readonly string[] Wishes = ["quantity", "replaces", "mounting", "registration", "airHoles", "cavityMarks", "judgedBy"];

    /// <summary>The order of a file.</summary>
    /// <exception cref="InputException">Names the file, the field, the value found and what is allowed.</exception>
    public static DieOrder Read(string path)
    {
        JsonElement root = JsonInput.ReadObject(path);
        JsonInput.SchemaOf(root, path, SchemaName.DieOrder);
        JsonFields top = JsonFields.Top(
            path, root, "schema", "name", "rule", "board", "ejection", "tolerances", "force", "felt", "commonCut", "view", "projection",
            "title", "order", "wear");
        JsonFields felt = top.Object("felt", "thicknessMm", "material", "plies", "napToward");
        return new DieOrder(
            Short(top, "name"), Rule(top), Board(top), Ejection(top), Tolerances(top), Force(top), felt.Within("thicknessMm", 0.3, 12),
            Optional(felt, "material"),
            felt.Has("plies") ? felt.WholeWithin("plies", 1, 100) : 1, top.Has("commonCut") && top.Flag("commonCut"),
            OneOf(top, "view", "panel", "die") == "die",
            OneOf(top, "projection", "first", "third") == "third", Title(top), Wish(top), Wear(top))
        {
            Nap = felt.Has("napToward")
                ? NapWord.Find(felt.Text("napToward"))
                    ?? throw felt.Fault("napToward", $"'{felt.Text("napToward")}' is not known; allowed: +x, -x")
                : null,
        };
    }

    private static DieRule Rule(JsonFields top)
    {
        JsonFields rule = top.Object("rule", "thicknessMm", "heightMm", "bevel", "hardness", "leastBendMm");
        return new DieRule(
            rule.Within("thicknessMm", 0.3, 8), rule.Within("heightMm", 8, 120), rule.Word<RuleBevel>("bevel"),
            Optional(rule, "hardness") ?? "die maker's choice",
            rule.Within("leastBendMm", 0.1, 50));
    }

    private static DieBoard Board(JsonFields top)
    {
        JsonFields board = top.Object("board", "material", "thicknessMm", "landMm", "densityKgPerM3", "bridgeEveryMm", "bridgeMm");
        return new DieBoard(
            Short(board, "material"), board.Within("thicknessMm", 3, 60), board.Within("landMm", 3, 200),
            board.Within("densityKgPerM3", 100, 9000), board.Within("bridgeEveryMm", 20, 1000),
            board.Within("bridgeMm", 1, 15));
    }

    private static DieEjection Ejection(JsonFields top)
    {
        JsonFields ejection = top.Object("ejection", "material", "roomMm", "clearMm");
        return new DieEjection(
            Short(ejection, "material"), ejection.Within("roomMm", 0, 20),
            ejection.Has("clearMm") ? ejection.Within("clearMm", 0, 5) : 0.5);
    }

    private static DieTolerances Tolerances(JsonFields top)
    {
        JsonFields item = top.Object("tolerances", "edgeProfileMm", "panelProfileMm", "general");
        DieTolerances read = new(
            item.Within("edgeProfileMm", 0.02, 5), item.Within("panelProfileMm", 0.05, 10), OneOf(item, "general", "m", "f"));
        return read.PanelProfileMm >= read.EdgeProfileMm
            ? read : throw item.Fault(
                "panelProfileMm",
                FormattableString.Invariant(
                    $"{read.PanelProfileMm:R} is below edgeProfileMm {read.EdgeProfileMm:R}: a cut panel cannot be nearer than its die"));
    }

    private static ForceFigures Force(JsonFields top)
    {
        JsonFields force = top.Object("force", "nPerMmPerPly", "basis", "ejectionPercent", "reservePercent", "closeMm");
        return new ForceFigures(
            force.Within("nPerMmPerPly", 0.1, 1000), force.Word<ForceBasis>("basis"),
            force.Has("ejectionPercent") ? force.Within("ejectionPercent", 0, 100) : 15,
            force.Has("reservePercent") ? force.Within("reservePercent", 0, 200) : 25,
            force.Has("closeMm") ? force.Within("closeMm", 0, 50) : 6.35);
    }

    private static DieTitle Title(JsonFields top)
    {
        string[] names = [.. DieTitle.Limits.Select(l => l.Field).Where(f => f is not ("sheetNumber" or "numberOfSheets"))];
        JsonFields? title = top.Has("title") ? top.Object("title", names) : null;
        string? Of(string name)
        {
            string? text = title is null ? null : Optional(title, name);
            int? most = DieTitle.Limits.First(l => l.Field == name).Most;
            return text is { } given && given.Length > (most ?? MostLetters)
                ? throw title!.Fault(name, $"'{given}' has {given.Length} letters: at most {most ?? MostLetters} (ISO 7200)") : text;
        }

        return new DieTitle(
            Of("legalOwner"), Of("identificationNumber"), Of("dateOfIssue"), Of("creator"), Of("approvalPerson"), Of("title"),
            Of("supplementaryTitle"), Of("documentType"), Of("revision"),
            Of("department"), Of("technicalReference"), Of("status"), Of("language"));
    }

    private static DieWishes Wish(JsonFields top)
    {
        JsonFields? order = top.Has("order") ? top.Object("order", Wishes) : null;
        return order is null
            ? new DieWishes(1, null, null, null, null, null, null)
            : new DieWishes(
                order.Has("quantity") ? order.WholeWithin("quantity", 1, 1000) : 1, Optional(order, "replaces"),
                Optional(order, "mounting"), Optional(order, "registration"), Optional(order, "airHoles"),
                Optional(order, "cavityMarks"), Optional(order, "judgedBy"));
    }

    private static DieWear? Wear(JsonFields top)
    {
        if (!top.Has("wear"))
        {
            return null;
        }

        JsonFields wear = top.Object("wear", "price", "currency", "lifeStrikes", "reRules", "reRulePrice");
        string currency = wear.Text("currency");
        return new DieWear(
            (decimal)wear.Within("price", 0, 1e9),
            CurrencyWord.IsSound(currency)
                ? currency
                : throw wear.Fault("currency", $"'{currency}' is not a currency: {CurrencyWord.Allowed}"),
            wear.WholeWithin("lifeStrikes", 1, 1_000_000_000), wear.Has("reRules") ? wear.WholeWithin("reRules", 0, 1000) : 0,
            wear.Has("reRules") ? (decimal)wear.Within("reRulePrice", 0, 1e9) : 0);
    }

    private static string Short(JsonFields fields, string name) => fields.Text(name) is var text && text.Length <= MostLetters
        ? text : throw fields.Fault(name, $"'{text}' has {text.Length} letters: at most {MostLetters}");

    private static string? Optional(JsonFields fields, string name) => fields.Has(name) ? Short(fields, name) : null;

    // The first word holds where the field is left out.
    private static string OneOf(JsonFields fields, string name, string usual, string other) =>
        !fields.Has(name) ? usual : fields.Text(name) is var word && (word == usual || word == other)
        ? word : throw fields.Fault(name, $"'{word}' is not known; allowed: {usual}, {other}");
}
