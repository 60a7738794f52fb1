using FeltNest.Ball;
using FeltNest.Cost.Compare;
using FeltNest.Cost.Offers;
using FeltNest.Cost.Sheet;
using FeltNest.Design;
using FeltNest.Die;
using FeltNest.Die.Gang;
using FeltNest.Die.Order;
using FeltNest.Files;
using FeltNest.Files.Balls;
using FeltNest.Files.Costs;
using FeltNest.Files.Layouts;
using FeltNest.Files.Offers;
using FeltNest.Files.Presses;
using FeltNest.Files.Rolls;
using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Layout.Check;
using FeltNest.Panel;
using FeltNest.Rolls;
using FeltNest.Rolls.Plan;
using FeltNest.Rolls.Plan.Chain;
using FeltNest.Yield;

namespace FeltNest;

/// <summary>
/// The front door of the library: the panel of a ball, its layout on a roll, what that uses, offers side by side, the strikes of a real
/// roll, and the gang die. Everything behind it may change without notice.
/// </summary>
/// <remarks>Every method may be called from several threads at once. Inputs that cannot be used are told by
/// <see cref="InputException"/> or <see cref="GeometryException"/>, sound ones without an answer by
/// <see cref="NoAnswerException"/>.</remarks>
public static class FeltCovers
{
    /// <summary>A ball from the text of a ball file (schema feltnest/ball/1).</summary>
    /// <param name="name">What messages call the text; a file's name.</param>
    /// <param name="utf8">The text.</param>
    /// <exception cref="InputException">Names the field, the value found and what is allowed.</exception>
    public static BallSpec ReadBall(string name, ReadOnlyMemory<byte> utf8) => BallReader.Read(InputText.Of(name, utf8)).Ball;

    /// <summary>A part to lay from the text of an outline (JSON, CSV, SVG or DXF, told by the name's ending).</summary>
    /// <param name="name">What messages call the text; a file's name.</param>
    /// <param name="utf8">The text.</param>
    /// <exception cref="InputException">Names the field, the value found and what is allowed.</exception>
    /// <exception cref="GeometryException">The points make no simple outline.</exception>
    public static LayoutPart ReadOutline(string name, ReadOnlyMemory<byte> utf8) =>
        PartReader.Read(InputText.Of(name, utf8)).Outline?.Part
            ?? throw new InputException(name, null, "is a ball: compute its panel and take that as the part");

    /// <summary>A layout from the text of a layout file (schema feltnest/layout/1).</summary>
    /// <param name="name">What messages call the text; a file's name.</param>
    /// <param name="utf8">The text.</param>
    /// <exception cref="InputException">Names the field, the value found and what is allowed.</exception>
    public static RollLayout ReadLayout(string name, ReadOnlyMemory<byte> utf8) => LayoutReader.Read(InputText.Of(name, utf8)).Layout;

    /// <summary>Offers of felt from the text of a list (CSV).</summary>
    /// <param name="name">What messages call the text; a file's name.</param>
    /// <param name="utf8">The text.</param>
    /// <exception cref="InputException">Names the line, the column, the value found and what is allowed.</exception>
    public static IReadOnlyList<FeltOffer> ReadOffers(string name, ReadOnlyMemory<byte> utf8) =>
        OffersReader.Read(InputText.Of(name, utf8));

    /// <summary>What a shop knows of its costs, from the text of a costs file (schema feltnest/costs/1).</summary>
    /// <param name="name">What messages call the text; a file's name.</param>
    /// <param name="utf8">The text.</param>
    /// <exception cref="InputException">Names the field, the value found and what is allowed.</exception>
    public static CostInputs ReadCosts(string name, ReadOnlyMemory<byte> utf8) => CostsReader.Read(InputText.Of(name, utf8));

    /// <summary>A roll as measured, from the text of a roll file (schema feltnest/roll/1).</summary>
    /// <param name="name">What messages call the text; a file's name.</param>
    /// <param name="utf8">The text.</param>
    /// <exception cref="InputException">Names the field, the value found and what is allowed.</exception>
    public static FeltRoll ReadRoll(string name, ReadOnlyMemory<byte> utf8) => RollReader.Read(InputText.Of(name, utf8));

    /// <summary>A press from the text of a press file (schema feltnest/press/1).</summary>
    /// <param name="name">What messages call the text; a file's name.</param>
    /// <param name="utf8">The text.</param>
    /// <exception cref="InputException">Names the field, the value found and what is allowed.</exception>
    public static PressSpec ReadPress(string name, ReadOnlyMemory<byte> utf8) => PressReader.Read(InputText.Of(name, utf8));

    /// <summary>The flat panel of a ball: outline, strains, allowances. Lengths mm.</summary>
    /// <exception cref="InputException">The ball's values do not go together.</exception>
    /// <exception cref="NoAnswerException">No panel keeps the felt's limit along the edge.</exception>
    public static FlatPanel Panel(BallSpec ball) => PanelFlattener.Flatten(ball);

    /// <summary>The panel as a part to lay, with the angle to the warp it is designed for.</summary>
    public static LayoutPart Part(BallSpec ball, FlatPanel panel) => CoverPart.Of(ball, panel);

    /// <summary>The densest layout found of a part over a roll width. The independent check has passed it.</summary>
    /// <param name="request">Part, width, gap, trims, rules, counted work and seed: the same request gives the same layout.</param>
    /// <param name="progress">Told how far the search is, or null.</param>
    /// <param name="stop">Ends the search with the best so far, which says that it was cut short.</param>
    /// <exception cref="InputException">Something asked for is out of its range.</exception>
    /// <exception cref="NoAnswerException">The part does not fit; says what would.</exception>
    public static RollLayout Layout(
        LayoutRequest request, IProgress<SearchProgress>? progress = null, CancellationToken stop = default) =>
        LayoutSearch.Run(request, progress, stop);

    /// <summary>Panels and balls a metre, waste and felt per thousand balls of a layout, before roll ends and faults.</summary>
    public static YieldFigures Yield(RollLayout layout) => YieldAccount.Of(layout);

    /// <summary>What the second geometry engine finds wrong with a layout, one line each; empty where it is sound.</summary>
    public static IReadOnlyList<string> Violations(RollLayout layout) => LayoutCheck.Verify(layout).Violations;

    /// <summary>Widths or offers side by side: felt bought and, where prices are known, cost of a thousand good balls.</summary>
    /// <param name="question">What is compared.</param>
    /// <param name="stop">Ends the work with the rows done so far.</param>
    /// <exception cref="InputException">Prices that cannot be compared.</exception>
    /// <exception cref="NoAnswerException">The part fits nowhere.</exception>
    public static Comparison Compare(CompareRequest question, CancellationToken stop = default) =>
        CompareStudy.Run(question, null, stop);

    /// <summary>The strikes of one real roll: where to strike so that the most panels are good.</summary>
    /// <exception cref="InputException">Something asked for is out of its range, or the layout has several bands.</exception>
    /// <exception cref="NoAnswerException">The roll is nowhere wide enough, or no panel is good anywhere.</exception>
    public static RollPlan Plan(RollRequest request)
    {
        RollRoom.Require(request);
        return StrikePlanner.Run(request);
    }

    /// <summary>What is usual in the trade for a die of a layout, where the shop has written no order; its force is a
    /// placeholder.</summary>
    public static DieOrder UsualOrder(RollLayout layout) => FeltNest.Die.Order.UsualOrder.Of(layout);

    /// <summary>The gang die of a layout: cavities, cutting edges, rule length, force, and what is to be watched.</summary>
    /// <param name="request">Layout, band, wishes and press.</param>
    /// <param name="stop">Ends the work without a result.</param>
    /// <exception cref="InputException">Something asked for is out of its range.</exception>
    /// <exception cref="NoAnswerException">No die can be made, or none that the press takes.</exception>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static DieDesign Die(GangRequest request, CancellationToken stop = default) => DieDesigner.Run(request, stop);
}
