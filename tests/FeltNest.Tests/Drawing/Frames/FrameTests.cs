using FeltNest.Drawing.Frames;
using FeltNest.Drawing.Parts;
using Xunit;

namespace FeltNest.Tests.Drawing.Frames;

public sealed class FrameTests
{
    // ISO 216 sizes; drawing space and fields of ISO 5457:1999 from memory: 20 mm on the left, 10 on the other sides.
    [Theory]
    [InlineData("A0", 1189, 841, 1159, 821, 24, 16)]
    [InlineData("A1", 841, 594, 811, 574, 16, 12)]
    [InlineData("A2", 594, 420, 564, 400, 12, 8)]
    [InlineData("A3", 420, 297, 390, 277, 8, 6)]
    [InlineData("A4", 210, 297, 180, 277, 4, 6)]
    public void Sheets_have_the_sizes_and_the_room_of_the_standards(
        string name, double width, double height, double roomWide, double roomHigh, int across, int up)
    {
        PaperSize size = PaperSize.Of(name);

        Assert.Equal((width, height), (size.WidthMm, size.HeightMm));
        Assert.Equal((roomWide, roomHigh), (size.Space.Width, size.Space.Height));
        Assert.Equal((across, up), (size.FieldsAcross, size.FieldsUp));
    }

    // ISO 5455: 1:1, 1:2, 1:5 and their tenfolds; 1:2.5 and 1:4 are none.
    [Fact]
    public void Scales_are_those_of_the_standard()
    {
        Assert.Equal(
            ["50:1", "20:1", "10:1", "5:1", "2:1", "1:1", "1:2", "1:5", "1:10", "1:20", "1:50", "1:100"],
            DrawingScale.All.Select(s => s.Words));
        Assert.All(DrawingScale.All, s => Assert.Equal(Number(s.Words.Split(':')[0]) / Number(s.Words.Split(':')[1]), s.Factor, 1e-12));
        Assert.Equal("1:5", DrawingScale.Fitting(1510, 528, 400, 300, 1).Words);
    }

    // ISO 3098: heights 1.8, 2.5, 3.5, 5, 7, 10, 14, 20 mm, stroke of type B a tenth.
    [Fact]
    public void Lettering_has_the_heights_of_the_standard() => Assert.Equal([2.5, 3.5, 5], new[] { Ink.Note, Ink.Label, Ink.Title });

    // ISO 128-2 and a manual of engineering drawing: wide to narrow as two to one.
    [Fact]
    public void Wide_lines_are_twice_as_wide_as_narrow_ones() => Assert.Equal(2, Ink.Wide.WidthMm / Ink.Narrow.WidthMm);

    // ISO 7200: the block is 180 mm wide and fits between the margins of an A4 sheet.
    [Fact]
    public void The_title_block_fits_an_A4_sheet() => Assert.Equal(TitleBlock.Width, PaperSize.Of("A4").Space.Width);

    private static double Number(string text) => double.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
