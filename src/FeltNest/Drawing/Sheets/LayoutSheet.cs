using System.Globalization;
using FeltNest.Drawing.Lettering;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Yield;

namespace FeltNest.Drawing.Sheets;

/// <summary>The sheet of a layout: the cloth over its full width with one repeat told from its copies, the main dimensions, and the
/// yield.</summary>
internal static class LayoutSheet
{
    /// <summary>Margins and room for title, dimensions left, right and below the felt, the column of figures and its distance: mm on
    /// paper.</summary>
    public const double Margin = 12;
    public const double TitleRoom = 24;
    public const double LeftRoom = 24;
    public const double RightRoom = 18;
    public const double LowRoom = 32;
    public const double FiguresWidth = 92;
    public const double FiguresGap = 8;

    // Long because it lists the parts of the sheet in the order they are drawn.
    /// <summary>Draws the sheet.</summary>
    public static Sheet Draw(RollLayout layout, YieldFigures yields)
    {
        ClothView view = ClothView.Of(layout);
        IReadOnlyList<(string, string)> figures = LayoutFigures.Lines(layout, yields, view);
        double clothHigh = view.PaperHeight;
        double clothWide = view.PaperWidth;
        double height =
            (2 * Margin) + TitleRoom + Math.Max(clothHigh + LowRoom + PartsRoom(layout), FigureTable.Height(figures) + LayoutDetail.Height);
        double width = (2 * Margin) + LeftRoom + clothWide + RightRoom + FiguresGap + FiguresWidth;
        Point2 corner = new(Margin + LeftRoom, height - Margin - TitleRoom - clothHigh);

        Point2 column = new(width - Margin - FiguresWidth, height - Margin - TitleRoom + 4);
        Symbol[] symbols = [.. view.Symbols()];
        List<Mark> marks =
        [
            new GroupMark("title", [.. Title(layout, view, width, height - Margin)]),
            .. Felt(layout, view, corner, symbols),
            new GroupMark("figures", [.. FigureTable.Draw(column, FiguresWidth, figures)]),
            new GroupMark(
                "detail", [.. new LayoutDetail(layout, view).Draw(column - new Point2(0, FigureTable.Height(figures) + 8), FiguresWidth)]),
        ];
        return Of(layout, yields, width, height, symbols, marks);
    }

    /// <summary>A sheet of a layout with its title and its words.</summary>
    public static Sheet Of(
        RollLayout layout, YieldFigures yields, double width, double height, IReadOnlyList<Symbol> symbols, IReadOnlyList<Mark> marks)
    {
        string words = string.Create(
            CultureInfo.InvariantCulture,
            $"{yields.PanelsPerMetre:0.00} panels per metre on a roll {layout.RollWidthMm:0.#} mm wide, gap {layout.GapMm:0.##} mm, "
                + $"waste {yields.WastePercent:0.00} % of the full roll width. One repeat is coloured, its copies are pale.");
        return new Sheet
        {
            Title = $"Layout of {layout.Parts[0].Name}",
            Description = words,
            WidthMm = width,
            HeightMm = height,
            Symbols = symbols,
            Marks = marks,
        };
    }

    /// <summary>The felt with its panels, dimensions and directions, its lower left corner at a place.</summary>
    public static IReadOnlyList<Mark> Felt(RollLayout layout, ClothView view, Point2 corner, IReadOnlyList<Symbol> symbols) =>
    [
        new GroupMark("cloth", [.. view.Ground(corner)]),
        new GroupMark(
            "panels", [.. view.Panels(corner, symbols)], new Box
            {
                MinX = corner.X,
                MinY = corner.Y,
                MaxX = corner.X + view.PaperWidth,
                MaxY = corner.Y + view.PaperHeight,
            }),
        new GroupMark("cloth-edge", [.. view.Edges(corner)]),
        new GroupMark("dimensions", [.. LayoutDimensions.Draw(layout, view, corner)]),
        new GroupMark("directions", [.. Directions(layout, new Point2(corner.X, corner.Y - LowRoom + 3))]),
        .. layout.Parts.Count == 1
            ? []
            : new[] { new GroupMark("parts", [.. LayoutParts.Draw(layout, view, new Point2(corner.X, corner.Y - LowRoom - 11))]) },
    ];

    /// <summary>Room that the balls of a layout of several take below it, mm.</summary>
    public static double PartsRoom(RollLayout layout) => layout.Parts.Count == 1 ? 0 : LayoutParts.Height(layout);

    /// <summary>The title below the upper edge of its room.</summary>
    public static IEnumerable<Mark> Title(RollLayout layout, ClothView view, double width, double top)
    {
        double room = width - (2 * Margin);
        string name = string.Create(
            CultureInfo.InvariantCulture,
            $"Layout: {string.Join(" and ", layout.Parts.Select(p => p.Name))} on {layout.RollWidthMm:0.##} mm");
        yield return new TextMark
        {
            Text = StrokeFont.Fitted(name, Ink.Title, room),
            At = new Point2(Margin, top - Ink.Title),
            HeightMm = Ink.Title,
            Colour = Ink.Dark,
        };
        string words = $"seen from the nap side   SCALE {view.ScaleWords}   mm   one repeat coloured, copies pale";
        yield return new TextMark
        {
            Text = StrokeFont.Fitted(words, Ink.Note, room),
            At = new Point2(Margin, top - 12),
            HeightMm = Ink.Note,
            Colour = Ink.Soft,
        };
        yield return new PathMark([Chain.Open(new Point2(Margin, top - 15), new Point2(width - Margin, top - 15))], Ink.Wide);
    }

    private static IEnumerable<Mark> Directions(RollLayout layout, Point2 at)
    {
        const double length = 22;
        const double text = 3.5;
        foreach (Mark mark in Arrows.Line(at, at + new Point2(length, 0), Ink.Wide, 3.5))
        {
            yield return mark;
        }

        yield return new TextMark
        {
            Text = "warp, feed",
            At = at + new Point2(length + text, -1.2),
            HeightMm = Ink.Note,
            Colour = Ink.Dark,
        };
        Point2 nap = at + new Point2(0, -6);
        foreach (Mark mark in Arrows.Line(nap, nap + new Point2(length, 0), Ink.Narrow, 3, both: !layout.Rules.OneWay))
        {
            yield return mark;
        }

        string words = layout.Rules.OneWay ? "nap, one way" : "nap, either way (half-turns allowed)";
        yield return new TextMark
        {
            Text = words,
            At = nap + new Point2(length + text, -1.2),
            HeightMm = Ink.Note,
            Colour = Ink.Dark,
        };
    }
}
