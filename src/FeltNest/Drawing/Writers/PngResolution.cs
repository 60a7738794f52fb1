using System.Buffers.Binary;

namespace FeltNest.Drawing.Writers;

/// <summary>States in a PNG how many pixels make a metre, so that it prints true to size.</summary>
internal static class PngResolution
{
    // Signature and the header chunk: the new chunk has to follow them.
    private const int HeaderEnd = 8 + 25;

    /// <summary>The same picture with its resolution stated.</summary>
    /// <remarks>Chunk pHYs of ISO/IEC 15948 (PNG), section 11.3.5.3.</remarks>
    public static byte[] Stated(ReadOnlySpan<byte> png, double dotsPerInch)
    {
        uint perMetre = (uint)Math.Round(dotsPerInch / 0.0254);
        byte[] chunk = new byte[4 + 4 + 9 + 4];
        BinaryPrimitives.WriteUInt32BigEndian(chunk, 9);
        "pHYs"u8.CopyTo(chunk.AsSpan(4));
        BinaryPrimitives.WriteUInt32BigEndian(chunk.AsSpan(8), perMetre);
        BinaryPrimitives.WriteUInt32BigEndian(chunk.AsSpan(12), perMetre);
        chunk[16] = 1;
        BinaryPrimitives.WriteUInt32BigEndian(chunk.AsSpan(17), Checksum(chunk.AsSpan(4, 13)));
        return [.. png[..HeaderEnd], .. chunk, .. png[HeaderEnd..]];
    }

    // Cyclic redundancy check of ISO 3309, as PNG wants it.
    private static uint Checksum(ReadOnlySpan<byte> bytes)
    {
        uint sum = 0xFFFFFFFF;
        foreach (byte b in bytes)
        {
            sum ^= b;
            for (int k = 0; k < 8; k++)
            {
                sum = (sum & 1) != 0 ? 0xEDB88320 ^ (sum >> 1) : sum >> 1;
            }
        }

        return ~sum;
    }
}
