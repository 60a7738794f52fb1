using System.Text;
using FeltNest.Drawing;
using FeltNest.Drawing.Writers;
using FeltNest.Geometry;
using FeltNest.Tests.Files;
using Xunit;

namespace FeltNest.Tests.Drawing;

public sealed class SvgWriterTests
{
    [Fact]
    public void A_small_sheet_is_written_as_expected_to_the_letter()
    {
        Symbol disc = new(
            "disc", [new PathMark([Chain.Circle(new Point2(1, 0), 2)], new Pen(0.25, Colour.Of(0x102030)), Colour.Of(0xFF8000))]);
        Sheet sheet = new()
        {
            Title = "Small & plain",
            Description = "One of each mark.",
            WidthMm = 60,
            HeightMm = 40.5,
            Symbols = [disc],
            Marks = [
                new PathMark([Chain.Open(new(0, 0), new(60, 40.5))], new Pen(0.5, Colour.Of(0), 6, 1.5)),
                new GroupMark(
                    "cut", [new CopyMark(disc, new Point2(30, 20.5), 90), new CopyMark(disc, new Point2(10, 10.5), 0)],
                    new Box { MinX = 5, MinY = 5, MaxX = 45, MaxY = 35 }),
                new PathMark(
                    [
                        Chain.Rectangle(new Box { MinX = 1, MinY = 1, MaxX = 3, MaxY = 2 }),
                        Chain.Rectangle(new Box { MinX = 1.5, MinY = 1.25, MaxX = 2.5, MaxY = 1.75 }),
                    ], null, Colour.Of(0x00FF00)),
                new TextMark { Text = "I<", At = new Point2(5, 30.5), HeightMm = 10, Colour = Colour.Of(0x010203) },
            ],
        };

        string written = Encoding.UTF8.GetString(SvgWriter.Write(sheet));

        // Written by hand from the drawing: y' = 40.5 - y, a counter-clockwise arc has sweep 0 in SVG's frame, where y points down.
        Assert.Equal(File.ReadAllText(RepositoryFile.PathOf("tests", "FeltNest.Tests", "Expected", "small-sheet.svg")), written);
    }

    [Fact]
    public void An_arc_of_more_than_a_half_turn_is_marked_large()
    {
        Chain horseshoe = new([new ArcVertex(0, -1, 1.5 * Math.PI), new ArcVertex(-1, 0, 0)], false);

        string written =
            Encoding.UTF8.GetString(SvgWriter.Write(new Sheet
            {
                Title = "t",
                Description = "d",
                WidthMm = 2,
                HeightMm = 2,
                Symbols = [],
                Marks = [new PathMark([horseshoe], new Pen(1, Colour.Of(0)))],
            }));

        Assert.Contains("d=\"M0 3A1 1 0 1 0 -1 2\"", written, StringComparison.Ordinal);
    }

    [Fact]
    public void Characters_that_no_xml_can_hold_are_left_out_of_titles()
    {
        string written = Encoding.UTF8.GetString(SvgWriter.Write(new Sheet
        {
            Title = "a\u0001b",
            Description = "d",
            WidthMm = 2,
            HeightMm = 2,
            Symbols = [],
            Marks = [],
        }));

        Assert.Contains("<title>ab</title>", written, StringComparison.Ordinal);
    }
}
