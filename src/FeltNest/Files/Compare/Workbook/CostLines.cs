using FeltNest.Cost.Compare;
using FeltNest.Files.Workbooks;
using static FeltNest.Files.Compare.Workbook.OfferLines;

namespace FeltNest.Files.Compare.Workbook;

/// <summary>The cost sheet of a thousand good balls, all of it formulas; empty where no price is known.</summary>
internal sealed class CostLines
{
    private const string NotGiven = "\"not given\"";

    private readonly Comparison comparison;
    private readonly LineSheet shop;
    private readonly LineSheet offers;
    private readonly LineSheet account;
    private readonly LineSheet cost;

    private CostLines(Comparison comparison, LineSheet shop, LineSheet offers, LineSheet account)
    {
        (this.comparison, this.shop, this.offers, this.account) = (comparison, shop, offers, account);
        cost = new LineSheet("cost", comparison.Rows.Count, "Cost sheet of a thousand good balls: lines 1 to 9 in m2, the others in money");
    }

    /// <summary>The sheet.</summary>
    public static LineSheet Of(Comparison comparison, LineSheet shop, LineSheet offers, LineSheet account)
    {
        CostLines lines = new(comparison, shop, offers, account);
        lines.cost.Line("name", "name", string.Empty, i => WorkbookCell.Formula(offers.At("name", i), CellLook.Heading));
        lines.Purchase();
        lines.Felt();
        lines.Landed();
        lines.Conversion();
        return lines.cost;
    }

    private void Purchase()
    {
        cost.Heading("What is bought");
        string balls = shop.At("balls");
        Priced("needed", "needed", "m", CellLook.Quantity, i => $"IF({balls}=0,{NotGiven},{balls}*{account.At("metres", i)})");
        Priced(
            "bought", "bought: whole rolls, no less than is sold", "m", CellLook.Quantity,
            i =>
            {
                string asked = $"MAX({cost.At("needed", i)},{offers.At("minimum", i)})";
                string roll = offers.At("sold", i);
                return $"IF({balls}=0,{NotGiven},IF({roll}=0,{asked},-{roll}*INT(-({asked}/{roll}-0.000000001))))";
            });
        Priced("price", "price of the tier", string.Empty, CellLook.Plain, i =>
        {
            string prices = offers.Span("price0", LastTier("price", comparison.Rows[i]), i);
            string from = offers.Span("from0", LastTier("from", comparison.Rows[i]), i);
            return $"IF({balls}=0,{offers.At("price0", i)},INDEX({prices},MATCH({cost.At("bought", i)}+0.000000001,{from},1)))";
        });
        Priced(
            "invoiced", "invoiced", "m2", CellLook.Quantity, i => $"{account.At("metres", i)}*{offers.At("invoiced", i)}/1000");
        Priced(
            "quantity", "invoiced, in the unit of the price", string.Empty, CellLook.Quantity,
            i => $"IF({offers.At("unit", i)}=\"m\",{account.At("metres", i)},IF({offers.At("unit", i)}=\"m2\",{cost.At("invoiced", i)},"
                + $"{account.At("kg", i)}*{cost.At("invoiced", i)}/{account.At("m2", i)}))");
        Priced(
            "lost", "lost of felt beyond need", "share", CellLook.Plain,
            i => $"IF({balls}=0,0,({cost.At("bought", i)}-{cost.At("needed", i)})/{cost.At("needed", i)}*(1-{shop.At("worth")}/100))");
    }

    // Lines 1 to 9, which no price is needed for.
    private void Felt()
    {
        cost.Heading("Felt, m2");
        Square(1, "net felt in good panels", i => account.At("net", i));
        Square(2, "web between panels", i => Part("web", i));
        Square(3, "unused edge", i => Part("edge", i));
        Square(4, "edge trim", i => Part("trim", i));
        Square(5, "roll ends", i => Part("rollends", i));
        Square(6, "short remnants", i => Part("remnant", i));
        Square(7, "fault loss", i => Part("faults", i));
        Square(
            8, "rejects and panels without a partner",
            i => $"{account.At("m2", i)}*({account.At("rejects", i)}+{account.At("lonely", i)})/100");
        Square(9, "gross felt", i => $"SUM({cost.Span("line1", "line8", i)})");

        string Part(string share, int i) => $"{account.At("m2", i)}*{account.At(share, i)}/100";

        void Square(int number, string name, Func<int, string> formula) => cost.Line(
            Key(number), Name(number, name), "m2", i => WorkbookCell.Formula(formula(i), CellLook.Quantity));
    }

    private void Landed()
    {
        cost.Heading("Felt, landed");
        Money(20, i => $"{cost.At("quantity", i)}*{cost.At("price", i)}*{offers.At("rate", i)}");
        Money(
            21, i => $"IF({offers.At("freight", i)}=0,0,{offers.At("freight", i)}*{offers.At("rate", i)}*{account.At("metres", i)}"
                + $"/{offers.At("roll", i)})");
        Money(22, i => $"({cost.At("line20", i)}+{cost.At("line21", i)})*{offers.At("duty", i)}/100");
        Money(
            23, i => $"IF({offers.At("credit", i)}=0,0,IF(ISBLANK({shop.At("interest")}),{NotGiven},-{cost.At("line20", i)}"
                + $"*{shop.At("interest")}*{offers.At("credit", i)}/365/100))");
        Money(24, i => $"IF({shop.At("balls")}=0,{NotGiven},{cost.At("lost", i)}*SUM({cost.Span("line20", "line23", i)}))");
        Money(
            25, i => $"IF({offers.At("basis", i)}=\"bare\",{Given("coating", account.At("m2", i))},"
                + $"IF({offers.At("basis", i)}=\"coated\",0,{NotGiven}))");
        Money(10, i => $"SUM({cost.Span("line20", "line25", i)})");
        Money(
            11, i => $"IF(ISBLANK({shop.At("recovery")}),{NotGiven},-{shop.At("recovery")}*{account.At("kg", i)}"
                + $"*({account.At("m2", i)}-{account.At("net", i)})/{account.At("m2", i)})");
        Money(12, i => $"SUM({cost.Span("line10", "line11", i)})");
    }

    private void Conversion()
    {
        cost.Heading("Strikes, die and the rest");
        Money(13, _ => $"IF(ISBLANK({shop.At("batch")}),{NotGiven},{shop.At("hours")}*{shop.At("rate")}/{shop.At("batch")})");
        Money(14, i => Given("strike", account.At("strikes", i)));
        Money(
            15, i => $"IF(ISBLANK({shop.At("die")}),{NotGiven},({shop.At("die")}+{shop.At("cavity")}*{account.At("cavities", i)}"
                + $"+{shop.At("rerules")}*{shop.At("rerule")})/({shop.At("life")}*({shop.At("rerules")}+1))*{account.At("strikes", i)})");
        Money(16, i => Given("board", account.At("strikes", i)));
        Money(17, _ => Given("handling", "1"));
        Money(18, i => $"IF(ISBLANK({shop.At("overhead")}),{NotGiven},SUM({cost.Span("line13", "line17", i)})*{shop.At("overhead")}/100)");
        Money(19, i => $"{cost.At("line12", i)}+SUM({cost.Span("line13", "line18", i)})", CellLook.Total);
    }

    // A figure of the shop times a quantity, where the figure is given.
    private string Given(string key, string quantity) => $"IF(ISBLANK({shop.At(key)}),{NotGiven},{shop.At(key)}*{quantity})";

    private void Money(int number, Func<int, string> formula, CellLook look = CellLook.Money)
    {
        string name = comparison.Rows.Select(row => row.Sheet).FirstOrDefault(s => s is not null)?.Lines[number - 1].Name ?? string.Empty;
        Priced(Key(number), Name(number, name), string.Empty, look, formula);
    }

    private void Priced(string key, string name, string unit, CellLook look, Func<int, string> formula) =>
        cost.Line(key, name, unit, i => comparison.Rows[i].Sheet is null ? null : WorkbookCell.Formula(formula(i), look));

    private static string Key(int number) => FormattableString.Invariant($"line{number}");

    private static string Name(int number, string name) => FormattableString.Invariant($"{number}  {name}");
}
