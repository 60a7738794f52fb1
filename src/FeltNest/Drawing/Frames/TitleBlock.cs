using System.Globalization;
using FeltNest.Die.Order;
using FeltNest.Drawing.Lettering;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;

namespace FeltNest.Drawing.Frames;

/// <summary>Title block of ISO 7200:2004 with the strip for scale, projection and tolerances above it.</summary>
internal static class TitleBlock
{
    /// <summary>Width, height of the block and of the strip above it, mm.</summary>
    public const double Width = 180;
    public const double Height = 40;
    public const double Strip = 10;

    private const double Row = 10;

    /// <summary>Draws block and strip with the lower right corner at a place.</summary>
    public static IEnumerable<Mark> Draw(Point2 corner, DieOrder order, SheetPlace place)
    {
        double x = corner.X - Width;
        double y = corner.Y;
        Box strip = new() { MinX = x, MinY = y + Height, MaxX = x + Width, MaxY = y + Height + Strip };
        return
        [
            .. Rows(order.Title, place).SelectMany((cells, r) => RowCells(cells, x, y + (r * Row), y + ((r + 1) * Row))),
            .. StripCells(strip, order, place),
            new PathMark([Chain.Rectangle(new Box { MinX = x, MinY = y, MaxX = x + Width, MaxY = y + Height })], Ink.Wide),
        ];
    }

    // Label, value, width and height of lettering of the cells of each row, lowest row first.
    private static (string Label, string? Value, double Wide, double High)[][] Rows(DieTitle title, SheetPlace place) =>
    [
        [
            ("department", title.Department, 32, Ink.Note), ("technical reference", title.TechnicalReference, 50, Ink.Note),
            ("status", title.Status, 50, Ink.Note), ("language", title.Language, 24, Ink.Note), ("rev.", title.Revision, 24, Ink.Label),
        ],
        [("title", title.Title, 90, Ink.Label), ("supplementary title", title.SupplementaryTitle ?? place.Part, 90, Ink.Label)],
        [
            ("creator", title.Creator, 50, Ink.Note), ("approval person", title.ApprovalPerson, 50, Ink.Note),
            ("date of issue", title.DateOfIssue, 32, Ink.Note), ("sheet", Whole(place.Number), 20, Ink.Note),
            ("sheets", Whole(place.Count), 28, Ink.Note),
        ],
        [
            ("legal owner", title.LegalOwner, 58, Ink.Note), ("document type", title.DocumentType, 72, Ink.Note),
            ("identification number", title.IdentificationNumber, 50, Ink.Note),
        ],
    ];

    private static List<Mark> RowCells(
        (string Label, string? Value, double Wide, double High)[] cells, double x, double low, double top)
    {
        List<Mark> marks = [];
        foreach ((string label, string? value, double wide, double high) in cells)
        {
            marks.AddRange(Cell(new Box { MinX = x, MinY = low, MaxX = x + wide, MaxY = top }, label, value ?? string.Empty, high));
            x += wide;
        }

        return marks;
    }

    // Scale, tolerances and projection, above the block.
    private static IEnumerable<Mark> StripCells(Box strip, DieOrder order, SheetPlace place)
    {
        double x = strip.MinX;
        Box Part(double from, double to) => new() { MinX = x + from, MinY = strip.MinY, MaxX = x + to, MaxY = strip.MaxY };
        return
        [
            new PathMark([Chain.Rectangle(strip)], Ink.Wide),
            .. Cell(Part(0, 36), "scale", $"SCALE {place.Scale}", Ink.Label),
            .. Cell(
                Part(36, 120), "general tolerances of board and plate", $"ISO 2768-{order.Tolerances.General}; lengths in mm", Ink.Note),
            .. Cell(Part(120, Width), "projection", order.ThirdAngle ? "third angle" : "first angle", Ink.Note),
            .. Cone(new Point2(x + 154, strip.MinY + 4.5), order.ThirdAngle),
        ];
    }

    private static IEnumerable<Mark> Cell(Box box, string label, string value, double high)
    {
        yield return new PathMark([Chain.Rectangle(box)], Ink.Narrow);
        yield return new TextMark
        {
            Text = label,
            At = new Point2(box.MinX + 1.5, box.MaxY - 1.2 - Ink.Note),
            HeightMm = Ink.Note,
            Colour = Ink.Soft,
        };
        if (value.Length > 0)
        {
            yield return new TextMark
            {
                Text = StrokeFont.Fitted(value, high, box.Width - 3),
                At = new Point2(box.MinX + 1.5, box.MinY + 1.4),
                HeightMm = high,
                Colour = Ink.Dark,
            };
        }
    }

    // A cone's side view and its end view: in first angle the side view stands left of the circles, in third angle right, its small end
    // turned to the left in both.
    private static IEnumerable<Mark> Cone(Point2 at, bool third)
    {
        const double small = 1.2;
        const double large = 2.4;
        const double length = 6;
        const double apart = 10;
        double side = third ? apart - 2 : 0;
        double circles = third ? 0 : apart + 2;
        yield return new PathMark(
            [
                Chain.Ring([
                    at + new Point2(side, small), at + new Point2(side, -small), at + new Point2(side + length, -large),
                    at + new Point2(side + length, large),
                ]), Chain.Circle(
                    at + new Point2(circles + 2, 0), small), Chain.Circle(at + new Point2(circles + 2, 0), large),
            ],
            Ink.Narrow);
    }

    private static string Whole(int value) => value.ToString(CultureInfo.InvariantCulture);
}
