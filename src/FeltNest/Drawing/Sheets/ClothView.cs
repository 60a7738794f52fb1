using FeltNest.Drawing.Parts;
using FeltNest.Geometry;
using FeltNest.Layout;

namespace FeltNest.Drawing.Sheets;

/// <summary>The piece of cloth a layout sheet shows: its scale, its window along the roll, and the panels in it.</summary>
internal sealed class ClothView
{
    // Scales of ISO 5455 that may be used, as the number a real length is divided by.
    private static readonly int[] Scales = [1, 2, 5, 10, 20, 50, 100, 200, 500];

    // Greatest size of the cloth on paper, and the least and the usual length of roll that is shown when repeats are short: mm on paper.
    private const double MostHigh = 365;
    private const double MostWide = 400;
    private const double LeastWide = 80;
    private const double UsualWide = 130;

    // Most panels drawn on a sheet: more turns the picture into a grey and the file into a burden.
    private const double MostCopies = 3000;

    private readonly RollLayout layout;
    private readonly int divisor;

    private ClothView(RollLayout layout, int divisor, double windowMm)
    {
        this.layout = layout;
        this.divisor = divisor;
        WindowMm = windowMm;
        Classes = [.. layout.Bands.SelectMany(band => band.Repeat.Panels).Select(ClassOf).Distinct().Order()];
    }

    /// <summary>Length of roll shown, mm.</summary>
    public double WindowMm { get; }

    /// <summary>Pairing classes of the layout, degrees, least first: panels of unlike classes make no pair.</summary>
    public IReadOnlyList<double> Classes { get; }

    /// <summary>Paper over real.</summary>
    public double Scale => 1.0 / divisor;

    /// <summary>The scale as it is written on drawings.</summary>
    public string ScaleWords => $"1:{divisor}";

    /// <summary>Height of the cloth on paper, mm.</summary>
    public double PaperHeight => layout.RollWidthMm * Scale;

    /// <summary>Width of the window on paper, mm.</summary>
    public double PaperWidth => WindowMm * Scale;

    /// <summary>The view of a layout: the largest scale at which the whole width and at least one repeat fit the paper.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="mostHigh">Greatest height of the felt on paper, mm.</param>
    /// <param name="mostWide">Greatest length of it on paper, mm.</param>
    /// <param name="fills">Whether the roll is shown as long as the paper is, and not only some repeats of it.</param>
    public static ClothView Of(RollLayout layout, double mostHigh = MostHigh, double mostWide = MostWide, bool fills = false)
    {
        double repeat = layout.Bands.Max(band => band.Repeat.LengthMm);
        double panel = layout.Parts.Max(part => Math.Max(part.Outline.MaxX - part.Outline.MinX, part.Outline.MaxY - part.Outline.MinY));
        double least = repeat + panel;
        int divisor = Array.Find(Scales, d => layout.RollWidthMm / d <= mostHigh && least / d <= mostWide);
        divisor = divisor == 0 ? Scales[^1] : divisor;
        // Two repeats where they fit, and never so little that the picture shows no interlock.
        double usual = Math.Min(Math.Min(UsualWide, mostWide) * divisor, Math.Max((2 * repeat) + panel, LeastWide * divisor));
        double window = Math.Max(least, fills ? mostWide * divisor : usual);
        // Small parts on a wide roll: no longer a piece than shows so many of them, unless one repeat needs it.
        window = Math.Max(least, Math.Min(window, MostCopies * 1000 / layout.PanelsPerMetre));
        return new ClothView(layout, divisor, window);
    }

    /// <summary>Where a place of the roll is on paper.</summary>
    public Point2 Paper(Point2 corner, double x, double y) => corner + (new Point2(x + LeadMm, y) * Scale);

    /// <summary>The class of a placed panel as an index into <see cref="Classes"/>.</summary>
    public int ClassIndex(PlacedPanel panel)
    {
        double angle = ClassOf(panel);
        return Enumerable.Range(0, Classes.Count).First(i => Classes[i] == angle);
    }

    /// <summary>One symbol a part for copies, and one a part and class for the repeat.</summary>
    public IEnumerable<Symbol> Symbols()
    {
        for (int part = 0; part < layout.Parts.Count; part++)
        {
            Chain outline = ChainOf(layout.Parts[part]).Placed(Scale, 0, default);
            yield return new Symbol($"copy-{part}", [new PathMark([outline], Ink.Faint, Ink.Copy)]);
            for (int k = 0; k < Classes.Count; k++)
            {
                yield return new Symbol(
                    $"panel-{part}-{k}",
                    [new PathMark([outline], Ink.Narrow, Ink.Classes[k % Ink.Classes.Length]), .. Heading(layout.Parts[part])]);
            }
        }
    }

    /// <summary>The panels in the window, copies first, the repeat over them.</summary>
    public IEnumerable<Mark> Panels(Point2 corner, IReadOnlyList<Symbol> symbols)
    {
        List<Mark> copies = [];
        List<Mark> own = [];
        foreach (LayoutBand band in layout.Bands)
        {
            foreach (PlacedPanel p in band.Repeat.Panels)
            {
                double reach = Reach(layout.Parts[p.Part]);
                double first = Folded(p.XMm, band.Repeat.LengthMm);
                int from = (int)Math.Floor((-LeadMm - reach - first) / band.Repeat.LengthMm);
                int to = (int)Math.Ceiling((WindowMm - LeadMm + reach - first) / band.Repeat.LengthMm);
                for (int k = from; k <= to; k++)
                {
                    string id = k == 0 ? $"panel-{p.Part}-{ClassIndex(p)}" : $"copy-{p.Part}";
                    CopyMark mark = new(
                        symbols.First(s => s.Id == id), Paper(corner, first + (k * band.Repeat.LengthMm), p.YMm), p.AngleDeg);
                    (k == 0 ? own : copies).Add(mark);
                }
            }
        }

        return copies.Concat(own);
    }

    /// <summary>Cloth and edge trims under the panels.</summary>
    public IEnumerable<Mark> Ground(Point2 corner)
    {
        Box all = new()
        {
            MinX = corner.X,
            MinY = corner.Y,
            MaxX = corner.X + PaperWidth,
            MaxY = corner.Y + PaperHeight,
        };
        yield return new PathMark([Chain.Rectangle(all)], null, Ink.Cloth);
        double lower = layout.Trims.LowerMm * Scale;
        double upper = layout.Trims.UpperMm * Scale;
        IEnumerable<Box> lost = ((Box[])[all with { MaxY = all.MinY + lower }, all with { MinY = all.MaxY - upper }])
            .Concat(
                layout.Rules.Forbidden.Select(s =>
                    all with { MinY = all.MinY + (s.YFromMm * Scale), MaxY = all.MinY + (s.YToMm * Scale) }));
        foreach (Box box in lost.Where(box => box.Height > 0))
        {
            yield return new PathMark([Chain.Rectangle(box)], null, Ink.Trim);
            yield return new PathMark([.. Hatch(box)], new Pen(0.13, Ink.TrimHatch));
            foreach (double side in new[] { box.MinY, box.MaxY }.Where(y => y > all.MinY && y < all.MaxY))
            {
                yield return new PathMark([Chain.Open(new Point2(box.MinX, side), new Point2(box.MaxX, side))], Ink.Faint);
            }
        }
    }

    /// <summary>Selvedges, and broken ends where the roll goes on.</summary>
    public IEnumerable<Mark> Edges(Point2 corner)
    {
        double right = corner.X + PaperWidth;
        double top = corner.Y + PaperHeight;
        yield return new PathMark(
            [Chain.Open(corner, new Point2(right, corner.Y)), Chain.Open(new Point2(corner.X, top), new Point2(right, top))], Ink.Wide);
        yield return new PathMark(
            [Chain.Open(corner, new Point2(corner.X, top)), Chain.Open(new Point2(right, corner.Y), new Point2(right, top))], Ink.Centre);
    }

    /// <summary>Where a panel of the repeat is drawn along the roll: folded into one repeat that begins at 0.</summary>
    public static double Folded(double x, double length) => x - (Math.Floor((x / length) + 1e-9) * length);

    // Cloth shown before x = 0, mm: the coloured repeat stands in the middle of the window.
    private double LeadMm => (WindowMm - layout.Bands.Max(band => band.Repeat.LengthMm)) / 2;

    private double ClassOf(PlacedPanel panel)
    {
        double period = layout.Rules.OneWay ? 360 : 180;
        // Angles nearer than this, degrees, are one class: far above rounding, far below any cut.
        const double same = 1e-6;
        double angle = ((panel.AngleDeg % period) + period) % period;
        angle = Math.Round(angle / same) * same;
        return angle >= period - same ? 0 : angle;
    }

    /// <summary>The true curve of a part, or its polygon where that is the part.</summary>
    public static Chain ChainOf(LayoutPart part) =>
        part.Arcs is { } arcs ? new Chain(arcs.Vertices, true) : Chain.Ring(part.Outline.Points);

    /// <summary>How far a part reaches from its origin, mm.</summary>
    public static double Reach(LayoutPart part) => part.Outline.Points.Max(p => p.Length);

    // A small mark at the +u end of a part, so that half-turns can be seen.
    private IEnumerable<Mark> Heading(LayoutPart part)
    {
        double end = part.Outline.MaxX * Scale;
        double size = Math.Min(2.2, 0.16 * end);
        yield return Arrows.Head(default, new Point2(end - size, 0), size, Ink.Dark);
    }

    private static IEnumerable<Chain> Hatch(Box box)
    {
        const double step = 1.8;
        for (double x = box.MinX - box.Height; x < box.MaxX; x += step)
        {
            // A line at 45 degrees, cut to the box.
            double from = Math.Max(0, box.MinX - x);
            double to = Math.Min(box.Height, box.MaxX - x);
            if (to > from)
            {
                yield return Chain.Open(new Point2(x + from, box.MinY + from), new Point2(x + to, box.MinY + to));
            }
        }
    }
}
