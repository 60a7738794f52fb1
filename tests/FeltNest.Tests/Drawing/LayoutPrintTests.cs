using System.Globalization;
using FeltNest.Drawing;
using FeltNest.Drawing.Sheets;
using FeltNest.Tests.Rolls;
using FeltNest.Yield;
using Xunit;

namespace FeltNest.Tests.Drawing;

/// <summary>A layout whole on a page that a printer takes.</summary>
public sealed class LayoutPrintTests
{
    // ISO 216: A4 is 210 x 297 mm, A3 lying 420 x 297 mm.
    [Theory]
    [InlineData("A4", 210)]
    [InlineData("A3", 420)]
    public void A_layout_is_whole_on_its_page_at_the_scale_it_says(string paper, double width)
    {
        IReadOnlyList<Sheet> pages = LayoutPrint.Draw(RollCases.TwoRows, YieldAccount.Of(RollCases.TwoRows), paper);

        Assert.All(pages, page => Assert.Equal((width, 297.0), (page.WidthMm, page.HeightMm)));
        Assert.All(pages.SelectMany(SheetWords.Of), w => Assert.InRange(w.At.X, 5, width - 5));
        Assert.All(pages.SelectMany(SheetWords.Of), w => Assert.InRange(w.At.Y, 5, 292));
        Box felt = Assert.IsType<GroupMark>(Assert.Single(pages[0].Marks, m => m is GroupMark { Id: "panels" })).Clip!.Value;
        string said = Assert.Single(SheetWords.Of(pages[0]), w => w.Text.Contains("   SCALE 1:", StringComparison.Ordinal)).Text;
        double scale = double.Parse(said.Split("SCALE 1:")[1].Split(' ')[0], CultureInfo.InvariantCulture);
        Assert.Equal(RollCases.TwoRows.RollWidthMm, felt.Height * scale, 1e-9);
        Assert.InRange(felt.MinY, 10, 287);
        Assert.InRange(felt.MaxX, 10, width - 10);
        Assert.Contains(pages, page => page.Marks.Any(m => m is GroupMark { Id: "figures" }));
    }
}
