using FeltNest.Drawing.Parts;
using FeltNest.Geometry;
using FeltNest.Rolls.Plan;
using static FeltNest.Drawing.Sheets.Rolls.TicketPage;
using static FeltNest.InvariantText;

namespace FeltNest.Drawing.Sheets.Rolls;

/// <summary>Boxes of a ticket to tick as strikes are made: one for each, or one for as many as let them all have room. A box whose strikes
/// lose panels has a black corner.</summary>
internal sealed class TicketBoxes
{
    // Height of a line of boxes with its numbers and of the words above the boxes, mm; boxes in a line, a box's edge and its black corner,
    // mm; most lines.
    private const double Line = 7.4;
    private const double Head = 6;
    private const int InLine = 40;
    private const double Pitch = (Right - Left) / InLine;
    private const double Edge = 3.7;
    private const double Corner = 2.2;
    private const int MostLines = 5;

    // Strikes that one box may stand for.
    private static readonly int[] Shares = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000];

    private readonly RollPlan plan;
    private readonly int each;

    /// <summary>The boxes of a plan.</summary>
    /// <param name="plan">The strikes.</param>
    /// <param name="room">Height there is for them, mm; one line is drawn at the least.</param>
    public TicketBoxes(RollPlan plan, double room)
    {
        this.plan = plan;
        int lines = (int)Math.Clamp(Math.Floor((room - Head) / Line), 1, MostLines);
        each = Shares.First(share => share == Shares[^1] || Count(share) <= lines * InLine);
    }

    /// <summary>Height they take, mm, with the words above them.</summary>
    public double Height => Head + (Line * Math.Ceiling(Count(each) / (double)InLine));

    /// <summary>The boxes below a height.</summary>
    public IEnumerable<Mark> Draw(double top)
    {
        string words = each == 1 ? "Strikes made: tick each" : Invariant($"Strikes made: a box is {each}; its last strike stands above it");
        yield return Words($"{words}. Black corner: panels are lost there.", new Point2(Left, top - 3), Ink.Note, Ink.Dark);
        for (int box = 0; box < Count(each); box++)
        {
            Point2 at = new(Left + (box % InLine * Pitch), top - Head + 1 - (box / InLine * Line) - Line + 0.6);
            int last = Math.Min(plan.Strikes.Count, (box + 1) * each);
            Box edge = new() { MinX = at.X, MinY = at.Y, MaxX = at.X + Edge, MaxY = at.Y + Edge };
            yield return new PathMark([Chain.Rectangle(edge)], Ink.Narrow);
            if (plan.Strikes.Skip(box * each).Take(each).Any(strike => strike.Lost.Count > 0))
            {
                Point2 corner = new(edge.MaxX, edge.MinY);
                yield return new PathMark(
                    [Chain.Ring([corner, corner + new Point2(0, Corner), corner - new Point2(Corner, 0)])], null, PartMarks.Lost);
            }

            bool free = box % 5 is not (0 or 4) || box % InLine == 0;
            if (box % 5 == 4 || box % InLine == 0 || (last == plan.Strikes.Count && free))
            {
                bool first = box % InLine == 0;
                yield return Words(
                    Invariant($"{last}"), new Point2(first ? at.X : at.X + Edge, edge.MaxY + 0.7), 2, Ink.Dark,
                    first ? TextAnchor.Start : TextAnchor.End);
            }
        }
    }

    private int Count(int share) => (plan.Strikes.Count + share - 1) / share;
}
