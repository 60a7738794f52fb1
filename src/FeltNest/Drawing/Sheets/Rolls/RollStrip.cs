using System.Globalization;
using FeltNest.Drawing.Lettering;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;
using FeltNest.Rolls;
using FeltNest.Rolls.Plan;
using FeltNest.Rolls.Plan.Chain;

namespace FeltNest.Drawing.Sheets.Rolls;

/// <summary>One line of a roll map: the cloth between two places of the roll, with strikes, faults and joints.</summary>
internal sealed class RollStrip
{
    /// <summary>Room above the cloth for strike numbers and below it for the metres, mm.</summary>
    public const double Above = 6;
    public const double Below = 8;

    // Marks of faults are never smaller than this, mm: a hole of a few millimetres must be found on the sheet.
    private const double LeastMark = 1.4;

    // Half a match mark at a fold, mm.
    private const double Fold = 2.2;

    private static readonly Colour FaultColour = Colour.Of(0xB3261E);

    private static readonly Pen FaultPen = new(0.35, FaultColour);

    private readonly RollPlan plan;
    private readonly double scale;
    private readonly double from;
    private readonly double to;
    private readonly Point2 corner;
    private readonly Box cloth;

    /// <summary>The line from one place to another, its cloth's lower left corner at a point of the paper.</summary>
    public RollStrip(RollPlan plan, double scale, double from, double to, Point2 corner)
    {
        (this.plan, this.scale, this.from, this.to, this.corner) = (plan, scale, from, to, corner);
        cloth = new Box
        {
            MinX = corner.X,
            MinY = corner.Y,
            MaxX = corner.X + ((to - from) * scale),
            MaxY = corner.Y + (plan.Request.Roll.MostWidthMm * scale),
        };
    }

    /// <summary>Where the line begins on the roll, mm.</summary>
    public double FromMm => from;

    /// <summary>Where it ends, mm.</summary>
    public double ToMm => to;

    /// <summary>The marks of the line.</summary>
    /// <param name="good">Symbols of good panels by part.</param>
    /// <param name="lost">Symbols of lost panels by part.</param>
    public IEnumerable<Mark> Draw(IReadOnlyList<Symbol> good, IReadOnlyList<Symbol> lost)
    {
        string name = string.Create(CultureInfo.InvariantCulture, $"from-{from:0}");
        yield return new GroupMark($"cloth-{name}", [.. Ground()]);
        yield return new GroupMark($"strikes-{name}", [.. Panels(good, lost)], cloth);
        yield return new GroupMark($"marks-{name}", [.. Narrow(), .. Numbers(), .. Joints(), .. Faults(), .. Metres(), .. Folds()]);
    }

    private double Paper(double x) => corner.X + ((x - from) * scale);

    // Cloth with its own upper selvedge, and what was cut before in a paler tone.
    private IEnumerable<Mark> Ground()
    {
        FeltRoll roll = plan.Request.Roll;
        double[] places = [from, .. roll.Widths.Select(w => w.XMm).Where(x => x > from && x < to), to];
        Point2[] upper = [.. places.Select(x => new Point2(Paper(x), corner.Y + (roll.WidthAt(x) * scale)))];
        Point2 right = new(cloth.MaxX, cloth.MinY);
        yield return new PathMark([Chain.Ring([corner, right, .. upper.Reverse()])], null, Ink.Cloth);
        if (plan.Request.FromMm > from)
        {
            double cut = Math.Min(to, plan.Request.FromMm);
            yield return new PathMark([Chain.Rectangle(cloth with { MaxX = Paper(cut) })], null, Ink.Trim);
        }

        double lower = plan.Request.Layout.Trims.LowerMm * scale;
        double top = plan.Request.Layout.Trims.UpperMm * scale;
        yield return new PathMark(
            [
                Chain.Open(corner + new Point2(0, lower), right + new Point2(0, lower)),
                Chain.Open([.. upper.Select(p => p - new Point2(0, top))]),
            ], Ink.Faint);
        yield return new PathMark(
            [.. plan.Request.Layout.Rules.Forbidden.SelectMany(f => new[] { f.YFromMm, f.YToMm }).Select(y => Chain.Open(
                corner + new Point2(0, y * scale), right + new Point2(0, y * scale)))], new Pen(0.25, Ink.Dark, 2, 1));
        yield return new PathMark([Chain.Open(corner, right), Chain.Open(upper)], Ink.Wide);
        yield return new PathMark([Chain.Open(corner, upper[0])], from <= 0 ? Ink.Wide : Ink.Centre);
        yield return new PathMark([Chain.Open(right, upper[^1])], to >= roll.LengthMm ? Ink.Wide : Ink.Centre);
    }

    // Where the roll is too narrow its selvedge is thick.
    private IEnumerable<Mark> Narrow()
    {
        FeltRoll roll = plan.Request.Roll;
        foreach ((double first, double last) in RollRoom.Narrow(plan).Where(part => part.FromMm < to && part.ToMm > from))
        {
            double begin = Math.Max(from, first);
            double end = Math.Min(to, last);
            double[] places = [begin, .. roll.Widths.Select(w => w.XMm).Where(x => x > begin && x < end), end];
            yield return new PathMark(
                [Chain.Open([.. places.Select(x => new Point2(Paper(x), corner.Y + (roll.WidthAt(x) * scale)))])],
                new Pen(1.4, FaultColour));
        }
    }

    private IEnumerable<Mark> Panels(IReadOnlyList<Symbol> good, IReadOnlyList<Symbol> lost)
    {
        foreach (PlannedStrike strike in plan.Strikes.Where(s => s.XMm < to && s.XMm + plan.Pattern.LengthMm > from))
        {
            HashSet<int> gone = [.. strike.Lost.Select(l => l.Panel)];
            for (int i = 0; i < plan.Pattern.Panels.Count; i++)
            {
                StrikePanel panel = plan.Pattern.Panels[i];
                if (strike.XMm + panel.MinX < to && strike.XMm + panel.MaxX > from)
                {
                    Point2 at = new(Paper(strike.XMm + panel.Placed.XMm), corner.Y + ((panel.Placed.YMm + strike.ShiftYMm) * scale));
                    yield return new CopyMark((gone.Contains(i) ? lost : good)[panel.Placed.Part], at, panel.Placed.AngleDeg);
                }
            }
        }
    }

    // The number of every strike that has room for it, and of the first of every run.
    private IEnumerable<Mark> Numbers()
    {
        HashSet<int> firsts = [.. StrikeRun.Of(plan).Select(run => run.First - 1)];
        double free = double.NegativeInfinity;
        for (int i = 0; i < plan.Strikes.Count; i++)
        {
            double x = plan.Strikes[i].XMm;
            if (x < from || x >= to)
            {
                continue;
            }

            double at = Paper(x);
            double y = cloth.MaxY;
            bool first = firsts.Contains(i);
            yield return new PathMark(
                [Chain.Open(new Point2(at, y), new Point2(at, y + (first ? 2.2 : 1)))], first ? Ink.Wide : Ink.Narrow);
            string number = (i + 1).ToString(CultureInfo.InvariantCulture);
            double width = StrokeFont.Width(number, Ink.Note);
            int next = Enumerable.Range(i + 1, 5).FirstOrDefault(firsts.Contains, -1);
            bool clear = next < 0 || next >= plan.Strikes.Count || Paper(plan.Strikes[next].XMm) > at + width + 1.5;
            if (at > free && at + width < cloth.MaxX + 4 && (first || (clear && (i + 1) % 5 == 0)))
            {
                yield return new TextMark { Text = number, At = new Point2(at, y + 2.8), HeightMm = Ink.Note, Colour = Ink.Dark };
                free = at + width + 1.5;
            }
        }
    }

    private IEnumerable<Mark> Joints()
    {
        foreach (RollSplice splice in plan.Request.Roll.Splices.Where(s => s.ClearMm > 0 && s.FromMm < to && s.ToMm > from))
        {
            Box clear = cloth with { MinX = Paper(Math.Max(from, splice.FromMm)), MaxX = Paper(Math.Min(to, splice.ToMm)) };
            yield return new PathMark([Chain.Rectangle(clear)], FaultPen);
        }

        foreach (RollSplice splice in plan.Request.Roll.Splices.Where(s => s.XMm >= from && s.XMm < to))
        {
            double x = Paper(splice.XMm);
            yield return new PathMark(
                [Chain.Open(new Point2(x, cloth.MinY - 1.5), new Point2(x, cloth.MaxY))], new Pen(0.7, FaultColour, 3, 1.2));
            yield return new TextMark
            {
                Text = "splice",
                At = new Point2(x + 1, cloth.MinY - 4),
                HeightMm = Ink.Note,
                Colour = FaultColour,
            };
        }
    }

    private IEnumerable<Mark> Faults()
    {
        foreach (RollFault fault in plan.Request.Roll.Faults.Where(f => f.XMm < to && f.XMm + f.LengthMm >= from))
        {
            double left = Math.Max(from, fault.XMm);
            double right = Math.Min(to, fault.XMm + fault.LengthMm);
            Point2 middle = new(Paper((left + right) / 2), corner.Y + (fault.MiddleY * scale));
            double wide = Math.Max(0.4, (right - left) * scale) / 2;
            double high = Math.Max(0.4, fault.WidthMm * scale) / 2;
            if (Math.Max(wide, high) < LeastMark)
            {
                yield return new PathMark([Chain.Circle(middle, LeastMark)], FaultPen, Ink.Cloth);
            }

            // White inside, so that it is seen on a lost panel, which is black.
            yield return fault.RadiusMm is not null
                ? new PathMark([Chain.Circle(middle, Math.Max(wide, high))], FaultPen, Ink.Cloth)
                : new PathMark(
                    [Chain.Rectangle(new Box
                    {
                        MinX = middle.X - wide,
                        MinY = middle.Y - high,
                        MaxX = middle.X + wide,
                        MaxY = middle.Y + high,
                    })], FaultPen, Ink.Cloth);
        }
    }

    private IEnumerable<Mark> Metres()
    {
        // A label a metre where it has room, else every second, fifth, tenth ...
        double step = new[] { 0.1, 0.2, 0.5, 1, 2, 5, 10 }.First(metres => metres * 1000 * scale >= 12 || metres == 10) * 1000;
        for (int k = (int)Math.Ceiling((from / step) - 1e-9); k * step < to + 1e-6; k++)
        {
            double x = k * step;
            double at = Paper(x);
            yield return new PathMark([Chain.Open(new Point2(at, cloth.MinY), new Point2(at, cloth.MinY - 1.5))], Ink.Narrow);
            if (plan.Request.Roll.Splices.All(s => Math.Abs(Paper(s.XMm) - at + 4) > 10))
            {
                yield return new TextMark
                {
                    Text = (x / 1000).ToString("0.#", CultureInfo.InvariantCulture) + " m",
                    At = new Point2(at, cloth.MinY - 5),
                    HeightMm = Ink.Note,
                    Colour = Ink.Soft,
                    Anchor = TextAnchor.Middle,
                };
            }
        }
    }

    // Match marks where the roll is folded: half a diamond at each side of the fold, a whole one when the two ends are laid
    // together; open, as a lost panel is black.
    private IEnumerable<Mark> Folds()
    {
        foreach ((double place, double inward, bool folded) in
            ((double, double, bool)[])[(from, 1, from > 0), (to, -1, to < plan.Request.Roll.LengthMm)])
        {
            if (folded)
            {
                Point2 at = new(Paper(place), (cloth.MinY + cloth.MaxY) / 2);
                yield return new PathMark(
                    [Chain.Ring([at + new Point2(0, Fold), at - new Point2(0, Fold), at + new Point2(inward * Fold, 0)])], Ink.Wide,
                    Ink.Cloth);
            }
        }
    }
}
