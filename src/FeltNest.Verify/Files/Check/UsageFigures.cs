namespace FeltNest.Files.Check;

/// <summary>Felt used against standard: parts add to the difference, rolls add to the whole.</summary>
internal static class UsageFigures
{
    // A coin's fraction lost in written digits.
    private const double Coin = 1e-4;

    /// <summary>Checks the file.</summary>
    public static void Check(StatedFields top)
    {
        string? unit = top.Text("unit");
        string? quantity = unit switch { "m" => "metres", "m2" => "squareMetres", "kg" => "kilograms", _ => null };
        top.Keep(quantity is not null, "unit", $"says {unit}; m, m2 and kg are known");
        StatedFields standard = top.Needed("standard");
        StatedFields actual = top.Needed("actual");
        if (quantity is null)
        {
            return;
        }

        double from = standard.Number(quantity);
        double more = actual.Number(quantity) - from;
        double? money = actual.Optional("cost") - standard.Optional("cost");
        StatedFields difference = top.Needed("difference");
        difference.Same("quantity", more, Shares.Room(from));
        difference.Same("percent", 100 * more / from, Shares.Room(100));
        difference.Same("money", money, Coin);
        Parts(top, from, more, money);
        Rolls(top, actual, from, quantity);

        // One felt has one mass, whatever was used of it.
        if (standard.Optional("kilograms") is { } kg)
        {
            actual.Same("kilograms", kg / standard.Number("squareMetres") * actual.Number("squareMetres"), Shares.Room(kg));
        }
    }

    private static void Parts(StatedFields top, double from, double more, double? money)
    {
        IReadOnlyList<StatedFields> parts = top.Items("parts");
        foreach (StatedFields part in parts)
        {
            part.Same("percentOfStandard", 100 * part.Number("quantity") / from, Shares.Room(100));
        }

        double sum = parts.Sum(p => p.Number("quantity"));
        top.Keep(
            Math.Abs(sum - more) <= Shares.Room(from), "parts",
            FormattableString.Invariant($"add to {sum:0.######}, not to the difference of {more:0.######}"));
        double paid = parts.Sum(p => p.Optional("money") ?? 0);
        top.Keep(
            money is null || Math.Abs(paid - money.Value) <= Coin * Math.Max(1, parts.Count), "parts",
            FormattableString.Invariant($"cost {paid:0.####}, not the difference of {money:0.####}"));
    }

    private static void Rolls(StatedFields top, StatedFields actual, double from, string quantity)
    {
        IReadOnlyList<StatedFields> rolls = top.Items("rolls");
        double metres = rolls.Sum(r => r.Number("metres"));
        actual.Same("metres", metres, Shares.Room(metres));
        double balls = top.Number("balls");
        bool counted = rolls.All(r => r.Optional("unpairedPanels") is not null);
        if (counted)
        {
            top.Same("balls", rolls.Sum(r => r.Number("balls")), Shares.Room(balls));
        }

        foreach (StatedFields roll in rolls)
        {
            double good = roll.Number("goodPanels");
            double? pairs = (good - roll.Optional("unpairedPanels")) / 2;
            double own = roll.Number("balls");
            roll.Keep(own <= (good / 2) + Shares.Room(own), "balls", "is more than half the good panels");
            roll.Keep(
                pairs is null || Math.Abs(pairs.Value - own) <= Shares.Room(own), "balls",
                "does not follow from good panels and those without a partner");
            double? each = own > 0 ? 1000 * roll.Number("metres") / own : null;
            roll.Same("metresPerThousandBalls", each, Shares.Room(each ?? 0));
            double? used = quantity switch
            {
                "metres" => 1,
                "squareMetres" => roll.Optional("widthMm") / 1000,
                _ => null,
            };
            if (used is not null && each is not null && balls > 0)
            {
                double allowed = 1000 * from / balls;
                roll.Same("morePercent", 100 * ((each.Value * used.Value / allowed) - 1), Shares.Room(100));
            }
        }
    }
}
