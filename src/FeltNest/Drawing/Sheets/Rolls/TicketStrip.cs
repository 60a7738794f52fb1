using FeltNest.Drawing.Lettering;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;
using FeltNest.Rolls;
using FeltNest.Rolls.Plan;
using static FeltNest.Drawing.Sheets.Rolls.TicketPage;
using static FeltNest.InvariantText;

namespace FeltNest.Drawing.Sheets.Rolls;

/// <summary>The piece of a ticket in small: its strikes, lost panels black where they lie, faults as rings, splices dashed. Length and
/// width are drawn to scales of their own.</summary>
internal sealed class TicketStrip
{
    // Room below the felt for its metres and above it for numbers, mm.
    private const double Below = 5;
    private const double Above = 5;

    // A lost panel is never drawn smaller than this, and a fault's ring leaves it to be seen inside: mm.
    private const double LeastLost = 1.2;
    private const double Ring = 1.6;

    private readonly RollPlan plan;
    private readonly TicketPiece piece;
    private readonly Box felt;
    private readonly double along;
    private readonly double across;

    private TicketStrip(RollPlan plan, TicketPiece piece, double top, double height)
    {
        (this.plan, this.piece) = (plan, piece);
        felt = new Box { MinX = Left, MinY = top - height + Below, MaxX = Right, MaxY = top - Above };
        along = (Right - Left) / Math.Max(1, piece.ToMm - piece.FromMm);
        across = (felt.MaxY - felt.MinY) / plan.Request.Roll.MostWidthMm;
    }

    /// <summary>The picture below a height.</summary>
    public static GroupMark Draw(RollPlan plan, TicketPiece piece, double top, double height)
    {
        TicketStrip strip = new(plan, piece, top, height);
        return new GroupMark(
            "piece",
            [
                new PathMark([Chain.Rectangle(strip.felt)], null, Ink.Cloth), .. strip.Lost(), .. strip.Strikes(), .. strip.Stripes(),
                .. strip.Things(),
                new PathMark([Chain.Rectangle(strip.felt)], Ink.Wide), .. strip.Metres(),
            ]);
    }

    private double X(double mm) => Math.Clamp(Left + ((mm - piece.FromMm) * along), Left, Right);

    // A tick where each strike begins, a number at every fifth where there is room.
    private IEnumerable<Mark> Strikes()
    {
        double free = double.NegativeInfinity;
        for (int i = 0; i < plan.Strikes.Count; i++)
        {
            double left = X(plan.Strikes[i].XMm);
            yield return new PathMark([Chain.Open(new Point2(left, felt.MaxY), new Point2(left, felt.MaxY + 1.2))], Ink.Narrow);
            string number = Invariant($"{i + 1}");
            if ((i == 0 || (i + 1) % 5 == 0) && left >= free && left + StrokeFont.Width(number, Ink.Note) <= Right)
            {
                yield return Words(number, new Point2(left, felt.MaxY + 1.9), Ink.Note, Ink.Dark);
                free = left + StrokeFont.Width(number, Ink.Note) + 2;
            }
        }
    }

    // The extent of each lost panel, grown about its middle where it would hardly be seen, and moved back onto the felt.
    private IEnumerable<Mark> Lost()
    {
        foreach (PlannedStrike strike in plan.Strikes)
        {
            foreach (StrikePanel panel in strike.Lost.Select(lost => plan.Pattern.Panels[lost.Panel]))
            {
                (double minX, double maxX) = Seen(
                    Left + ((strike.XMm + panel.MinX - piece.FromMm) * along), Left + ((strike.XMm + panel.MaxX - piece.FromMm) * along),
                    Left, Right);
                (double minY, double maxY) = Seen(
                    felt.MinY + ((panel.MinY + strike.ShiftYMm) * across), felt.MinY + ((panel.MaxY + strike.ShiftYMm) * across),
                    felt.MinY, felt.MaxY);
                yield return new PathMark(
                    [Chain.Rectangle(new Box { MinX = minX, MinY = minY, MaxX = maxX, MaxY = maxY })], null, PartMarks.Lost);
            }
        }
    }

    private static (double From, double To) Seen(double from, double to, double low, double high)
    {
        double half = Math.Max(LeastLost, to - from) / 2;
        double middle = Math.Clamp((from + to) / 2, low + (LeastLost / 2), high - (LeastLost / 2));
        return (Math.Max(low, middle - half), Math.Min(high, middle + half));
    }

    private IEnumerable<Mark> Stripes() => plan.Request.Layout.Rules.Forbidden.Select(stripe => new PathMark(
        [
            Chain.Open(new Point2(Left, felt.MinY + (stripe.YFromMm * across)), new Point2(Right, felt.MinY + (stripe.YFromMm * across))),
            Chain.Open(new Point2(Left, felt.MinY + (stripe.YToMm * across)), new Point2(Right, felt.MinY + (stripe.YToMm * across))),
        ], new Pen(0.35, Ink.Dark, 2, 1)));

    private IEnumerable<Mark> Things()
    {
        FeltRoll roll = plan.Request.Roll;
        foreach (RollSplice splice in roll.Splices.Where(s => s.ToMm >= piece.FromMm && s.FromMm <= piece.ToMm))
        {
            double x = X(splice.XMm);
            yield return new PathMark(
                [Chain.Open(new Point2(x, felt.MinY - 1.5), new Point2(x, felt.MaxY + 1.5))], new Pen(0.9, Ink.Dark, 3, 1));
        }

        foreach (RollFault fault in roll.Faults.Where(f => f.XMm + f.LengthMm >= piece.FromMm && f.XMm <= piece.ToMm))
        {
            Point2 at = new(X(fault.MiddleX), felt.MinY + (fault.MiddleY * across));
            yield return new PathMark([Chain.Circle(at, Ring)], new Pen(0.5, Ink.Dark));
        }
    }

    // Metres of the roll along the piece.
    private IEnumerable<Mark> Metres()
    {
        double step = 1000 * new[] { 0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000, 10_000 }
            .First(m => m * 1000 * along >= 14 || m >= 10_000);
        for (int k = (int)Math.Ceiling((piece.FromMm / step) - 1e-9); k * step <= piece.ToMm + 1e-6; k++)
        {
            double x = X(k * step);
            yield return new PathMark([Chain.Open(new Point2(x, felt.MinY), new Point2(x, felt.MinY - 1.2))], Ink.Narrow);
            yield return Words(
                Invariant($"{k * step / 1000:0.#} m"), new Point2(Math.Clamp(x, Left + 4, Right - 4), felt.MinY - 4.4), Ink.Note, Ink.Dark,
                TextAnchor.Middle);
        }
    }
}
