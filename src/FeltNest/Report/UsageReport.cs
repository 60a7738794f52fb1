using FeltNest.Cost.Offers;
using FeltNest.Cost.Usage;
using static FeltNest.InvariantText;

namespace FeltNest.Report;

/// <summary>What a split of used felt prints.</summary>
internal static class UsageReport
{
    // Most rolls shown on the terminal: the files hold all.
    private const int MostRolls = 20;

    /// <summary>The text, lines ending in a line feed.</summary>
    public static string Text(UsageVariance variance)
    {
        TextTable table = new();
        Whole(table, variance);
        Causes(table, variance);
        Rolls(table, variance);
        return table.ToString();
    }

    private static void Whole(TextTable table, UsageVariance variance)
    {
        string unit = PriceUnits.WordOf(variance.Unit);
        double thousands = variance.Balls / 1000;
        string rolls = variance.Rolls.Count == 1 ? "1 roll" : Invariant($"{variance.Rolls.Count} rolls");
        table.Heading(Invariant($"Felt used against standard: {variance.Question.Layout.Parts[0].Name}"))
            .Line(
                "above standard", Invariant($"{variance.MorePercent:+0.00;-0.00;0.00} %"),
                Invariant($"{variance.MoreQuantity:+0.00;-0.00;0.00} {unit}; below 0 is less than standard"))
            .Line("good balls", variance.Balls, "0.#", string.Empty, $"from {rolls}")
            .Line(
                "used per 1000 balls", FeltPrice.QuantityOf(variance.Unit, variance.Actual) / thousands, "0.000", unit,
                Felt(variance.Actual, thousands))
            .Line(
                "standard per 1000 balls", FeltPrice.QuantityOf(variance.Unit, variance.Standard) / thousands, "0.000", unit,
                Felt(variance.Standard, thousands));
        if (variance.StandardCost is { } cost)
        {
            table.Line(
                "cost of the felt", Invariant($"{variance.ActualCost:0.00} {variance.Currency}"),
                Invariant($"standard {cost:0.00}, difference {variance.MoreMoney:+0.00;-0.00;0.00}"));
        }
    }

    private static void Causes(TextTable table, UsageVariance variance)
    {
        string unit = PriceUnits.WordOf(variance.Unit);
        table.Heading("Where the difference comes from (the parts add up to the whole)")
            .Row(Invariant($"{string.Empty,-28}{unit,10}{"%",9}{variance.Currency ?? string.Empty,12}   lost: standard   really"));
        foreach (UsagePart part in variance.Parts)
        {
            Row(
                table, NameOf(part.Cause), part.Quantity, part.Percent, part.Money,
                part.Standard is null ? string.Empty : Invariant($"{part.Standard,15:0.00} %{part.Actual,7:0.00} %"));
        }

        Row(table, "whole", variance.MoreQuantity, variance.MorePercent, variance.MoreMoney, string.Empty);
    }

    private static void Rolls(TextTable table, UsageVariance variance)
    {
        table.Heading("Roll by roll").Row("                        metres     width   rows   per 1000     above   balls")
            .Row(Invariant($"                             m        mm      %          m  standard %"));
        foreach (UsageRoll roll in variance.Rolls.Take(MostRolls))
        {
            string width = roll.Actual.WidthMm is { } measured ? Invariant($"{measured:0.#}") : "-";
            string per = double.IsFinite(roll.PerThousandBalls.Metres) ? Invariant($"{roll.PerThousandBalls.Metres:0.000}") : "none";
            string more = double.IsFinite(roll.MorePercent) ? Invariant($"{roll.MorePercent:+0.00;-0.00;0.00}") : "-";
            table.Row(Invariant(
                $"{Short(roll.Actual.Roll),-20}{roll.Actual.Metres,10:0.##}{width,10}{roll.RowsPercent,7:0.0}{per,11}{more,10}"
                    + $"{roll.Balls,8:0}"));
        }

        if (variance.Rolls.Count > MostRolls)
        {
            table.Note(Invariant($"... and {variance.Rolls.Count - MostRolls} more rolls: all are in usage.json."));
        }
    }

    /// <summary>Notes on what the split rests on, one line each.</summary>
    public static IEnumerable<string> Notes(UsageVariance variance)
    {
        if (variance.NotRecorded.Count > 0)
        {
            yield return $"not recorded, so taken at the standard: {string.Join(", ", variance.NotRecorded.Select(NameOf))}; what they "
                + $"really did stands under '{NameOf(UsageCause.Lay)}'";
        }

        if (variance.Question.Costs is null)
        {
            yield return "without a costs file the standard is the layout alone: no ends, faults, rejects or panels without a partner, "
                + "and no money";
        }

        if (variance.Parts.First(p => p.Cause == UsageCause.Lay).Actual < -0.05)
        {
            yield return "more panels came out than layout and metres allow: look at the metres recorded, or at the layout that was "
                + "really cut";
        }
    }

    private static void Row(TextTable table, string name, double quantity, double percent, decimal? money, string remark) => table.Row(
        Invariant(
            $"{name,-28}{quantity,10:+0.00;-0.00;0.00}{percent,9:+0.00;-0.00;0.00}"
                + $"{(money is { } amount ? Invariant($"{amount:+0.00;-0.00;0.00}") : string.Empty),12}{remark}")
            .TrimEnd());

    private static string NameOf(UsageCause cause) => cause switch
    {
        UsageCause.Width => "width",
        UsageCause.Lay => "feed and skipped strikes",
        UsageCause.RollEnds => "roll ends and remnants",
        UsageCause.Faults => "faults",
        UsageCause.Rejects => "rejects after cutting",
        UsageCause.Unpaired => "panels without a partner",
        _ => "price",
    };

    private static string Felt(Yield.FeltUsage felt, double thousands) =>
        Invariant($"{felt.Metres / thousands:0.000} m, {felt.SquareMetres / thousands:0.000} m2")
        + (felt.Kilograms is { } kg ? Invariant($", {kg / thousands:0.000} kg") : string.Empty);

    private static string Short(string name) => name.Length <= 19 ? name : name[..16] + "...";
}
