using FeltNest.Drawing.Frames;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Yield;

namespace FeltNest.Drawing.Sheets;

/// <summary>A layout on paper of a given size: the felt whole and to scale on the first page, the figures beside it where they have room,
/// else on a page of their own.</summary>
internal static class LayoutPrint
{
    // Room of the bar below the felt, and from the figures to the detail below them or beside them, mm.
    private const double BarRoom = 8;
    private const double DetailGap = 8;

    // Length of the bar on paper, mm.
    private const double BarMm = 100;

    /// <summary>The pages.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="yields">Its account of the felt.</param>
    /// <param name="paper">Size of the paper: <c>A3</c>, <c>A4</c>.</param>
    public static IReadOnlyList<Sheet> Draw(RollLayout layout, YieldFigures yields, string paper)
    {
        PaperSize size = PaperSize.Of(paper);
        double top = size.HeightMm - LayoutSheet.Margin - LayoutSheet.TitleRoom;
        double below = LayoutSheet.LowRoom + LayoutSheet.PartsRoom(layout) + BarRoom;
        double wide = size.WidthMm - (2 * LayoutSheet.Margin) - LayoutSheet.LeftRoom - LayoutSheet.RightRoom;
        double column = LayoutSheet.FiguresGap + LayoutSheet.FiguresWidth;
        double high = top - LayoutSheet.Margin - below;
        ClothView whole = ClothView.Of(layout, high, wide, fills: true);
        ClothView narrow = ClothView.Of(layout, high, wide - column, fills: true);

        // Figures stand beside the felt where that costs none of its scale.
        bool beside = narrow.Scale.Equals(whole.Scale) && Fits(layout, yields, narrow, top);
        ClothView view = beside ? narrow : whole;
        Point2 corner = new(LayoutSheet.Margin + LayoutSheet.LeftRoom, top - view.PaperHeight);
        Symbol[] symbols = [.. view.Symbols()];
        Mark[] felt =
        [
            .. Title(layout, view, size, "title"),
            .. LayoutSheet.Felt(layout, view, corner, symbols),
            new GroupMark(
                "bar", [.. ScaleBar.Draw(new Point2(corner.X, LayoutSheet.Margin), BarMm / view.Scale, view.Scale)]),
        ];
        Point2 first = new(beside ? size.WidthMm - LayoutSheet.Margin - LayoutSheet.FiguresWidth : LayoutSheet.Margin, top + 4);
        Mark[] figures = [.. Figures(layout, yields, view, first, beside)];
        return beside
            ? [Page([.. felt, .. figures], symbols)]
            : [Page(felt, symbols), Page([.. Title(layout, view, size, "title-2"), .. figures], [])];

        Sheet Page(IReadOnlyList<Mark> marks, IReadOnlyList<Symbol> used) =>
            LayoutSheet.Of(layout, yields, size.WidthMm, size.HeightMm, used, marks);
    }

    // Whether figures and detail, one below the other, have room on the page.
    private static bool Fits(RollLayout layout, YieldFigures yields, ClothView view, double top) =>
        FigureTable.Height(LayoutFigures.Lines(layout, yields, view)) + DetailGap + LayoutDetail.Height <= top + 4 - LayoutSheet.Margin;

    private static IEnumerable<Mark> Title(RollLayout layout, ClothView view, PaperSize size, string name) =>
        [new GroupMark(name, [.. LayoutSheet.Title(layout, view, size.WidthMm, size.HeightMm - LayoutSheet.Margin)])];

    // The detail stands below the figures where they share the page with the felt, else beside them.
    private static IEnumerable<Mark> Figures(RollLayout layout, YieldFigures yields, ClothView view, Point2 at, bool beside)
    {
        IReadOnlyList<(string, string)> lines = LayoutFigures.Lines(layout, yields, view);
        Point2 detail = at + (beside
            ? new Point2(0, -FigureTable.Height(lines) - DetailGap)
            : new Point2(LayoutSheet.FiguresWidth + DetailGap, 0));
        yield return new GroupMark("figures", [.. FigureTable.Draw(at, LayoutSheet.FiguresWidth, lines)]);
        yield return new GroupMark("detail", [.. new LayoutDetail(layout, view).Draw(detail, LayoutSheet.FiguresWidth - DetailGap)]);
    }
}
