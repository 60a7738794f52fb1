namespace FeltNest.Files.Check;

/// <summary>Widths or offers side by side: ranks, accounts that close, sheets that add up, names that are there.</summary>
internal static class CompareFigures
{
    // Amounts are written to six decimals: so far may a sum of them be off.
    private const double Coin = 2e-5;

    /// <summary>Checks the file.</summary>
    public static void Check(StatedFields top)
    {
        IReadOnlyList<StatedFields> rows = top.Items("rows");
        string?[] names = [.. rows.Select(r => r.Text("name"))];
        Ranks(top, rows);
        foreach (StatedFields row in rows)
        {
            Felt(row);
            Sheet(row);
            Front(top, row);
        }

        foreach ((string list, string[] fields) in new (string, string[])[]
        {
            ("breakEvens", ["offer", "against"]), ("flips", ["best"]), ("swings", ["bestAtLow", "bestAtHigh"]),
        })
        {
            foreach (StatedFields item in top.Items(list))
            {
                Array.ForEach(fields, field => item.Keep(names.Contains(item.Text(field)), field, "names no row of the comparison"));
            }
        }

        foreach (StatedFields swing in top.Items("swings"))
        {
            double likely = swing.Number("likely");
            swing.Keep(swing.Number("low") <= likely && likely <= swing.Number("high"), "likely", "does not lie between low and high");
        }

        Outlook(top, names);
        Years(top);
        StatedFields.Grow(top.Items("dropWidths"), "rows");
        StatedFields.Grow(top.Items("dropWidths"), "leastWidthMm");
        StatedFields.Grow(top.Items("crossovers"), "widthMm");
        StatedFields.Grow(top.Items("sweep"), "widthMm");
    }

    // In every case one row is the cheapest.
    private static void Outlook(StatedFields top, string?[] names)
    {
        if (top.Inner("outlook") is not { } outlook)
        {
            return;
        }

        IReadOnlyList<StatedFields> rows = outlook.Items("rows");
        double sum = rows.Sum(row => row.Number("cheapestPercent"));
        outlook.Keep(
            Math.Abs(sum - 100) <= 1e-6, "rows", FormattableString.Invariant($"are the cheapest in {sum:0.####} % together, not in 100"));
        outlook.Keep(rows.Select(row => row.Text("name")).SequenceEqual(names), "rows", "are not those of the comparison");
    }

    // Savings of a year from those of a thousand balls; months and present value from both.
    private static void Years(StatedFields top)
    {
        IReadOnlyList<StatedFields> choices = top.Items("years");
        if (choices.Count == 0 || top.Inner("yearTerms") is not { } terms)
        {
            return;
        }

        double thousands = terms.Number("annualBalls") / 1000;
        foreach (StatedFields choice in choices)
        {
            double outlay = choice.Number("outlay");
            double saved = choice.Number("savedPerYear");
            choice.Same("savedPerYear", choice.Number("savedPerThousandBalls") * thousands, Coin * thousands);
            if (choice.Optional("paybackMonths") is not null)
            {
                choice.Same("paybackMonths", 12 * outlay / saved, Shares.Room(12 * outlay / saved));
            }

            if (terms.Optional("interestPercent") is { } interest)
            {
                double years = terms.Number("horizonYears");
                double worth = interest == 0 ? years : (1 - Math.Pow(1 + (interest / 100), -years)) / (interest / 100);
                choice.Same("netPresentValue", (saved * worth) - outlay, Coin * (1 + worth));
            }
        }
    }

    // Ranks are 1, 2, 3 ... in the order of cost, or of felt where a row has no cost.
    private static void Ranks(StatedFields top, IReadOnlyList<StatedFields> rows)
    {
        StatedFields[] ranked = [.. rows.OrderBy(r => r.Number("rank"))];
        bool priced = rows.All(r => r.Optional("costPerThousandBalls") is not null);
        double Merit(StatedFields row) =>
            priced ? row.Number("costPerThousandBalls") : row.Needed("perThousandBalls").Number("squareMetres");
        for (int i = 0; i < ranked.Length; i++)
        {
            ranked[i].Same("rank", i + 1, 0);
            ranked[i].Keep(
                i == 0 || Merit(ranked[i - 1]) <= Merit(ranked[i]) + Shares.Room(Merit(ranked[i])), "rank",
                "is not in the order of the rows");
        }

        top.Keep(ranked.Length > 0 && top.Text("best") == ranked[0].Text("name"), "best", "is not the row of rank 1");
    }

    private static void Felt(StatedFields row)
    {
        double width = row.Number("widthMm");
        double panels = row.Number("panelsPerMetre");
        double balls = row.Number("ballsPerMetre");
        row.Keep(balls <= (panels / 2) + Shares.Room(panels), "ballsPerMetre", "is more than half the panels per metre");
        StatedFields felt = row.Needed("perThousandBalls");
        double metres = felt.Number("metres");
        double square = felt.Number("squareMetres");
        double net = felt.Number("netSquareMetres");
        felt.Same("squareMetres", metres * width / 1000, Shares.Room(square));

        StatedFields account = row.Needed("account");
        string[] shares =
        [
            "goodPanelsPercent", "betweenPanelsPercent", "unusedEdgePercent", "edgeTrimPercent", "rollEndsPercent", "remnantPercent",
            "faultsPercent", "rejectsPercent", "unpairedPercent",
        ];
        double sum = shares.Sum(account.Number);
        account.Keep(
            Math.Abs(sum - 100) <= 1e-4, shares[0], FormattableString.Invariant($"and the other shares add to {sum:0.####}, not to 100"));
        account.Same("goodPanelsPercent", 100 * net / square, 1e-4);
        account.Same("edgeTrimPercent", 100 * (row.Number("edgeMm") + row.Number("upperEdgeMm")) / width, 1e-4);

        // Two panels a ball: the net felt of a thousand balls is that of two thousand panels.
        row.Same("wastePercent", 100 - (50 * net * panels / width), 1e-4);
        StatedFields roll = row.Needed("roll");
        if (roll.Optional("lengthM") is { } length)
        {
            roll.Same("balls", 1000 * length / metres, Shares.Room(1000 * length / metres));
        }
    }

    // Felt, strikes and die of a way, and what no way changes, add to its cost; the cheapest is what the row is of.
    private static void Front(StatedFields top, StatedFields row)
    {
        if (row.Optional("costPerThousandBalls") is not { } cost)
        {
            return;
        }

        IReadOnlyList<StatedFields> lines = row.Items("costSheet");
        double Amount(int line) => lines[line - 1].Optional("amount") ?? 0;
        double conversion = Enumerable.Range(13, 5).Sum(Amount);
        double rest = conversion == 0 ? 0 : (Amount(13) + Amount(17)) * (1 + (Amount(18) / conversion));
        IReadOnlyList<StatedFields> ways = row.Items("front");
        foreach (StatedFields way in ways.Append(row.Needed("leastFelt")))
        {
            double parts = way.Number("felt") + way.Number("strikes") + way.Number("die");
            way.Same("costPerThousandBalls", parts + rest, Coin);
        }

        row.Keep(
            ways.Count > 0 && Math.Abs(ways.Min(way => way.Number("costPerThousandBalls")) - cost) <= Coin, "costPerThousandBalls",
            "is not that of the cheapest way of the front");
        if (row.Inner("purchase") is { } bought)
        {
            double needed = top.Number("balls") / 1000 * row.Needed("perThousandBalls").Number("metres");
            bought.Same("neededM", needed, Shares.Room(needed));
            if (bought.Optional("rolls") is { } rolls && row.Needed("roll").Optional("lengthM") is { } length)
            {
                bought.Same("boughtM", rolls * length, Shares.Room(rolls * length));
                bought.Keep(Math.Abs(rolls - Math.Round(rolls)) < 1e-6, "rolls", "is not a whole number");
            }
        }
    }

    private static void Sheet(StatedFields row)
    {
        IReadOnlyList<StatedFields> lines = row.Items("costSheet");
        if (lines.Count == 0)
        {
            return;
        }

        StatedFields felt = row.Needed("perThousandBalls");
        double square = felt.Number("squareMetres");
        row.Keep(lines.Count == 25, "costSheet", $"has {lines.Count} lines where 25 are wanted");
        if (lines.Count != 25)
        {
            return;
        }

        for (int i = 0; i < lines.Count; i++)
        {
            lines[i].Same("line", i + 1, 0);
        }

        double Amount(int line) => lines[line - 1].Optional("amount") ?? 0;
        lines[0].Same("quantity", felt.Number("netSquareMetres"), Shares.Room(square));
        lines[8].Same("quantity", square, Shares.Room(square));
        double parts = lines.Take(8).Sum(l => l.Number("quantity"));
        lines[8].Keep(
            Math.Abs(parts - square) <= 1e-5 * square, "quantity",
            FormattableString.Invariant($"is not the sum of the lines above, {parts:0.####}"));
        foreach (int line in (int[])[14, 15, 16])
        {
            lines[line - 1].Same("quantity", felt.Number("strikes"), Shares.Room(felt.Number("strikes")));
        }

        lines[9].Same("amount", Enumerable.Range(20, 6).Sum(Amount), Coin);
        lines[11].Same("amount", Amount(10) + Amount(11), Coin);
        lines[18].Same("amount", Enumerable.Range(12, 7).Sum(Amount), Coin);
        row.Same("costPerThousandBalls", Amount(19), Coin);
    }
}
