using FeltNest.Die;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;
using FeltNest.Rolls.Plan;
using FeltNest.Rolls.Plan.Chain;
using static FeltNest.Drawing.Sheets.Rolls.TicketPage;
using static FeltNest.InvariantText;

namespace FeltNest.Drawing.Sheets.Rolls;

/// <summary>The cutting ticket of a roll on A4: what to cut, the piece in small, the runs of strikes, what lies in the piece, blanks for
/// what came out, and the cautions.</summary>
internal static class TicketSheet
{
    // Room of the blanks, of a list's head with the space before it, and the picture's least and greatest height, mm.
    private const double BlankRoom = 51;
    private const double ListHead = 9;
    private const double LeastPicture = 22;
    private const double MostPicture = 62;

    // Lines of the lists that come before many boxes.
    private const int FewRuns = 3;
    private const int FewBesides = 6;

    // Line to line of the cautions, mm.
    private const double SafetyStep = 3.9;

    /// <summary>Draws the sheet.</summary>
    /// <param name="plan">The strikes.</param>
    /// <param name="order">The piece of work they are of, where they belong to a plan of orders.</param>
    public static Sheet Draw(RollPlan plan, TicketOrder? order = null)
    {
        List<Mark> marks = [.. Head(plan, order)];
        string? narrow = RollRoom.Warning(plan);
        double y = Top - 23;
        if (narrow is not null)
        {
            y -= NarrowBand.Height;
            marks.Add(NarrowBand.Draw(narrow, new Box { MinX = Left, MinY = y + 1, MaxX = Right, MaxY = y + NarrowBand.Height }));
        }

        TicketPiece piece = new(plan, order);
        (y, IReadOnlyList<Mark> facts) = TicketFacts.Draw(plan, order, piece, y);
        marks.AddRange(facts);
        marks.AddRange(Middle(plan, order, piece, y - 1));
        marks.AddRange(Blanks(SafetyTop + BlankRoom - 7));
        marks.AddRange(Safety());
        return new Sheet
        {
            Title = $"Cutting ticket of roll {plan.Request.Roll.Name}",
            Description = Invariant($"{plan.Strikes.Count} strikes, {plan.GoodPanels} good panels expected; blanks for what came out."),
            WidthMm = Width,
            HeightMm = Height,
            Symbols = [],
            Marks = marks,
        };
    }

    /// <summary>A page that says why there is no ticket.</summary>
    public static Sheet WithoutTicket(string why) => new()
    {
        Title = "No cutting ticket",
        Description = why,
        WidthMm = Width,
        HeightMm = Height,
        Symbols = [],
        Marks = [Words(why, new Point2(Left, Top - 7), Ink.Label, Ink.Dark)],
    };

    private static double SafetyTop => 20 + (SafetyWords.Ticket.Count * SafetyStep);

    private static IEnumerable<Mark> Head(RollPlan plan, TicketOrder? order)
    {
        string number = order is null ? string.Empty : $" {order.Number}";
        yield return Words($"Cutting ticket{number}", new Point2(Left, Top - 7), 7, Ink.Dark);
        yield return Fitted($"roll {plan.Request.Roll.Name}", new Point2(Right, Top - 7), 7, 90, TextAnchor.End);
        yield return Fitted(
            Invariant($"{plan.GoodPanels} good panels expected, {plan.Balls} balls, in {plan.Strikes.Count} strikes"),
            new Point2(Left, Top - 16), Ink.Title, Right - Left);
        yield return Rule(Top - 20, Ink.Wide);
    }

    // Picture and lists share what room is left: the lists first, the picture as high as the rest allows.
    private static List<Mark> Middle(RollPlan plan, TicketOrder? order, TicketPiece piece, double top)
    {
        double whole = top - SafetyTop - BlankRoom - (2 * (ListHead + TicketLists.UnderHead)) - 4;
        int besides = Math.Max(1, Math.Max(piece.Things.Count, piece.Losses.Count));
        int runs = Math.Max(1, StrikeRun.Of(plan).Count);
        int wanted = Math.Min(runs, FewRuns) + Math.Min(besides, FewBesides);
        TicketBoxes boxes = new(plan, whole - LeastPicture - (wanted * TicketLists.Step));
        double room = whole - boxes.Height;
        int lines = (int)((room - LeastPicture) / TicketLists.Step);
        int runsShown = Math.Min(runs, Math.Max(lines / 2, lines - besides));
        int besidesShown = Math.Min(besides, lines - runsShown);
        double picture = Math.Min(MostPicture, room - ((runsShown + besidesShown) * TicketLists.Step));
        List<Mark> marks = [TicketStrip.Draw(plan, piece, top, picture)];
        string where = order is null ? "all are in roll.csv" : "plan the strikes of this roll alone for all of them";
        (double y, IReadOnlyList<Mark> list) = TicketLists.Runs(plan, runsShown, where, top - picture - 5);
        marks.AddRange(list);
        y -= ListHead;
        marks.Add(Words("In this piece (faults ringed, splices dashed)", new Point2(Left, y + 1), Ink.Note, Ink.Dark));
        marks.Add(Words("Strikes that lose panels (black)", new Point2(Left + 106, y + 1), Ink.Note, Ink.Dark));
        marks.AddRange(TicketLists.Things(piece, besidesShown, y - 4).Marks);
        marks.AddRange(TicketLists.Losses(piece, besidesShown, y - 4).Marks);
        marks.Add(new GroupMark("boxes", [.. boxes.Draw(SafetyTop + BlankRoom + boxes.Height - 2)]));
        return marks;
    }

    private static IEnumerable<Mark> Blanks(double y)
    {
        yield return Rule(y + 4, Ink.Wide);
        yield return Words("As cut", new Point2(Left, y - 1), Ink.Label, Ink.Dark);
        yield return Blank("strikes", Left, 40, y - 8.5);
        yield return Blank("metres used", Left + 45, 44, y - 8.5);
        yield return Blank("at ends, m", Left + 94, 41, y - 8.5);
        yield return Blank("width, mm", Left + 140, 40, y - 8.5);
        yield return Blank("good panels", Left, 40, y - 16);
        yield return Blank("faulty", Left + 45, 44, y - 16);
        yield return Blank("unpaired", Left + 94, 41, y - 16);
        yield return Blank("ended at, m", Left + 140, 40, y - 16);
        yield return Blank("rejected: edge", Left, 40, y - 24);
        yield return Blank("size", Left + 45, 44, y - 24);
        yield return Blank("shade", Left + 94, 41, y - 24);
        yield return Blank("other", Left + 140, 40, y - 24);
        yield return Blank("faults met, where", Left, 180, y - 32);
        yield return Blank("operator", Left, 52, y - 40);
        yield return Blank("supervisor", Left + 57, 52, y - 40);
        yield return Blank("shift", Left + 114, 24, y - 40);
        yield return Blank("date", Left + 143, 37, y - 40);
    }

    private static IEnumerable<Mark> Safety()
    {
        double y = 10 + (SafetyWords.Ticket.Count * SafetyStep);
        yield return Words("Cautions", new Point2(Left, y + 6), Ink.Label, Ink.Dark);
        yield return new PathMark([Chain.Rectangle(new Box { MinX = Left, MinY = 11, MaxX = Right, MaxY = y + 4 })], Ink.Wide);
        for (int i = 0; i < SafetyWords.Ticket.Count; i++)
        {
            yield return Words(SafetyWords.Ticket[i], new Point2(Left + 2, y - (i * SafetyStep)), Ink.Note, Ink.Dark);
        }
    }
}
