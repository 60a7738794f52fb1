using FeltNest.Die;
using FeltNest.Die.Order;
using FeltNest.Drawing.Frames;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;

namespace FeltNest.Drawing.Sheets.Dies;

/// <summary>The whole gang: board, cavities with numbers and coordinates, how it is struck, force and safety.</summary>
internal static class GangSheet
{
    // A warning stands above arrows and words, mm of paper.
    private const double WarningFrom = 46;

    /// <summary>Draws the sheet as number <paramref name="number"/> of <paramref name="count"/>.</summary>
    public static Sheet Draw(DieDesign design, int number, int count)
    {
        DieOrder order = design.Request.Order;
        GangView view = new(design);
        PaperSize size = view.Size;
        SheetPlace place = new() { Number = number, Count = count, Scale = view.Scale.Words, Part = "Gang die" };
        List<Mark> marks =
        [
            .. DieParts.Base(size, order, place),
            .. Column(design, size),
            .. new GangBoard(design, view).Draw(),
            .. Arrows(order, view),
            .. Words(design, view),
            .. DieParts.Bar(new Point2(view.Left + 2, size.Space.MinY + 9)),
        ];
        return new Sheet
        {
            Title = $"{order.Name}: gang die",
            Description =
                $"Gang of {design.Gang.Cavities.Count} cavities at {view.Scale.Words} with coordinates, strikes, force and safety.",
            WidthMm = size.WidthMm,
            HeightMm = size.HeightMm,
            Symbols = [],
            Marks = marks,
        };
    }

    // The column at the right: safety at its foot, figures at its head, coordinates between.
    private static IEnumerable<Mark> Column(DieDesign design, PaperSize size)
    {
        Point2 top = DieParts.ColumnTop(size);
        double foot = DieParts.TitleTop(size);
        (IEnumerable<Mark> safety, double safetyHigh) = DieParts.Safety(new Point2(top.X, foot), DieParts.Column);
        List<(string, string)> figures = GangFigures.Lines(design);
        double tableTop = top.Y - FigureTable.Height(figures) - 5;
        return
        [
            .. safety,
            .. FigureTable.Draw(top, DieParts.Column - 2, figures),
            .. GangCoordinates.Draw(design, new Point2(top.X, tableTop), tableTop - foot - safetyHigh - 4),
        ];
    }

    private static IEnumerable<Mark> Arrows(DieOrder order, GangView view)
    {
        Point2 feed = view.Paper(new(1, 0)) - view.Paper(default);
        return new GangArrows
        {
            At = new Point2(view.Left + 4, view.Size.Space.MinY + 31),
            Feed = feed * (1 / feed.Length),
        }.Draw(order);
    }

    private static IEnumerable<Mark> Words(DieDesign design, GangView view)
    {
        DieOrder order = design.Request.Order;
        double bottom = view.Size.Space.MinY;
        yield return new TextMark
        {
            Text = DieParts.View(order) + "; cross: centre of the load; square: origin of x and y",
            At = new Point2(view.Left, bottom + 16.5),
            HeightMm = Ink.Note,
            Colour = Ink.Dark,
        };
        if (order.Force.Basis == ForceBasis.Placeholder)
        {
            yield return new TextMark
            {
                Text = "FORCE NOT MEASURED: do not set the press from it",
                At = new Point2(view.Left, bottom + 21),
                HeightMm = Ink.Label,
                Colour = Ink.Dark,
            };
        }

        if (design.DoNotRun is { } words)
        {
            (IEnumerable<Mark> warning, _) =
                DieParts.Warning(new Point2(view.Left, bottom + WarningFrom), view.Right - view.Left, words, Ink.Title);
            foreach (Mark mark in warning)
            {
                yield return mark;
            }
        }
    }
}
