using System.Text;
using FeltNest.Files;
using FeltNest.Files.Outlines;
using FeltNest.Files.Scan;
using FeltNest.Panel.Trace;
using FeltNest.Tests.Panel.Trace;
using Xunit;

namespace FeltNest.Tests.Files.Scan;

public sealed class PictureReaderTests
{
    private static byte[] Sound { get; } =
        new ScanPicture { Size = (300, 200), Image = p => p * 2 }.Of([ScanPicture.Disc(new(70, 50), 30)]);

    [Fact]
    public void A_picture_is_read_from_the_bottom_with_its_colours()
    {
        ColourPicture picture = PictureReader.Read(InputText.Of("p.png", Sound));

        Assert.Equal((300, 200), (picture.Width, picture.Height));
        Assert.InRange(picture.Blue[(100 * 300) + 140], 30, 90);
        Assert.InRange(picture.Blue[(190 * 300) + 140], 200, 255);
    }

    [Theory]
    [InlineData("p.png")]
    [InlineData("p.jpg")]
    public void Something_else_by_that_name_is_told_in_one_line(string name) =>
        Refused(name, Encoding.UTF8.GetBytes("{ \"schema\": \"feltnest/outline/1\" }"), "is no picture");

    [Fact]
    public void A_picture_that_ends_early_is_told() => Refused("p.png", Sound[..(Sound.Length / 2)], "is not a whole picture");

    [Fact]
    public void A_picture_of_too_many_pixels_is_refused_before_it_is_unpacked()
    {
        // Width and height stand at byte 16 of a PNG, and the check sum of that chunk, CRC-32 (W3C PNG, annex D), after them.
        byte[] huge = [.. Sound];
        (huge[17], huge[21]) = (1, 1);
        uint sum = Crc(huge.AsSpan(12, 17));
        huge[29] = (byte)(sum >> 24);
        huge[30] = (byte)(sum >> 16);
        huge[31] = (byte)(sum >> 8);
        huge[32] = (byte)sum;

        Refused("p.png", huge, "65836 x 65736 pixels");
    }

    [Fact]
    public void A_tiny_picture_is_refused() =>
        Refused("p.png", new ScanPicture { Size = (60, 60), Image = p => p }.Of([]), "60 x 60 pixels");

    [Theory]
    [InlineData("p.pdf", "is a PDF file")]
    [InlineData("p.tif", "is a TIF file")]
    [InlineData("p.heic", "is a HEIC file")]
    public void Pictures_of_other_kinds_are_named(string name, string told) => Assert.Contains(
        told, Assert.Throws<InputException>(() => PartReader.Read(InputText.Of(name, Sound))).Problem, StringComparison.Ordinal);

    [Fact]
    public void Spoiled_pictures_are_read_or_refused_and_nothing_else()
    {
        Random random = new(11);
        for (int i = 0; i < 60; i++)
        {
            byte[] spoiled = [.. Sound];
            for (int k = 0; k < 1 + (i % 5); k++)
            {
                spoiled[random.Next(spoiled.Length)] = (byte)random.Next(256);
            }

            Exception? found = Record.Exception(() => OutlineReader.Read(InputText.Of("p.png", spoiled) with { Dpi = 100 }));
            Assert.True(found is null or InputException, found?.ToString());
        }
    }

    [Fact]
    public void A_resolution_for_what_is_no_picture_is_refused() => Assert.Equal(
        AskedFor.Resolution,
        Assert.Throws<InputException>(() => PartReader.Read(
            InputText.Of("o.csv", Encoding.UTF8.GetBytes("0,0\n30,0\n0,30\n")) with { Dpi = 200 })).Asked);

    [Fact]
    public void A_resolution_that_differs_from_the_files_own_is_said()
    {
        // The chunk pHYs, 3937 pixels to the metre (100 dpi), after the header.
        byte[] chunk = [0, 0, 0, 9, .. "pHYs"u8, 0, 0, 0x0F, 0x61, 0, 0, 0x0F, 0x61, 1, 0, 0, 0, 0];
        uint sum = Crc(chunk.AsSpan(4, 13));
        (chunk[17], chunk[18], chunk[19], chunk[20]) = ((byte)(sum >> 24), (byte)(sum >> 16), (byte)(sum >> 8), (byte)sum);
        byte[] stated = [.. Sound[..33], .. chunk, .. Sound[33..]];

        Assert.Equal(100, StatedResolution.Of(stated)!.Value, 0.01);
        Assert.Contains(
            OutlineReader.Read(InputText.Of("p.png", stated) with { Dpi = 50 }).Notes,
            note => note.Contains("the file itself states 100 dpi", StringComparison.Ordinal));
    }

    private static void Refused(string name, byte[] file, string told)
    {
        InputException no = Assert.Throws<InputException>(() => PictureReader.Read(InputText.Of(name, file)));
        Assert.Equal(name, no.File);
        Assert.Contains(told, no.Problem, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', no.Message);
    }

    private static uint Crc(ReadOnlySpan<byte> bytes)
    {
        uint sum = 0xFFFFFFFF;
        foreach (byte value in bytes)
        {
            sum ^= value;
            for (int bit = 0; bit < 8; bit++)
            {
                sum = (sum >> 1) ^ ((sum & 1) * 0xEDB88320);
            }
        }

        return ~sum;
    }
}
