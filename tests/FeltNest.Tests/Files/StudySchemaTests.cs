using FeltNest.Ball;
using FeltNest.Cost.Compare;
using FeltNest.Cost.Offers;
using FeltNest.Cost.Usage;
using FeltNest.Design;
using FeltNest.Die;
using FeltNest.Die.Gang;
using FeltNest.Die.Proof;
using FeltNest.Files.Balls;
using FeltNest.Files.Compare;
using FeltNest.Files.Costs;
using FeltNest.Files.Dies;
using FeltNest.Files.Offers;
using FeltNest.Files.Orders;
using FeltNest.Files.Panels;
using FeltNest.Files.Rolls;
using FeltNest.Files.Studies;
using FeltNest.Files.Usage;
using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Layout.Limits;
using FeltNest.Panel;
using FeltNest.Panel.Proven;
using FeltNest.Panel.Wrap;
using FeltNest.Rolls;
using FeltNest.Rolls.Orders;
using FeltNest.Rolls.Plan;
using FeltNest.Tests.Die;
using FeltNest.Tests.Rolls;
using FeltNest.Tests.Rolls.Orders;
using Xunit;

namespace FeltNest.Tests.Files;

/// <summary>Every result file fits its published schema.</summary>
public sealed class StudySchemaTests
{
    private static readonly BallSpec Ball = BallReader.Read(RepositoryFile.PathOf("shapes", "balls", "type-2.json")).Ball;

    [Fact]
    public void A_study_of_waists_fits_its_schema()
    {
        // The widest waist has no panel within so tight a roll: a reason stands in its place.
        BallSpec along = Ball with { Panel = Ball.Panel with { WarpAngleDeg = 0 } };
        Fits(
            "waist",
            WaistWriter.Json(
                WaistStudy.Run(
                    along, [14, 40], part => Lay(part) with { RollWidthMm = 80, Rules = new LayoutRules(0, 0, RowRule.Same, false) },
                    stop: TestContext.Current.CancellationToken)));
        Fits("waist", WaistWriter.Json(WaistStudy.Run(Ball, [26], Lay, stop: TestContext.Current.CancellationToken)));
    }

    [Fact]
    public void Seams_side_by_side_fit_their_schema() =>
        Fits("seams", SeamsWriter.Json(SeamStudy.Run(Ball, Lay, stop: TestContext.Current.CancellationToken)));

    [Fact]
    public void A_wrap_fits_its_schema_held_or_not()
    {
        FlatPanel panel = PanelFlattener.Flatten(Ball);
        ArcOutline disc = ArcOutline.From([new(-20, 0, Math.PI), new(20, 0, Math.PI)]);

        Fits("wrap", WrapWriter.Write(Ball, "panel", PieceWrap.Lay(Ball, panel.Arcs, panel.EdgeMap)));
        Fits("wrap", WrapWriter.Write(Ball, "disc", PieceWrap.Lay(Ball, disc, null)));
    }

    [Fact, Trait("tier", "long")]
    public void A_fit_to_a_proven_panel_fits_its_schema_with_and_without_a_limit()
    {
        FlatPanel plain = PanelFlattener.Flatten(Ball);
        FlatPanel limited = PanelFlattener.Flatten(Ball with { Felt = Ball.Felt with { MaxEdgeCompressionPercent = 8 } });

        Fits("proven", ProvenWriter.Write("plain", ProvenPanel.Fit(Ball, plain.Arcs)));
        Fits("proven", ProvenWriter.Write("limited", ProvenPanel.Fit(Ball, limited.Arcs)));
    }

    [Fact]
    public void A_roll_and_its_plan_fit_their_schemas()
    {
        FeltRoll roll = RollReader.Read(RepositoryFile.PathOf("shapes", "demo", "rolls", "roll-a17.json"));

        Fits("roll", File.ReadAllBytes(RepositoryFile.PathOf("shapes", "demo", "rolls", "roll-a17.json")));
        Fits("roll", RollWriter.Write(RollCases.Roll(100, 20)));
        Fits(
            "roll-plan",
            RollPlanWriter.Json(
                StrikePlanner.Run(new RollRequest
                {
                    Layout = RollCases.Squares,
                    Roll = RollCases.Roll(200, 20, [.. roll.Faults.Take(2)]),
                    RepeatsPerStrike = 2,
                    GuidePlayMm = 3,
                    FromMm = 0,
                })));
    }

    [Fact, Trait("tier", "long")]
    public void A_die_its_order_and_what_is_found_of_it_fit_their_schemas()
    {
        DieDesign panels = DieCases.Panels;
        DieDesign plates = DieDesigner.Run(
            new GangRequest(DieCases.Plates, 0, DieCases.Measured(12) with { Wear = null }, null, 2),
            TestContext.Current.CancellationToken);
        Fits("die-order", File.ReadAllBytes(RepositoryFile.PathOf("shapes", "demo", "dies", "gang-die.json")));
        Fits("die", DieWriter.Write(panels));
        Fits("die", DieWriter.Write(plates));

        MeasuredPanel measured =
            PanelFitter.Fit(
                panels.Request.Layout.Parts[0].Outline, panels.Request.Layout.Parts[0].Outline.Points,
                new ProfileRule { ToleranceMm = 1.2 });
        Fits("first-article", MeasuredWriter.FirstArticle("panel", measured));
        using TempFolder folder = new();
        foreach (DieDesign design in new[] { panels, plates })
        {
            File.WriteAllBytes(folder.Path("die.json"), DieWriter.Write(design));
            DieLife life = DieLife.Of(
                "D", null, 1.2, [new()
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
                    WorstMm = 0.3,
                }],
                design.Request.Order.Wear?.LifeStrikes, null);
            Fits("die-life", MeasuredWriter.Life(life, DieReader.Read(folder.Path("die.json"))));
        }
    }

    [Fact]
    public void A_plan_of_orders_fits_its_schema() =>
        Fits(
            "order-plan",
            OrderPlanWriter.Json(OrderPlanner.Run(OrderCases.Workshop(3, 6, 12), 1, stop: TestContext.Current.CancellationToken)));

    [Fact]
    public void A_panel_with_its_fit_fits_its_schema() =>
        Fits("panel", PanelWriter.Write(Ball, PanelFit.Felt(Ball, PanelFlattener.Flatten(Ball))));

    [Fact, Trait("tier", "long")]
    public void A_comparison_fits_its_schema_with_and_without_costs_and_a_kept_die()
    {
        IReadOnlyList<FeltOffer> offers = OffersReader.Read(RepositoryFile.PathOf("shapes", "demo", "offers.csv"));
        LayoutRequest lay = Lay(SampleLayout.Part) with { RollWidthMm = 0 };
        CompareCase[] cases =
        [
            .. offers.Take(2).Select(offer => CompareCase.Of(offer with { WidthMm = 220, LeastWidthMm = 200 }, EdgeTrims.Both(15))),
        ];
        RollLayout kept = SampleLayout.OneRepeat;

        Fits("compare", CompareWriter.Json(CompareStudy.Run(
            new CompareRequest(lay, cases, false, CostsReader.Read(RepositoryFile.PathOf("shapes", "demo", "costs.json")), kept), null,
            TestContext.Current.CancellationToken)));
        Fits(
            "compare",
            CompareWriter.Json(
                CompareStudy.Run(
                    new CompareRequest(lay, [CompareCase.Of(200, EdgeTrims.Both(15))], true, null, null), null,
                    TestContext.Current.CancellationToken)));
    }

    [Fact]
    public void The_tickets_of_a_period_fit_their_schema() =>
        Fits("period-usage", PeriodWriter.Json(FeltNest.Tests.Cost.Tickets.TicketCases.Period));

    [Fact]
    public void A_split_of_used_felt_fits_its_schema_with_and_without_costs()
    {
        IReadOnlyList<ActualRoll> rolls = ActualsReader.Read(RepositoryFile.PathOf("shapes", "demo", "actuals.csv"));

        Fits(
            "usage",
            UsageWriter.Json(
                UsageStudy.Run(
                    new UsageRequest(RollCases.Squares, rolls, CostsReader.Read(RepositoryFile.PathOf("shapes", "demo", "costs.json"))))));
        Fits(
            "usage",
            UsageWriter.Json(
                UsageStudy.Run(
                    new UsageRequest(
                        RollCases.Squares,
                        [new ActualRoll
                        {
                            Roll = "R",
                            Metres = 1,
                            GoodPanels = 0,
                            WidthMm = null,
                            EndsM = null,
                            FaultPanels = null,
                            RejectedPanels = null,
                            UnpairedPanels = null,
                            Price = null,
                            SignedBy = [],
                        }, rolls[0] with { WidthMm = null, Price = null }],
                        null))));
    }

    [Fact]
    public void The_costs_of_the_demo_fit_their_schema() =>
        Fits("costs", File.ReadAllBytes(RepositoryFile.PathOf("shapes", "demo", "costs.json")));

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

    private static void Fits(string schema, byte[] json) => Assert.Null(SchemaFile.Misfit(schema, json));
}
