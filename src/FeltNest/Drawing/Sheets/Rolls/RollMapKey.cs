using System.Globalization;
using FeltNest.Die;
using FeltNest.Drawing.Lettering;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Rolls.Plan;

namespace FeltNest.Drawing.Sheets.Rolls;

/// <summary>What the signs of a roll map mean, its counts, and the cautions.</summary>
internal static class RollMapKey
{
    /// <summary>The key with the first line of signs at a place.</summary>
    public static IEnumerable<Mark> Draw(RollPlan plan, Point2 at)
    {
        string counts = string.Create(
            CultureInfo.InvariantCulture,
            $"lost: {plan.LostPanels(LossCause.Fault)} at faults, {plan.LostPanels(LossCause.Joint)} at splices, "
                + $"{plan.LostPanels(LossCause.Width)} outside the usable width, {plan.LostPanels(LossCause.RollEnd)} past the end");
        string numbers = $"numbers: every fifth strike, and the first of each run one feed apart (longer tick)"
            + $"{(plan.Request.FromMm > 0 ? "; tinted: cut before" : string.Empty)}";
        return
        [
            .. Signs(plan, at),
            Note(counts, at - new Point2(0, 6), Ink.Dark),
            Note(numbers, at - new Point2(0, 11), Ink.Soft),
            .. SafetyWords.Brief.Select((words, i) => Note(words, new Point2(at.X, at.Y - 17 - (i * 4.2)), Ink.Dark)),
        ];
    }

    // What the signs of the map mean, in one line.
    private static List<Mark> Signs(RollPlan plan, Point2 at)
    {
        Colour fault = Colour.Of(0xB3261E);
        List<Mark> marks = [];
        double x = at.X;
        IReadOnlyList<LayoutPart> parts = plan.Request.Layout.Parts;
        for (int i = 0; i < parts.Count; i++)
        {
            string ball = parts[i].Ball ?? parts[i].Name;
            string name = parts.Count == 1 ? "good panel" : $"{PartMarks.NameOf(i)}: good panel of {ball}";
            Swatch(PartMarks.ToneOf(i));
            Name(StrokeFont.Fitted(name, Ink.Note, 100), 7);
        }

        Swatch(PartMarks.Lost);
        Name("lost panel", 7);
        Point2 ring = new(x + 1.5, at.Y + 1.5);
        marks.Add(new PathMark([Chain.Circle(ring, 1.4)], new Pen(0.35, fault), Ink.Cloth));
        marks.Add(new PathMark([Chain.Circle(ring, 0.4)], new Pen(0.35, fault), Ink.Cloth));
        Name("fault (ring: smaller than drawn)", 5);
        marks.Add(new PathMark([Chain.Open(new Point2(x, at.Y - 0.5), new Point2(x, at.Y + 3.5))], new Pen(0.7, fault, 1.5, 0.6)));
        Name("roll splice (box: stay clear)", 3);
        if (plan.Request.Layout.Rules.Forbidden.Count > 0)
        {
            marks.Add(new PathMark([Chain.Open(new Point2(x, at.Y + 1.5), new Point2(x + 6, at.Y + 1.5))], new Pen(0.25, Ink.Dark, 2, 1)));
            Name("stripe kept clear", 8);
        }

        return marks;

        void Swatch(Colour tone) => marks.Add(new PathMark(
            [Chain.Rectangle(new Box { MinX = x, MinY = at.Y, MaxX = x + 5, MaxY = at.Y + 3 })], Ink.Narrow, tone));

        void Name(string words, double from)
        {
            marks.Add(Note(words, new Point2(x + from, at.Y + 0.2), Ink.Dark));
            x += from + StrokeFont.Width(words, Ink.Note) + 8;
        }
    }

    private static TextMark Note(string words, Point2 at, Colour colour) => new()
    {
        Text = words,
        At = at,
        HeightMm = Ink.Note,
        Colour = colour,
    };
}
