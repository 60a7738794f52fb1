using FeltNest.Drawing.Sheets;
using FeltNest.Drawing.Writers;
using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Tests.Layout;
using FeltNest.Tests.Rolls;
using Xunit;

namespace FeltNest.Tests.Drawing;

/// <summary>A layout true to size on pages to be laid together, read back from the PDF. A point is 1/72 inch (ISO 32000-1), an inch 25.4
/// mm, A4 210 x 297 mm and A3 420 x 297 mm (ISO 216).</summary>
public sealed class LayoutTilesTests
{
    private const double Points = 72 / 25.4;

    [Theory]
    [InlineData("A4")]
    [InlineData("A3")]
    public void Every_page_has_a_bar_of_a_hundred_millimetres_and_names_its_place(string paper)
    {
        IReadOnlyList<PdfPage> pages = Pages(Plates(400, (60, 100), (185, 100), (260, 300)), paper);

        Assert.InRange(pages.Count, 2, 4);
        Assert.All(pages, page => Assert.Contains(page.Paths, path => path.Is(100, 1.6, curved: false)));
        Assert.Equal(pages.Count, pages.Select(Name).Distinct().Count());
        Assert.All(pages, page => Assert.Contains("Print at 100 %: the bar must measure 100 mm, or do not use this sheet.", page.Words));
    }

    // Plates of 100 x 100 mm. The one about x = 185 crosses the join of the two columns and is on both pages; the others are 200 mm apart.
    [Fact]
    public void Pages_laid_together_by_their_match_marks_are_the_layout_true_to_size()
    {
        IReadOnlyList<PdfPage> pages = Pages(Plates(220, (60, 60), (185, 170), (260, 60)), "A4");

        Assert.Equal(["Row 1 of 1, column 1 of 2", "Row 1 of 1, column 2 of 2"], pages.Select(Name));
        Point2[] left = Marks(pages[0]);
        Point2[] right = Marks(pages[1]);
        Assert.Equal(2, left.Length);
        Assert.Equal(2, right.Length);
        Point2 moved = left[0] - right[0];
        Assert.Equal(0, (left[1] - right[1] - moved).Length, 0.01);
        Assert.InRange(moved.X / Points, 150, 190);

        Point2[] first = PlateCorners(pages[0]);
        Point2[] second = PlateCorners(pages[1]);
        Assert.Equal((2, 2), (first.Length, second.Length));
        Assert.Equal(0, (first[1] - (second[0] + moved)).Length, 0.02);
        Assert.Equal(200 * Points, (second[1] + moved - first[0]).X, 0.02);
        Assert.Equal(0, (second[1] + moved - first[0]).Y, 0.02);
        Assert.Equal(new Point2(125, 110) * Points, first[1] - first[0], (a, b) => (a - b).Length < 0.02);
    }

    // 720 mm are three rows of A4: the second column has a plate in the lowest row and the selvedge in the highest, none between.
    [Fact]
    public void A_page_with_nothing_on_it_is_left_out()
    {
        string[] names = [.. Pages(Plates(720, (60, 60), (260, 60), (60, 350), (60, 660)), "A4").Select(Name)];

        Assert.DoesNotContain("Row 2 of 3, column 2 of 2", names);
        Assert.Equal(5, names.Length);
    }

    [Fact]
    public void A_layout_of_more_pages_than_anybody_lays_together_says_so()
    {
        PdfPage page = Assert.Single(Pages(Plates(720, (60, 60), (100_000, 60)), "A4"));

        Assert.Contains(page.Words, words => words.Contains("pages true to size are too many: at most 500", StringComparison.Ordinal));
    }

    private static IReadOnlyList<PdfPage> Pages(RollLayout layout, string paper) =>
        PdfPage.Of(PdfWriter.Write(LayoutTiles.Draw(layout, paper)));

    private static string Name(PdfPage page) => Assert.Single(page.Words, w => w.StartsWith("Row ", StringComparison.Ordinal));

    // Match marks are circles; where each begins, from below.
    private static Point2[] Marks(PdfPage page) =>
        [.. page.Paths.Where(path => path.Is(5, 5, curved: true)).Select(path => path.Ends[0]).OrderBy(p => p.Y)];

    private static Point2[] PlateCorners(PdfPage page) =>
        [.. page.Paths.Where(path => path.Is(100, 100, curved: false)).Select(path => path.Low).OrderBy(p => p.X)];

    private static RollLayout Plates(double width, params (double X, double Y)[] middles) => RollCases.Squares with
    {
        Parts = [Shapes.Part(Shapes.Of(50, -1, -1, 1, -1, 1, 1, -1, 1))],
        RollWidthMm = width,
        Bands = [new LayoutBand
        {
            YFromMm = 5,
            YToMm = width - 5,
            Repeat = new LayoutRepeat(
                200_000, [.. middles.Select(at => new PlacedPanel { Part = 0, XMm = at.X, YMm = at.Y, AngleDeg = 0 })]),
        }],
    };
}
