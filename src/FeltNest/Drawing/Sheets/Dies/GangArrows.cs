using FeltNest.Die.Order;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;
using FeltNest.Rolls;

namespace FeltNest.Drawing.Sheets.Dies;

/// <summary>Arrows of the frame, and of the nap where the shop says how it lies: a layout does not know. From the die's side the felt runs
/// against the drawing's x, and has an arrow of its own.</summary>
internal sealed record GangArrows
{
    /// <summary>Where the row of arrows begins.</summary>
    public required Point2 At { get; init; }

    /// <summary>Way of the feed on the sheet, of length 1.</summary>
    public required Point2 Feed { get; init; }

    private bool Level => Math.Abs(Feed.X) > Math.Abs(Feed.Y);

    // From arrow to arrow, mm of paper.
    private double Step => Level ? 46 : 32;

    /// <summary>The arrows of an order.</summary>
    public IEnumerable<Mark> Draw(DieOrder order)
    {
        double beside = Beside(order);
        return [.. AlongRoll(order), .. AcrossRoll(beside), .. Nap(order, beside)];
    }

    // Where the arrow across stands.
    private double Beside(DieOrder order)
    {
        if (!order.DieView)
        {
            return 58;
        }

        return (2 * Step) + (Level ? 8 : 16);
    }

    private IEnumerable<Mark> AlongRoll(DieOrder order) =>
        order.DieView ? [.. Way(0, -Feed, "x"), .. Way(Step, Feed, "feed, warp")] : Way(0, Feed, "x: feed, warp");

    private IEnumerable<Mark> AcrossRoll(double beside) => Level
        ? DieParts.Arrow(At + new Point2(beside, 0), new Point2(0, 8), "y")
        : DieParts.Arrow(At + new Point2(beside, 1), new Point2(-16, 0), "y");

    private IEnumerable<Mark> Nap(DieOrder order, double beside)
    {
        if (order.Nap is not { } nap)
        {
            return
            [
                new TextMark
                {
                    Text = "nap: not stated",
                    At = At + new Point2(beside + 22, -1.2),
                    HeightMm = Ink.Note,
                    Colour = Ink.Dark,
                },
            ];
        }

        return Way(beside + (Level ? 20 : 10), nap == NapDirection.Forward ? Feed : -Feed, "nap");
    }

    private IEnumerable<Mark> Way(double along, Point2 unit, string word)
    {
        Point2 way = unit * (Level ? 16 : 8);
        Point2 from = Level ? new Point2(along + Math.Max(0, -way.X), 0) : new Point2(along + 12, Math.Max(0, -way.Y));
        return DieParts.Arrow(At + from, way, word);
    }
}
