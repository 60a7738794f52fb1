using FeltNest.Ball;
using FeltNest.Ball.Passport;
using FeltNest.Ball.Tolerance;
using FeltNest.Cost.Compare;
using FeltNest.Cost.Families;
using FeltNest.Cost.Usage;
using FeltNest.Design;
using FeltNest.Design.SeamDesign;
using FeltNest.Die;
using FeltNest.Die.Gang;
using FeltNest.Die.Proof;
using FeltNest.Files;
using FeltNest.Files.Balls;
using FeltNest.Files.Compare;
using FeltNest.Files.Costs;
using FeltNest.Files.Dies;
using FeltNest.Files.Families;
using FeltNest.Files.Felts;
using FeltNest.Files.Layouts;
using FeltNest.Files.Offers;
using FeltNest.Files.Orders;
using FeltNest.Files.Panels;
using FeltNest.Files.Rolls;
using FeltNest.Files.Scan;
using FeltNest.Files.Studies;
using FeltNest.Files.Trials;
using FeltNest.Files.Usage;
using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Layout.Limits;
using FeltNest.Panel;
using FeltNest.Panel.Budget;
using FeltNest.Panel.Lot;
using FeltNest.Panel.Proven;
using FeltNest.Panel.Trial;
using FeltNest.Panel.Wrap;
using FeltNest.Rolls.Orders;
using FeltNest.Rolls.Plan;
using FeltNest.Tests.Die;
using FeltNest.Tests.Die.Proof;
using FeltNest.Tests.Files;
using FeltNest.Tests.Panel.Trace;
using FeltNest.Tests.Panel.Trial;
using FeltNest.Tests.Rolls;
using FeltNest.Tests.Rolls.Orders;
using FeltNest.Yield;

namespace FeltNest.Tests.Cli;

/// <summary>A small result file of every kind that the program writes.</summary>
internal static class SampleResults
{
    private static readonly BallSpec Ball = BallReader.Read(RepositoryFile.PathOf("shapes", "balls", "type-2.json")).Ball;
    private static readonly Lazy<FlatPanel> Flat = new(() => PanelFit.Felt(Ball, PanelFlattener.Flatten(Ball)));

    // The demo's die with one cavity off its place and one not measured.
    private static MadeDie MadePanels => MadeDieJudge.Of(
        MadeDieCases.Panels, MadeDieCases.Rings(MadeDieCases.Panels, (number, p) => p + new Point2(number == 1 ? 0.15 : 0, 0))[..^1],
        new ProfileRule { ToleranceMm = 0.5, UncertaintyMm = 0.04 }, 0.4);

    // A plate of 40 by 20 mm with a dent, measured every 4 mm.
    private static MeasuredPanel MeasuredPlate => PanelFitter.Fit(
        Outline.From([new(-20, -10), new(20, -10), new(20, 10), new(-20, 10)]),
        [
            .. Enumerable.Range(0, 9).Select(i => new Point2((4 * i) - 16, i == 4 ? -9.2 : -10)),
            .. Enumerable.Range(0, 4).Select(i => new Point2(20.1, (4 * i) - 6)),
            .. Enumerable.Range(0, 9).Select(i => new Point2(16 - (4 * i), 10.05)),
            .. Enumerable.Range(0, 4).Select(i => new Point2(-20, 6 - (4 * i))),
        ],
        new ProfileRule { ToleranceMm = 1.2, UncertaintyMm = 0.06 });

    private static byte[] Disc() =>
        new ScanPicture { Size = (200, 200), Image = p => p * 2 }.Of([ScanPicture.Disc(new(50, 50), 30)]);

    private static readonly Dictionary<string, Func<CancellationToken, byte[]>> Makers = new()
    {
        ["panel"] = _ => PanelWriter.Write(Ball, Flat.Value),
        ["wrap"] = _ => WrapWriter.Write(Ball, "panel", PieceWrap.Lay(Ball, Flat.Value.Arcs, Flat.Value.EdgeMap)),
        ["trace"] = _ => TraceWriter.Write("disc", ScanReader.Trace(InputText.Of("disc.png", Disc()) with { Dpi = 50 })),
        ["proven"] = _ => ProvenWriter.Write("outline", Proven()),
        ["trial"] = _ => TrialWriter.Write(Ball, "readings", Tried()),
        ["gap-budget"] = _ => GapBudgetWriter.Json(Ball, Budgeted()),
        ["lot"] = _ => LotWriter.Write("panel", LotStudy.Run(
            BallReader.Read(Demo("type-2-lot-a17.json")).Ball, Flat.Value.Arcs, FeltReader.Read(Demo("felt-b04.json")), (0.2, 0.6))),
        ["felt"] = _ => FeltWriter.Write(Measured()),
        ["waist"] = stop => WaistWriter.Json(WaistStudy.Run(Ball, [26, 28], Lay, stop: stop)),
        ["seams"] = stop => SeamsWriter.Json(SeamStudy.Run(Ball, Lay, stop: stop)),
        ["seam-design"] = _ => SeamDesignWriter.Json(Designed()),
        ["compare"] = Compared,
        ["family"] = Family,
        ["usage"] = _ => UsageWriter.Json(UsageStudy.Run(new UsageRequest(
            RollCases.Squares, ActualsReader.Read(Demo("actuals.csv")), CostsReader.Read(Demo("costs.json"))))),
        ["period-usage"] = _ => PeriodWriter.Json(FeltNest.Tests.Cost.Tickets.TicketCases.Period),
        ["first-article"] = _ => MeasuredWriter.FirstArticle("plate", MeasuredPlate),
        ["made-die"] = _ => MadeDieWriter.Write(MadePanels),
        ["die-life"] = _ => Life(),
        ["layout"] = _ => LayoutWriter.Write(DieCases.PanelLay, YieldAccount.Of(DieCases.PanelLay)),
        ["roll-plan"] = _ => RollPlanWriter.Json(StrikePlanner.Run(new RollRequest
        {
            Layout = RollCases.Squares,
            Roll = RollCases.Roll(200, 20),
            RepeatsPerStrike = 2,
            GuidePlayMm = 3,
            FromMm = 0,
        })),
        ["die"] = stop => DieWriter.Write(Plates(stop)),
        ["order-plan"] = stop => OrderPlanWriter.Json(OrderPlanner.Run(OrderCases.Workshop(3, 6, 12), 1, stop: stop)),
    };

    /// <summary>The kinds.</summary>
    public static IEnumerable<string> Kinds => Makers.Keys;

    /// <summary>The file of a kind.</summary>
    public static byte[] Of(string kind, CancellationToken stop) => Makers[kind](stop);

    private static string Demo(string name) => RepositoryFile.PathOf("shapes", "demo", name);

    private static LayoutRequest Lay(LayoutPart part) => new()
    {
        Part = part,
        RollWidthMm = 400,
        Trims = EdgeTrims.Both(15),
        GapMm = 4,
        Rules = new LayoutRules(null, 0, RowRule.Same, false),
        Effort = 1,
        Seed = 1,
    };

    private static DieDesign Plates(CancellationToken stop) =>
        DieDesigner.Run(new GangRequest(DieCases.Plates, 0, DieCases.Measured(12), null, 2), stop);

    // A front of one mark, whose seam is the ball's own.
    private static SeamFront Designed()
    {
        (SeamChoice given, LayoutRequest roll, _) = new SeamMeasuring(Lay, LayoutSearch.Of).Of(Ball, CancellationToken.None);
        return new SeamFront
        {
            Question = new SeamQuestion
            {
                Ball = Ball,
                StretchLimitsPercent = [8],
                Limits = new SeamLimits { StretchPercent = 0, LeastRadiusMm = 12 },
                Waves = 3,
                Unmirrored = false,
                TurnsWarp = false,
            },
            Roll = roll,
            Given = given,
            Marks = [new SeamMark { StretchLimitPercent = 8, Curve = SeamFamily.TwoHarmonic, Plane = given, Roll = given }],
            Unanswered = [(8, SeamFamily.FourArc, "none was found")],
            Solves = 1,
            CutShort = false,
        };
    }

    // Three balls with a gap too wide by 0.3 mm, and one waist of each measured.
    private static TrialResult Tried() => TrialCorrection.Run(
        Ball,
        TrialBalls.Read(
            new TrialBalls(Ball) { ErrorA = _ => -0.15, ErrorB = _ => -0.15 }.Gaps(Enumerable.Range(1, TrialPlaces.Count)), 3, 0.05, 1,
            place => place == 1 ? TrialPlaces.OuterWaistMm(Ball) : null),
        "readings");

    // Core and placing off, and felt that shrinks.
    private static GapBudget Budgeted()
    {
        BallSpec ball = Ball with
        {
            Felt = Ball.Felt with { CureShrinkWarpPercent = 1, CureShrinkWeftPercent = 1 },
            Seam = Ball.Seam with { Adhesive = new AdhesiveRange { LeastMm = 0.2, MostMm = 0.9 } },
            Tolerances = new ToleranceSpec
            {
                CoreMassG = 0,
                CementMassPerAreaGsm = 0,
                FeltFinishedThicknessMm = 0,
                FeltMassPerAreaGsm = 0,
                CoreDiameterMm = 0.1,
                PlacingAlongMm = 0.2,
            },
        };
        return GapBudgetStudy.Run(ball, PanelFlattener.Flatten(ball));
    }

    // A lot with every test, whose warp bends.
    private static FeltPassport Measured() => PassportStudy.Run(FeltReadingsReader.Read(Demo("felt-readings.csv")), FitRange.Usual);

    private static ProvenFit Proven()
    {
        ProvenDeviation[] off =
        [
            .. Enumerable.Range(0, 24).Select(i => new ProvenDeviation
            {
                Place = new Point2(i, -i),
                Outward = new Point2(1, 0),
                OffMm = (i - 9) / 50.0,
            }),
        ];
        return new ProvenFit
        {
            Ball = Ball,
            Panel = Flat.Value,
            Values = [
                new ProvenValue
                {
                    Name = "neutral layer",
                    Field = "felt.neutralLayer",
                    Value = Ball.Felt.NeutralLayer,
                    Unit = string.Empty,
                    Spread = 0.05,
                    AtBound = null,
                },
                new ProvenValue
                {
                    Name = "waist",
                    Field = "seam.waistMm",
                    Value = Ball.Seam.WaistMm,
                    Unit = "mm",
                    Spread = 0.3,
                    AtBound = null,
                },
            ],
            ShowsLimit = false,
            Deviations = off,
            Trades = [new ProvenTrade(0.05, [0.1, -0.2]), new ProvenTrade(0.2, [0.2, 0.1])],
            TurnDeg = 1.5,
        };
    }

    private static byte[] Compared(CancellationToken stop)
    {
        CompareCase[] cases = [.. OffersReader.Read(Demo("offers.csv")).Take(2)
            .Select((offer, i) =>
                CompareCase.Of(offer with { WidthMm = 220 + (20 * i), LeastWidthMm = 200 + (20 * i), EdgeMm = null }, EdgeTrims.Both(15)))];
        return CompareWriter.Json(CompareStudy.Run(
            new CompareRequest(Lay(SampleLayout.Part) with { RollWidthMm = 0 }, cases, true, CostsReader.Read(Demo("costs.json")), null),
            null,
            stop));
    }

    // Two lines of one part, with a gap more; dies so short-lived that any other life takes another number of them.
    private static byte[] Family(CancellationToken stop) => FamilyWriter.Json(FamilyStudy.Run(
        new FamilyRequest
        {
            Balls =
            [
                .. new[] { 4.0, 6 }.Select(gap => new FamilyBall
                {
                    Name = $"gap {gap}",
                    BallsPerYear = 3_000_000,
                    Lay = Lay(SampleLayout.Part) with { GapMm = gap },
                }),
            ],
            Widths = [FamilyWidth.Of(200), FamilyWidth.Of(230)],
            Scan = true,
            Costs = CostsReader.Read(Demo("costs.json")) is { Die: { } die } costs
                ? costs with { Die = die with { LifeStrikes = 200 } }
                : throw new InvalidOperationException("the demo's costs have a die"),
            MostWidths = 2,
        },
        stop: stop));

    private static byte[] Life()
    {
        using TempFolder folder = new();
        File.WriteAllBytes(folder.Path("die.json"), DieWriter.Write(Plates(CancellationToken.None)));
        DieLife life = DieLife.Of(
            "D", null, 1.2,
            [
                new()
                {
                    Date = "2026-01-02",
                    Strikes = 0,
                    Cavity = 1,
                    Ply = "top",
                    OffMm = 0.1,
                    WorstMm = 0.2,
                }, new()
                {
                    Date = "2026-02-02",
                    Strikes = 9000,
                    Cavity = 1,
                    Ply = "top",
                    OffMm = 0.1,
                    WorstMm = 0.25,
                },
                new()
                {
                    Date = "2026-03-02",
                    Strikes = 15000,
                    Cavity = 1,
                    Ply = "top",
                    OffMm = 0.2,
                    WorstMm = 0.3,
                },
            ],
            60000, null);
        return MeasuredWriter.Life(life, DieReader.Read(folder.Path("die.json")));
    }
}
