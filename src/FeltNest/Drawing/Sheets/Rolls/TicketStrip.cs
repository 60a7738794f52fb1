using FeltNest.Drawing.Lettering;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;
using FeltNest.Rolls;
using FeltNest.Rolls.Plan;
using static FeltNest.Drawing.Sheets.Rolls.TicketPage;
using static FeltNest.InvariantText;

namespace FeltNest.Drawing.Sheets.Rolls;

/// <summary>The piece of a ticket in small: its strikes, those that lose panels black, with faults and splices by the numbers of their
/// list. Length and width are drawn to scales of their own.</summary>
internal sealed class TicketStrip
{
    // Room below the felt for its metres and above it for numbers, mm.
    private const double Below = 5;
    private const double Above = 5;

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
                new PathMark([Chain.Rectangle(strip.felt)], null, Ink.Cloth), .. strip.Strikes(), .. strip.Stripes(), .. strip.Things(),
                new PathMark([Chain.Rectangle(strip.felt)], Ink.Wide), .. strip.Metres(),
            ]);
    }

    private double X(double mm) => Math.Clamp(Left + ((mm - piece.FromMm) * along), Left, Right);

    // A tick where each strike begins, a number at every fifth where there is room, strikes that lose panels black from the side where the
    // losses are counted.
    private IEnumerable<Mark> Strikes()
    {
        double free = double.NegativeInfinity;
        for (int i = 0; i < plan.Strikes.Count; i++)
        {
            PlannedStrike strike = plan.Strikes[i];
            double left = X(strike.XMm);
            double share = strike.Lost.Count / (double)plan.Pattern.Panels.Count;
            if (share > 0)
            {
                double high = Math.Max(1.2, share * (felt.MaxY - felt.MinY));
                Box lost =
                    felt with { MinX = left, MaxX = Math.Max(left + 0.4, X(strike.XMm + plan.Pattern.FeedMm)), MaxY = felt.MinY + high };
                yield return new PathMark([Chain.Rectangle(lost)], null, PartMarks.Lost);
            }

            yield return new PathMark([Chain.Open(new Point2(left, felt.MaxY), new Point2(left, felt.MaxY + 1.2))], Ink.Narrow);
            string number = Invariant($"{i + 1}");
            if ((i == 0 || (i + 1) % 5 == 0) && left >= free && left + StrokeFont.Width(number, Ink.Note) <= Right)
            {
                yield return Words(number, new Point2(left, felt.MaxY + 1.9), Ink.Note, Ink.Dark);
                free = left + StrokeFont.Width(number, Ink.Note) + 2;
            }
        }
    }

    private IEnumerable<Mark> Stripes() => plan.Request.Layout.Rules.Forbidden.Select(stripe => new PathMark(
        [
            Chain.Open(new Point2(Left, felt.MinY + (stripe.YFromMm * across)), new Point2(Right, felt.MinY + (stripe.YFromMm * across))),
            Chain.Open(new Point2(Left, felt.MinY + (stripe.YToMm * across)), new Point2(Right, felt.MinY + (stripe.YToMm * across))),
        ], new Pen(0.35, Ink.Dark, 2, 1)));

    private IEnumerable<Mark> Things()
    {
        FeltRoll roll = plan.Request.Roll;
        foreach (RollSplice splice in roll.Splices.Where(s => s.XMm >= piece.FromMm && s.XMm <= piece.ToMm))
        {
            double x = X(splice.XMm);
            yield return new PathMark(
                [Chain.Open(new Point2(x, felt.MinY - 1.5), new Point2(x, felt.MaxY + 1.5))], new Pen(0.9, Ink.Dark, 3, 1));
        }

        foreach (RollFault fault in roll.Faults.Where(f => f.MiddleX >= piece.FromMm && f.MiddleX <= piece.ToMm))
        {
            Point2 at = new(X(fault.MiddleX), felt.MinY + (fault.MiddleY * across));
            yield return new PathMark([Chain.Circle(at, 1.3)], new Pen(0.5, Ink.Dark), Ink.Cloth);
            yield return new PathMark(
                [
                    Chain.Open(at + new Point2(-0.9, -0.9), at + new Point2(0.9, 0.9)),
                    Chain.Open(at + new Point2(-0.9, 0.9), at + new Point2(0.9, -0.9)),
                ], Ink.Narrow);
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
