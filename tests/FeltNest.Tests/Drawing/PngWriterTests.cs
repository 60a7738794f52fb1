using System.Buffers.Binary;
using FeltNest.Drawing;
using FeltNest.Drawing.Writers;
using FeltNest.Geometry;
using SkiaSharp;
using Xunit;

namespace FeltNest.Tests.Drawing;

public sealed class PngWriterTests
{
    // 25.4 x 50.8 mm at 150 dots an inch: 150 x 300 pixels.
    private static readonly Sheet Inches = new()
    {
        Title = "t",
        Description = "d",
        WidthMm = 25.4,
        HeightMm = 50.8,
        Symbols =
        [
            new Symbol(
                "dot", [new PathMark([Chain.Rectangle(new Box { MinX = 0, MinY = 0, MaxX = 5, MaxY = 2 })], null, Colour.Of(0x0000FF))]),
        ],
        Marks = [
            new PathMark([Chain.Rectangle(new Box { MinX = 0, MinY = 0, MaxX = 12.7, MaxY = 25.4 })], null, Colour.Of(0xFF0000)),
            new GroupMark(
                "clipped",
                [
                    new PathMark(
                        [Chain.Rectangle(new Box { MinX = 12.7, MinY = 25.4, MaxX = 25.4, MaxY = 50.8 })], null, Colour.Of(0x00FF00)),
                ],
                new Box { MinX = 12.7, MinY = 25.4, MaxX = 19, MaxY = 50.8 }),
        ],
    };

    [Fact]
    public void Size_and_stated_resolution_agree_with_the_paper()
    {
        byte[] png = PngWriter.Write(Inches);

        Assert.Equal(150u, BinaryPrimitives.ReadUInt32BigEndian(png.AsSpan(16)));
        Assert.Equal(300u, BinaryPrimitives.ReadUInt32BigEndian(png.AsSpan(20)));
        Assert.Equal("pHYs"u8, png.AsSpan(37, 4));
        // 150 / 0.0254 = 5905.5 dots a metre.
        Assert.Equal(5906u, BinaryPrimitives.ReadUInt32BigEndian(png.AsSpan(41)));
        Assert.Equal(1, png[49]);
    }

    [Fact]
    public void The_lower_left_of_the_sheet_is_the_lower_left_of_the_picture()
    {
        using SKBitmap picture = SKBitmap.Decode(PngWriter.Write(Inches));

        Assert.Equal(new SKColor(255, 0, 0), picture.GetPixel(2, 297));
        Assert.Equal(new SKColor(255, 0, 0), picture.GetPixel(73, 152));
        Assert.Equal(SKColors.White, picture.GetPixel(77, 297));
        Assert.Equal(SKColors.White, picture.GetPixel(2, 147));
    }

    [Fact]
    public void Nothing_is_drawn_outside_the_clip_of_a_group()
    {
        using SKBitmap picture = SKBitmap.Decode(PngWriter.Write(Inches));

        // The clip ends at 19 mm = pixel 112.2.
        Assert.Equal(new SKColor(0, 255, 0), picture.GetPixel(110, 20));
        Assert.Equal(SKColors.White, picture.GetPixel(115, 20));
    }

    [Fact]
    public void A_symbol_turns_counter_clockwise_about_its_origin()
    {
        Symbol bar = Inches.Symbols[0];
        using SKBitmap picture = SKBitmap.Decode(PngWriter.Write(Inches with { Marks = [new CopyMark(bar, new Point2(12.7, 25.4), 90)] }));

        // The 5 x 2 bar stands upright left of its origin: 4 mm above and 1 mm left of the middle.
        Assert.Equal(new SKColor(0, 0, 255), picture.GetPixel(75 - 6, 150 - 24));
        Assert.Equal(SKColors.White, picture.GetPixel(75 + 6, 150 - 6));
    }

    [Fact]
    public void A_large_sheet_is_drawn_more_coarsely_and_says_so()
    {
        Sheet large = Inches with { WidthMm = 2540, HeightMm = 2540 };

        Assert.Equal(Math.Sqrt(12e6) / 100, PngWriter.Resolution(large), 9);
    }

    [Fact]
    public void The_same_sheet_gives_the_same_bytes() => Assert.Equal(PngWriter.Write(Inches), PngWriter.Write(Inches));
}
