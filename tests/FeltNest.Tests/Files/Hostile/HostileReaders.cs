using System.Text;
using FeltNest.Ball.Passport;
using FeltNest.Cost.Sheet;
using FeltNest.Die;
using FeltNest.Die.Gang;
using FeltNest.Die.Proof;
using FeltNest.Drawing.Boards;
using FeltNest.Files;
using FeltNest.Files.Balls;
using FeltNest.Files.Costs;
using FeltNest.Files.Csv;
using FeltNest.Files.Dies;
using FeltNest.Files.Families;
using FeltNest.Files.Felts;
using FeltNest.Files.Layouts;
using FeltNest.Files.Offers;
using FeltNest.Files.Orders;
using FeltNest.Files.Outlines;
using FeltNest.Files.Presses;
using FeltNest.Files.Rolls;
using FeltNest.Files.Trials;
using FeltNest.Files.Usage;
using FeltNest.Geometry;
using FeltNest.Layout.Limits;
using FeltNest.Panel;
using FeltNest.Rolls.Orders;
using FeltNest.Rolls.Orders.Planned;
using FeltNest.Rolls.Plan;
using FeltNest.Tests.Cli;
using FeltNest.Tests.Die;
using FeltNest.Tests.Panel;
using FeltNest.Tests.Rolls;
using FeltNest.Tests.Rolls.Orders;
using FeltNest.Yield;

namespace FeltNest.Tests.Files.Hostile;

/// <summary>Every reader of the project by a name, with the ending of its files and sound files to begin from. A reader that is made later
/// gets its line here.</summary>
internal static class HostileReaders
{
    private static readonly Lazy<CostInputs> Costs = new(() => CostsReader.Read(RepositoryFile.PathOf("shapes", "demo", "costs.json")));

    private static readonly Lazy<OrderPlan> Planned = new(() => OrderPlanner.Run(OrderCases.Workshop(3, 3, 4), 1));

    private static readonly Lazy<byte[]> Layout = new(() => LayoutWriter.Write(RollCases.Squares, YieldAccount.Of(RollCases.Squares)));

    private static readonly Lazy<byte[]> Die = new(() =>
        DieWriter.Write(DieDesigner.Run(new GangRequest(DieCases.Plates, 0, DieCases.Order, null, null))));

    private static readonly Lazy<byte[]> Board = new(() =>
    {
        DieDesign design = DieDesigner.Run(new GangRequest(DieCases.Plates, 0, DieCases.Order, null, null));
        return BoardCutDxf.Board(design, BoardEngraving.Of(design.Cut!));
    });

    private static readonly Lazy<Outline> Measured = new(() =>
        PartReader.Read(RepositoryFile.PathOf("shapes", "outlines", "dog-bone.json")).Outline!.Centred);

    private static readonly string[] Drawings =
    [
        """<svg width="10mm" height="10mm" viewBox="0 0 10 10">"""
            + """<g transform="rotate(30 5 5) scale(1 -1)"><rect x="1" y="1" width="6" height="4" rx="1"/></g></svg>""",
        """<svg viewBox="0 0 9 9" width="9cm"><defs><style>a{}</style></defs>"""
            + """<ellipse cx="3" cy="3" rx="2" ry="1" transform="skewX(10) matrix(1 0 0 1 2 2)"/></svg>""",
        """<svg xmlns="http://www.w3.org/2000/svg"><path id="a" d="M0 0 C 10 0 10 10 0 10 S -10 20 0 20 Q 5 5 3 1 T 0 0 z"/>"""
            + """<circle cx="50" cy="50" r="4"/><polygon points="90,90 95,90 92,99"/></svg>""",
    ];

    /// <summary>Name, ending, reader, sound files.</summary>
    internal static IReadOnlyList<(string Name, string Ending, Action<string> Read, Func<byte[][]> Sound)> All { get; } =
    [
        ("ball", ".json", path => BallReader.Read(path), () => [.. Folder("balls", "*.json"), Utf8(PointBall)]),
        ("outline", ".json", path =>
            OutlineReader.Read(path), () => [.. Folder("outlines", "*.json"), Utf8(Triangle), Panel(), Layout.Value]),
        ("part", ".json", path => PartReader.Read(path), () => [.. Folder("balls", "type-2.json"), .. Folder("outlines", "*.json")]),
        ("outline points", ".csv", path =>
            OutlineReader.Read(path), () => [.. Folder("outlines", "*.csv"), Utf8("0,0\r\n10,0\r\n0,10\r\n")]),
        ("outline drawing", ".svg", path => OutlineReader.Read(path), () => [.. Folder("outlines", "*.svg"), .. Drawings.Select(Utf8)]),
        ("outline exchange", ".dxf", path => OutlineReader.Read(path), () => [.. Folder("outlines", "*.dxf"), Utf8(Disc)]),
        ("die drawing", ".svg", path =>
            DrawnDie.Read(path, 350, new EdgeTrims { LowerMm = 15, UpperMm = 15 }, []),
            () => [.. Folder("outlines", "*.svg"), .. Drawings.Select(Utf8)]),
        ("die exchange", ".dxf", path =>
            DrawnDie.Read(path, 350, new EdgeTrims { LowerMm = 15, UpperMm = 15 }, []), () => [.. Folder("outlines", "*.dxf"), Utf8(Disc)]),
        ("layout", ".json", path =>
            LayoutReader.Read(path),
            () => [Layout.Value, LayoutWriter.Write(SampleLayout.TwoBands, YieldAccount.Of(SampleLayout.TwoBands))]),
        ("roll", ".json", path => RollReader.Read(path), () => [.. Folder("demo/rolls", "*.json")]),
        ("press", ".json", path => PressReader.Read(path), () => [.. Folder("demo/presses", "*.json")]),
        ("costs", ".json", path => CostsReader.Read(path), () => [.. Folder("demo", "costs.json")]),
        ("die order", ".json", path => DieOrderReader.Read(path), () => [.. Folder("demo/dies", "*.json")]),
        ("die life", ".json", path => LifeReader.Read(path), () => [Utf8(Life)]),
        ("offers", ".csv", path => OffersReader.Read(path), () => [.. Folder("demo", "offers.csv"), Utf8(Semicolons)]),
        ("family", ".csv", path => FamilyReader.Read(path), () => [.. Folder("demo", "family.csv")]),
        ("actuals", ".csv", path => ActualsReader.Read(path), () => [.. Folder("demo", "actuals.csv")]),
        ("orders", ".csv", path =>
            OrdersReader.Read(path, ["type 2", "type 2 woven"], ["woven, raised and milled", "woven A (invented)"]),
            () => [.. Folder("demo", "orders.csv")]),
        ("stock", ".csv", ReadStock, () => [.. Folder("demo", "stock.csv")]),
        ("orders in a sheet", ".xlsx", path =>
            OrdersReader.Read(new ListReading().Open(path), ["type 2", "type 2 woven"], ["woven, raised and milled", "woven A (invented)"]),
            () => [.. Folder("demo", "lists.xlsx")]),
        ("orders of any make", ".csv", path =>
            OrdersReader.Read(new ListReading().Open(path), ["type 2", "type 2 woven"], ["woven, raised and milled", "woven A (invented)"]),
            () => [.. Folder("demo", "orders.csv"), Wide()]),
        ("dies", ".csv", ReadDies, () => [.. Folder("demo", "dies.csv").Select(OwnLayouts)]),
        ("done", ".csv", path => DoneReader.Read(InputText.OfFile(path), Planned.Value, []), () => [Utf8(Done)]),
        ("calendar", ".csv", path => CalendarListReader.Read(path, [OrderCases.FreePress], 8), () => [Utf8(Calendar)]),
        ("die", ".json", path => DieReader.Read(path), () => [Die.Value]),
        ("trial readings", ".csv", path => TrialReader.Read(path, Balls.Usual()), () => [.. Folder("demo", "trial-wrap.csv")]),
        ("felt readings", ".csv", path => FeltReadingsReader.Read(path), () => [.. Folder("demo", "felt-readings.csv")]),
        ("felt", ".json", path => FeltReader.Read(path), () => [Felt()]),
        ("readings", ".csv", path => ReadingsReader.Read(path, 32), () => [.. Folder("demo/dies", "readings.csv")]),
        (
            "test bends", ".csv", path => BendTestsReader.Read(InputText.OfFile(path)),
            () => [.. Folder("demo/dies", "test-bends.csv")]),
        ("board for the laser", ".dxf", path => BoardCutReader.Read(path), () => [Board.Value]),
        ("measured points", ".csv", ReadMeasured, () => [.. Folder("demo/dies", "measured-panel.csv")]),
        ("checked file", ".json", path => Check(path), () => [Layout.Value, RollPlan(), OrderPlan()]),
        ("checked die", ".json", path => Check(path), () => [Die.Value]),
    ];

    private const string Triangle =
        """{ "schema": "feltnest/outline/1", "name": "t", "points": [[0,0],[10,0],[0,10]], "sources": { "a": "b" } }""";

    private const string Life = """{ "schema": "feltnest/die-life/1", "name": "D", "revision": "A", "supersededBy": null,"""
            + """ "panelProfileMm": 1.2, "strikes": 9000, "failed": false, "reRuleAt": 5000.5,"""
            + """ "driftLimit": 5000.5, "statedLife": null, "die": null, "drifts": [], "readings": [] }""";

    private const string Disc = "0\nSECTION\n2\nENTITIES\n0\nCIRCLE\n10\n5\n20\n5\n40\n5\n0\nENDSEC\n0\nEOF\n";

    private const string Calendar = "press,kind,day,from,to,pricePerHour\nP1,shift,monday-friday,06:00,14:00,\n,closed,,2026-12-24,,\n"
        + ",overtime,,2026-03-07T06:00,2026-03-07T12:00,45\n";

    private const string Done = "ticket,strikes,balls,roll,usableFromM\n1,2,,,\n2,3,10,,4.5\n";

    private const string Semicolons =
        "name;felt;widthMm;lengthM;price;priceUnit;currency;priceLow;priceHigh\r\nA;w;1500;50;18,40;m;EUR;17,1;19,9\r\n";

    private const string PointBall = """
        { "schema": "feltnest/ball/1", "name": "p", "ruleType": "type-2", "core": { "outerDiameterMm": 60, "massG": 45 },
         "cement": { "thicknessMm": 0.15, "massPerAreaGsm": 100 },
          "seam": { "curve": "points", "points": [[1,0,0.3],[0,1,-0.3],[-1,0,0.3],[0,-1,-0.3]], "seamGapMm": 1 } }
        """;

    private static byte[] Wide() =>
        [.. Encoding.Unicode.GetPreamble(), .. Encoding.Unicode.GetBytes("sep=;\norder;ball;thousandBalls;due\nK;type 2;1,5;31.03.2026\n")];

    private static void ReadStock(string path)
    {
        string rolls = Path.Combine(Path.GetDirectoryName(path)!, "rolls");
        if (!Directory.Exists(rolls))
        {
            Directory.CreateDirectory(rolls);
            foreach (string roll in Directory.GetFiles(RepositoryFile.PathOf("shapes", "demo", "rolls")))
            {
                File.Copy(roll, Path.Combine(rolls, Path.GetFileName(roll)));
            }
        }

        StockReader.CurrencyOf(InputText.OfFile(path));
        new StockReader(Costs.Value).Read(path);
    }

    private static void ReadDies(string path)
    {
        string layout = Path.Combine(Path.GetDirectoryName(path)!, "layout.json");
        if (!File.Exists(layout))
        {
            File.WriteAllBytes(layout, Layout.Value);
        }

        DiesReader.Read(path);
    }

    // The points are laid on an outline, too: that is where they can do harm.
    private static void ReadMeasured(string path)
    {
        IReadOnlyList<Point2> points = PointsReader.Read(path);
        try
        {
            PanelFitter.Fit(Measured.Value, points, new ProfileRule { ToleranceMm = 1.2 });
        }
        catch (InputException error) when (error.File is null)
        {
            throw error.InFile(path);
        }
    }

    // The whole command: what is read is verified, too. Its messages are lines already, so one that tells a failure of the program is the
    // fault.
    private static void Check(string path)
    {
        CommandRun run = CommandRun.Of("check", path, "--json").GetAwaiter().GetResult();
        if (run.Code == 2)
        {
            throw new InputException(path, null, run.Err.TrimEnd('\n'));
        }

        if (run.Code is not (0 or 4))
        {
            throw new InvalidOperationException($"exit code {run.Code}: {run.Err}");
        }
    }

    private static byte[] Felt() => FeltWriter.Write(PassportStudy.Run(
        FeltReadingsReader.Read(RepositoryFile.PathOf("shapes", "demo", "felt-readings.csv")), FitRange.Usual));

    private static byte[] Panel()
    {
        FeltNest.Ball.BallSpec ball = BallReader.Read(RepositoryFile.PathOf("shapes", "balls", "type-2.json")).Ball;
        return FeltNest.Files.Panels.PanelWriter.Write(ball, PanelFlattener.Flatten(ball));
    }

    internal static byte[] RollPlan() => RollPlanWriter.Json(StrikePlanner.Run(new()
    {
        Layout = RollCases.Squares,
        Roll = RollCases.Roll(200, 20),
        RepeatsPerStrike = 2,
        GuidePlayMm = 3,
        FromMm = 0,
    }));

    internal static byte[] OrderPlan() => OrderPlanWriter.Json(Planned.Value);

    private static byte[] OwnLayouts(byte[] dies) =>
        Utf8(
            string.Join(
                '\n',
                Encoding.UTF8.GetString(dies)
                    .Split('\n')
                    .Select(line =>
                        string.Join(',', line.Split(',').Select((cell, i) => i == 2 && cell != "layout" ? "layout.json" : cell)))));

    private static IEnumerable<byte[]> Folder(string name, string pattern) =>
        Directory.GetFiles(RepositoryFile.PathOf("shapes", name), pattern).Order(StringComparer.Ordinal).Select(File.ReadAllBytes);

    private static byte[] Utf8(string text) => Encoding.UTF8.GetBytes(text);
}
