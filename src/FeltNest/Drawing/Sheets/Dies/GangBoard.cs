using System.Globalization;
using FeltNest.Die;
using FeltNest.Die.Gang;
using FeltNest.Die.Order;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;

namespace FeltNest.Drawing.Sheets.Dies;

/// <summary>The board of a gang with cavities, centre of the load, dimensions and the origin of its coordinates.</summary>
/// <param name="Design">The die.</param>
/// <param name="View">How it lies on the sheet.</param>
internal sealed record GangBoard(DieDesign Design, GangView View)
{
    /// <summary>All its marks.</summary>
    public IEnumerable<Mark> Draw() =>
    [
        new PathMark([Chain.Rectangle(View.Board)], Ink.Wide),
        .. Design.Gang.Cavities.SelectMany(Cavity),
        LoadCentre(),
        .. BoardDimensions(),
        .. GangDimensions.Draw(Design, View.Paper, View.Board),
        Origin(),
    ];

    private IEnumerable<Mark> Cavity(DieCavity cavity)
    {
        double angle = double.DegreesToRadians(cavity.Placed.AngleDeg);
        Point2 at = new(cavity.Placed.XMm, cavity.Placed.YMm);
        Point2 Place(Point2 own) => View.Paper(own.Turned(angle) + at);
        yield return new PathMark([DieParts.Seen(Design.Edges[cavity.Placed.Part]!, Design.Request.Order, Place)], Ink.Wide);
        Point2 joint = Place(Design.Places[cavity.Placed.Part]!.Joint);
        yield return new PathMark([Chain.Circle(joint, 0.8)], Ink.Narrow);

        // A tick at the panel's own origin shows where its coordinates are taken; the number stands beside it.
        Point2 origin = Place(default);
        yield return Cross(origin, 1, Ink.Narrow);
        yield return new TextMark
        {
            Text = GangCoordinates.Name(Design, cavity),
            At = origin + new Point2(1.5, -Ink.Note / 2),
            HeightMm = Ink.Note,
            Colour = Ink.Dark,
        };
    }

    private PathMark LoadCentre() => Cross(View.Paper(Design.Gang.LoadCentre), 4, new Pen(0.5, Ink.Classes[1]));

    private static PathMark Cross(Point2 at, double arm, Pen pen) => new(
        [
            Chain.Open(at - new Point2(arm, 0), at + new Point2(arm, 0)),
            Chain.Open(at - new Point2(0, arm), at + new Point2(0, arm)),
        ],
        pen);

    private PathMark Origin()
    {
        Point2 at = View.Paper(new(Design.Request.Order.DieView ? Design.Gang.BoardLengthMm : 0, 0));
        return new PathMark(
            [Chain.Rectangle(new Box { MinX = at.X - 1.5, MinY = at.Y - 1.5, MaxX = at.X + 1.5, MaxY = at.Y + 1.5 })], Ink.Narrow,
            Ink.Dark);
    }

    private IEnumerable<Mark> BoardDimensions()
    {
        (Point2 corner, Box board) = (View.Corner, View.Board);
        return
        [
            .. Dimension.Level(corner, new Point2(board.MaxX, corner.Y), corner.Y - 10, Words(View.RealWideMm)),
            .. Dimension.Upright(corner, new Point2(corner.X, board.MaxY), corner.X - 10, Words(View.RealHighMm)),
        ];
    }

    private string Words(double real) => GeneralTolerances.Linear(Design.Request.Order.Tolerances.General, real) is { } tolerance
        ? $"{real:0} \u00B1{tolerance.ToString("0.##", CultureInfo.InvariantCulture)}"
        : $"{real:0}";
}
