using FeltNest.Cost.Sheet;
using FeltNest.Files.Layouts;
using FeltNest.Files.Orders;
using FeltNest.Rolls.Orders;
using FeltNest.Tests.Rolls;
using FeltNest.Yield;
using Xunit;

namespace FeltNest.Tests.Files.Orders;

/// <summary>Lists of orders, rolls and dies as offices write them, and as they should not.</summary>
public sealed class OrderListTests : IDisposable
{
    private const string OrderHead = "order,ball,thousandBalls,due,lots,felt,reserveBalls\n";
    private const string StockHead = "roll,felt,lot,widthMm,lengthM,price,priceUnit,currency,available\n";
    private const string DieHead = "die,ball,layout,repeats,strikesLeft,makePrice,lifeStrikes,reRules,reRulePrice\n";

    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void An_office_list_with_mark_semicolons_commas_quotes_blank_lines_and_line_ends_is_read()
    {
        string path = folder.Write(
            "orders.csv",
            "\uFEFForder;ball;thousandBalls;due;lots\r\n\r\n\"K 1; first\";T2;2,5;2026-03-31;any\r\n;;;;\r\nK2;T2;1;2026-04-01;\r\n");
        IReadOnlyList<CoverOrder> orders = OrdersReader.Read(path, ["T2"], []);

        Assert.Equal(
            [
                new CoverOrder
                {
                    Name = "K 1; first",
                    Ball = "T2",
                    Balls = 2500,
                    Due = new DateOnly(2026, 3, 31),
                    OneLot = false,
                    Felt = null,
                    ReserveBalls = 0,
                },
                new CoverOrder
                {
                    Name = "K2",
                    Ball = "T2",
                    Balls = 1000,
                    Due = new DateOnly(2026, 4, 1),
                    OneLot = true,
                    Felt = null,
                    ReserveBalls = 0,
                },
            ], orders);
    }

    [Theory]
    [InlineData("K1,T2,1,31.03.2026,one,,", "line 2, due: '31.03.2026' is not a day")]
    [InlineData("K1,T2,1,2026-02-30,one,,", "line 2, due: '2026-02-30' is not a day")]
    [InlineData("K1,T3,1,2026-03-31,one,,", "line 2, ball: 'T3' has no die: the dies cut T2")]
    [InlineData("K1,T2,-1,2026-03-31,one,,", "line 2, thousandBalls: -1 is outside")]
    [InlineData("K1,T2,1,2026-03-31,two,,", "line 2, lots: 'two' is not allowed: one, any")]
    [InlineData("K1,T2,1,2026-03-31,one,silk,", "line 2, felt: 'silk' is neither in stock nor on offer: there are woven")]
    [InlineData("K1,T2,1,2026-03-31,one,,-5", "line 2, reserveBalls: -5 is outside")]
    [InlineData("K1,T2,1,2026-03-31,one,,\nK1,T2,1,2026-03-31,one,,", "line 3, order: 'K1' stands in the list twice")]
    public void A_bad_order_is_named_by_its_line(string lines, string told)
    {
        string path = folder.Write("orders.csv", OrderHead + lines + "\n");
        Assert.Contains(
            told, Assert.Throws<InputException>(() => OrdersReader.Read(path, ["T2"], ["woven"])).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void An_order_is_held_to_names_of_the_lists_and_kept_from_them()
    {
        OrderPins pins = Held("lot,roll,press,notDie,day", "L 1,R1;R2,P1,D2,2026-03-05")!;

        Assert.Equal(["L 1"], pins.Lots);
        Assert.Equal(["R1", "R2"], pins.Rolls);
        Assert.Equal(["P1"], pins.Presses);
        Assert.Equal(["D2"], pins.NotDies);
        Assert.Equal(new DateOnly(2026, 3, 5), pins.Day);
        Assert.Empty(pins.Dies);
        Assert.Null(Held("lot,roll", ","));
    }

    [Theory]
    [InlineData("roll", "R1;R3", "line 2, roll: 'R3' is in no list: there are R1, R2; did you mean 'R1'?")]
    [InlineData("notPress", "P7", "line 2, notPress: 'P7' is in no list: there are P1; did you mean 'P1'?")]
    [InlineData("day", "5.3.2026", "line 2, day: '5.3.2026' is not a day")]
    [InlineData("die,notDie", "D2,D2", "line 2, notDie: 'D2' is what the order is held to")]
    public void A_name_that_no_order_can_be_held_to_is_refused(string columns, string cells, string told) =>
        Assert.Contains(told, Assert.Throws<InputException>(() => Held(columns, cells)).Message, StringComparison.Ordinal);

    [Fact]
    public void A_missing_column_is_named()
    {
        string path = folder.Write("orders.csv", "order,ball,due\nK1,T2,2026-03-31\n");
        Assert.Contains(
            "the column thousandBalls is missing", Assert.Throws<InputException>(() => OrdersReader.Read(path, ["T2"], [])).Message,
            StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("R1,woven,L1,1500,-5,18,m,EUR,yes", "line 2, lengthM: -5 is outside")]
    [InlineData("R1,woven,L1,1500,50,18,,EUR,yes", "line 2, priceUnit: '' is not allowed: m, m2, kg")]
    [InlineData("R1,woven,L1,1500,50,-18,m,EUR,yes", "line 2, price: -18 is outside")]
    [InlineData("R1,woven,L1,1500,50,18,m,USD,yes", "line 2, currency: USD cannot be mixed with EUR")]
    [InlineData("R1,woven,L1,1500,50,18,kg,EUR,yes", "line 2, massPerAreaGsm: is not known")]
    [InlineData("R1,woven,L1,1500,50,18,m,EUR,maybe", "line 2, available: 'maybe' is not allowed: yes, no")]
    [InlineData("R1,woven,L1,1500,50,18,m,EUR,yes\nR1,woven,L1,1500,50,18,m,EUR,no", "line 3, roll: 'R1' stands in the list twice")]
    [InlineData("R1,woven,L1,1500,50,18,m,EUR,no", "available: is no for every roll")]
    public void A_bad_roll_is_named_by_its_line(string lines, string told)
    {
        string path = folder.Write("stock.csv", StockHead + lines + "\n");
        Assert.Contains(
            told, Assert.Throws<InputException>(() => new StockReader(CostInputs.Bare("EUR")).Read(path)).Message,
            StringComparison.Ordinal);
    }

    [Fact]
    public void A_measured_roll_must_be_the_roll_of_its_line()
    {
        folder.Write("a17.json", File.ReadAllText(RepositoryFile.PathOf("shapes", "demo", "rolls", "roll-a17.json")));
        string path = folder.Write(
            "stock.csv", StockHead.TrimEnd() + ",measured\nA18,\"woven, raised and milled\",L-2207,1500,30,18,m,EUR,yes,a17.json\n");

        Assert.Contains(
            "line 2, measured: ", Assert.Throws<InputException>(() => new StockReader(CostInputs.Bare("EUR")).Read(path)).Message,
            StringComparison.Ordinal);
    }

    [Fact]
    public void A_measured_roll_that_is_partly_cut_begins_where_its_rest_begins()
    {
        StockRoll roll = Measured("1500,20.2");

        // 46 m were measured and 20.2 m are left: the first 25.8 m are gone.
        Assert.Equal(20.2, roll.LengthM, 9);
        Assert.Equal(25.8, roll.BeginM, 9);
        Assert.Equal((46, 0), (Measured("1500,46.4").LengthM, Measured("1500,46.4").BeginM));
    }

    [Theory]
    [InlineData("1500,46.5", "line 2, lengthM: 46.5 is longer than the roll as measured")]
    [InlineData("1600,46", "line 2, widthMm: 1600 is not the width measured")]
    [InlineData("1400,46", "line 2, widthMm: 1400 is not the width measured")]
    public void A_stock_line_that_contradicts_the_measured_roll_is_refused(string figures, string told) =>
        Assert.Contains(told, Assert.Throws<InputException>(() => Measured(figures)).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData("D1,T2,layout.json,1,100,50,1000,,", "line 2, makePrice: stands beside 100 strikes left")]
    [InlineData("D1,T2,layout.json,1,0,50,,,", "line 2, lifeStrikes: is blank")]
    [InlineData("D1,T2,layout.json,1.5,100,,,,", "line 2, repeats: 1.5 is not a whole number")]
    [InlineData("D1,T2,layout.json,1,,,,,", "line 2, strikesLeft: is blank")]
    [InlineData("D1,T2,no.json,1,100,,,,", "no.json: no such file")]
    [InlineData("D1,T2,layout.json,1,100,,,,\nD1,T2,layout.json,1,100,,,,", "line 3, die: 'D1' stands in the list twice")]
    public void A_bad_die_is_named_by_its_line(string lines, string told)
    {
        File.WriteAllBytes(folder.Path("layout.json"), LayoutWriter.Write(RollCases.Squares, YieldAccount.Of(RollCases.Squares)));
        string path = folder.Write("dies.csv", DieHead + lines + "\n");
        Assert.Contains(told, Assert.Throws<InputException>(() => DiesReader.Read(path)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_die_takes_its_strike_from_its_layout()
    {
        File.WriteAllBytes(folder.Path("layout.json"), LayoutWriter.Write(RollCases.Squares, YieldAccount.Of(RollCases.Squares)));
        CutDie die = DiesReader.Read(folder.Write("dies.csv", DieHead + "D1,T2,layout.json,2,100,,,,\n"))[0];

        // Squares of 10 mm, 12 apart along, trims of 5, gap 2: two repeats are 22 long and advance 24.
        Assert.Equal(
            (24, 22, 10, 2, 20), (die.Shape.FeedMm, die.Shape.LengthMm, die.Shape.AcrossMm, die.Shape.GapMm, die.Shape.LeastWidthMm));
        Assert.Equal([2], die.Shape.ClassPanels);
        Assert.Equal(0.048, die.Shape.MetresOf(2), 12);
    }

    private OrderPins? Held(string columns, string cells)
    {
        string path = folder.Write("orders.csv", $"order,ball,thousandBalls,due,{columns}\nK1,T2,1,2026-03-31,{cells}\n");
        ShopNames names = new() { Lots = ["L 1"], Rolls = ["R1", "R2"], Presses = ["P1"], Dies = ["D1", "D2"] };
        return Assert.Single(OrdersReader.Read(path, ["T2"], [], names)).Pins;
    }

    private StockRoll Measured(string widthAndLength)
    {
        folder.Write("a18.json", File.ReadAllText(RepositoryFile.PathOf("shapes", "demo", "rolls", "roll-a18.json")));
        string path = folder.Write(
            "stock.csv",
            StockHead.TrimEnd() + $",measured\nA18,\"woven, raised and milled\",L-2207,{widthAndLength},18,m,EUR,yes,a18.json\n");
        return new StockReader(CostInputs.Bare("EUR")).Read(path)[0];
    }
}
