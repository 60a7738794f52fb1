using System.Buffers.Binary;

namespace FeltNest.Files.Scan;

/// <summary>The resolution that a picture file states: PNG in its chunk pHYs (W3C, <i>Portable Network Graphics</i>, 11.3.5.3), JPEG in its
/// JFIF header (ITU-T T.871).</summary>
internal static class StatedResolution
{
    private const double InchesPerMetre = 39.3700787;
    private const double CentimetresPerInch = 2.54;

    /// <summary>Dots per inch, or null where none is stated.</summary>
    public static double? Of(ReadOnlySpan<byte> file)
    {
        double? stated = file is [0xFF, 0xD8, ..] ? OfJpeg(file) : OfPng(file);
        return stated > 1 ? stated : null;
    }

    private static double? OfPng(ReadOnlySpan<byte> file)
    {
        // Length, name, content and check sum of each chunk, after eight bytes of signature.
        for (int at = 8; at + 21 <= file.Length;)
        {
            int length = BinaryPrimitives.ReadInt32BigEndian(file[at..]);
            if (length < 0 || length > file.Length - at)
            {
                return null;
            }

            if (file.Slice(at + 4, 4).SequenceEqual("pHYs"u8) && length == 9)
            {
                return file[at + 16] == 1 ? BinaryPrimitives.ReadUInt32BigEndian(file[(at + 8)..]) / InchesPerMetre : null;
            }

            at += length + 12;
        }

        return null;
    }

    private static double? OfJpeg(ReadOnlySpan<byte> file)
    {
        if (file.Length < 18 || !file.Slice(6, 4).SequenceEqual("JFIF"u8))
        {
            return null;
        }

        double density = BinaryPrimitives.ReadUInt16BigEndian(file[14..]);
        return file[13] switch
        {
            1 => density,
            2 => density * CentimetresPerInch,
            _ => null,
        };
    }
}
