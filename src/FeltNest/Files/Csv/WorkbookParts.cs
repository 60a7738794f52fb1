using System.IO.Compression;

namespace FeltNest.Files.Csv;

/// <summary>Takes the parts of a workbook that hold its sheets out of its packing, never more than a bound, and packs them again without
/// squeezing: so nothing behind can blow up.</summary>
internal static class WorkbookParts
{
    // Most that the parts may hold together, bytes: a list of 10,000 lines has a few million.
    private const long MostBytes = 64L * 1024 * 1024;

    // Most parts of a package, far above those of any workbook.
    private const int MostParts = 2000;

    // Pictures, charts and the like are never opened.
    private static readonly string[] Passed = ["xl/media/", "xl/drawings/", "xl/charts/", "xl/embeddings/", "xl/theme/", "docProps/"];

    /// <summary>A package of the sheets alone.</summary>
    /// <exception cref="InputException">Too many parts, or more bytes than the bound.</exception>
    /// <exception cref="InvalidDataException">It is damaged.</exception>
    public static MemoryStream Of(InputText text)
    {
        using ZipArchive packed = new(new MemoryStream(text.Bytes.ToArray()), ZipArchiveMode.Read);
        if (packed.Entries.Count > MostParts)
        {
            throw new InputException(text.Name, null, $"has {packed.Entries.Count} parts: a workbook has at most {MostParts}");
        }

        if (packed.GetEntry("xl/workbook.xml") is null)
        {
            throw new InputException(text.Name, null, "is packed like a workbook and holds none: save it as .xlsx or as CSV");
        }

        MemoryStream plain = new();
        long left = MostBytes;
        using (ZipArchive kept = new(plain, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (ZipArchiveEntry part in packed.Entries.Where(IsOfSheets))
            {
                using MemoryStream content = new();
                using Stream from = part.Open();
                left = Copied(from, content, left) ?? throw new InputException(
                    text.Name, null, $"unpacks to more than {MostBytes / 1024 / 1024} MB, which is the most that is read");
                using Stream to = kept.CreateEntry(part.FullName, CompressionLevel.NoCompression).Open();
                Put(part.FullName, content, to);
            }
        }

        plain.Position = 0;
        return plain;
    }

    private static bool IsOfSheets(ZipArchiveEntry part) =>
        (part.FullName.EndsWith(".xml", StringComparison.OrdinalIgnoreCase)
            || part.FullName.EndsWith(".rels", StringComparison.OrdinalIgnoreCase))
        && !Array.Exists(Passed, folder => part.FullName.StartsWith(folder, StringComparison.OrdinalIgnoreCase));

    private static void Put(string name, MemoryStream content, Stream to)
    {
        content.Position = 0;
        if (name.StartsWith("xl/worksheets/", StringComparison.OrdinalIgnoreCase)
            && name.EndsWith(".xml", StringComparison.OrdinalIgnoreCase))
        {
            WorkbookSheetPart.Copy(content, to);
        }
        else
        {
            content.CopyTo(to);
        }
    }

    // What is left of the bound, or null where it is not enough. The sizes that a package states are not trusted.
    private static long? Copied(Stream from, Stream to, long left)
    {
        byte[] block = new byte[1 << 16];
        for (int count = from.Read(block); count > 0; count = from.Read(block))
        {
            left -= count;
            if (left < 0)
            {
                return null;
            }

            to.Write(block, 0, count);
        }

        return left;
    }
}
