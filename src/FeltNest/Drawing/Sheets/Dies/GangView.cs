using FeltNest.Die;
using FeltNest.Die.Gang;
using FeltNest.Drawing.Frames;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;

namespace FeltNest.Drawing.Sheets.Dies;

/// <summary>How a gang lies on its sheet: paper, scale, whether the board stands, and where its corner is.</summary>
internal sealed record GangView
{
    // Room left of the board for its width, and below it for its length, arrows, words and the check bar, mm of paper.
    private const double RoomLeft = 18;
    private const double RoomBelow = 54;

    // Least scales looked for, the paper as small as each allows.
    private static readonly double[] LeastScales = [0.5, 0.2, 0.1, 0.05, 0.02];

    private readonly DieDesign design;
    private readonly DieGang gang;
    private readonly bool mirrored;

    /// <summary>The view of a design.</summary>
    public GangView(DieDesign design)
    {
        this.design = design;
        gang = design.Gang;
        mirrored = design.Request.Order.DieView;
        (Size, Scale, Turned) = Chosen();
        (double along, double across) = (gang.BoardLengthMm, gang.BoardWidthMm);
        (RealWideMm, RealHighMm) = Turned ? (across, along) : (along, across);
        Corner = CornerOf(GangDimensions.OverhangMm(gang) * Scale.Factor);
    }

    /// <summary>The paper.</summary>
    public PaperSize Size { get; }

    /// <summary>The scale.</summary>
    public DrawingScale Scale { get; }

    /// <summary>Whether the roll runs up the sheet.</summary>
    public bool Turned { get; }

    /// <summary>Width of the board as it lies on the sheet, mm.</summary>
    public double RealWideMm { get; }

    /// <summary>Height of the board as it lies on the sheet, mm.</summary>
    public double RealHighMm { get; }

    /// <summary>The board's lower left corner on the sheet.</summary>
    public Point2 Corner { get; }

    /// <summary>Left end of the drawing.</summary>
    public double Left => Size.Space.MinX + DieParts.Rim;

    /// <summary>Right end of the drawing, left of the column of figures.</summary>
    public double Right => DieParts.ColumnTop(Size).X - DieParts.Rim;

    /// <summary>The board on the sheet.</summary>
    public Box Board => new()
    {
        MinX = Corner.X,
        MinY = Corner.Y,
        MaxX = Corner.X + (RealWideMm * Scale.Factor),
        MaxY = Corner.Y + (RealHighMm * Scale.Factor),
    };

    /// <summary>From the die's frame to the sheet.</summary>
    public Point2 Paper(Point2 die)
    {
        Point2 seen = mirrored ? new Point2(gang.BoardLengthMm - die.X, die.Y) : die;
        Point2 lying = Turned ? new Point2(gang.BoardWidthMm - seen.Y, seen.X) : seen;
        return Corner + (lying * Scale.Factor);
    }

    // The board stands in the middle of what dimensions, feed and notes leave.
    private Point2 CornerOf(double over)
    {
        double below = Below(Size);
        double overLeft = mirrored && !Turned ? over : 0;
        double overRight = Turned ? 0 : over - overLeft;
        double overUp = Turned ? over : 0;
        double wide = RealWideMm * Scale.Factor;
        double high = RealHighMm * Scale.Factor;
        return new Point2(
            Left + RoomLeft + overLeft + ((Right - Left - RoomLeft - GangDimensions.RoomAside - overLeft - overRight - wide) / 2),
            Size.Space.MinY + below + ((Size.Space.Height - below - GangDimensions.RoomAbove - overUp - high) / 2));
    }

    private double Below(PaperSize size) => design.DoNotRun is { } words
        ? RoomBelow + DieParts.Warning(default, DieParts.ColumnTop(size).X - size.Space.MinX - (2 * DieParts.Rim), words, Ink.Title).Height
            + 4
        : RoomBelow;

    private (PaperSize Size, DrawingScale Scale, bool Turned) Chosen()
    {
        double tables = FigureTable.Height(GangFigures.Lines(design)) + GangCoordinates.Height(gang) + 90;
        foreach (double least in LeastScales)
        {
            foreach (PaperSize size in PaperSize.All.Where(s => s.Name != "A4"))
            {
                (DrawingScale scale, bool turned) = Largest(size);
                bool tableFits = tables < size.Space.Height - TitleBlock.Height - TitleBlock.Strip || size.Name is "A0" or "A1";
                bool tooLarge = least > 0.2 && size.Name is "A0";
                if (scale.Factor >= least && tableFits && !tooLarge)
                {
                    return (size, scale, turned);
                }
            }
        }

        return (PaperSize.Of("A0"), DrawingScale.All[^1], false);
    }

    // The larger of the scales at which the board lies and stands.
    private (DrawingScale Scale, bool Turned) Largest(PaperSize size)
    {
        double room = DieParts.ColumnTop(size).X - size.Space.MinX - (2 * DieParts.Rim) - RoomLeft - GangDimensions.RoomAside;
        double high = size.Space.Height - Below(size) - GangDimensions.RoomAbove;
        double along = gang.BoardLengthMm + GangDimensions.OverhangMm(gang);
        DrawingScale flat = DrawingScale.Fitting(along, gang.BoardWidthMm, room, high, 1);
        DrawingScale turned = DrawingScale.Fitting(gang.BoardWidthMm, along, room, high, 1);
        return turned.Factor > flat.Factor ? (turned, true) : (flat, false);
    }
}
