namespace FeltNest.Files;

/// <summary>Reads an input file whole, with every way in which that can fail told in one line.</summary>
internal static class InputBytes
{
    // Largest input read, bytes: far above any sound outline, far below what would fill the memory.
    private const long MostBytes = 20L * 1024 * 1024;

    /// <summary>The file's bytes without a byte order mark.</summary>
    /// <exception cref="InputException">Missing, a folder, not readable, empty or too large.</exception>
    public static ReadOnlyMemory<byte> Read(string path)
    {
        if (Directory.Exists(path))
        {
            throw new InputException(path, null, "is a folder: name a file");
        }

        if (!File.Exists(path))
        {
            throw new InputException(path, null, "no such file");
        }

        byte[] bytes;
        try
        {
            long length = new FileInfo(path).Length;
            if (length > MostBytes)
            {
                throw new InputException(path, null, $"is {length} bytes long: at most {MostBytes} are read");
            }

            bytes = Bounded(path);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            throw new InputException(path, null, $"cannot be read ({OneLine.Of(error.Message)})", error);
        }

        if (bytes.Length == 0)
        {
            throw new InputException(path, null, "is empty");
        }

        return WithoutMark(bytes);
    }

    /// <summary>A text's bytes without a byte order mark.</summary>
    public static ReadOnlyMemory<byte> WithoutMark(ReadOnlyMemory<byte> bytes) => bytes.Span is [0xEF, 0xBB, 0xBF, ..] ? bytes[3..] : bytes;

    // A pipe or a device says no length beforehand.
    private static byte[] Bounded(string path)
    {
        using FileStream file = File.OpenRead(path);
        using MemoryStream all = new();
        byte[] block = new byte[1 << 16];
        for (int count = file.Read(block); count > 0; count = file.Read(block))
        {
            if (all.Length + count > MostBytes)
            {
                throw new InputException(path, null, $"is longer than {MostBytes} bytes, which is the most that is read");
            }

            all.Write(block, 0, count);
        }

        return all.ToArray();
    }
}
