using FeltNest.Files.Csv;

namespace FeltNest.Files;

/// <summary>A text to be read, with the name by which messages call it. Files, uploads and texts inside the program are read
/// alike.</summary>
internal sealed record InputText
{
    private readonly string? folder;

    private InputText(string name, ReadOnlyMemory<byte> bytes, string? folder)
    {
        Name = name;
        Bytes = bytes;
        this.folder = folder;
    }

    /// <summary>What messages call it; its ending says what it holds.</summary>
    public string Name { get; }

    /// <summary>The text, UTF-8, without a byte order mark.</summary>
    public ReadOnlyMemory<byte> Bytes { get; }

    /// <summary>Resolution of a picture, dots per inch, where it was told beside it.</summary>
    public double? Dpi { get; init; }

    /// <summary>How it is read where it is a list, or null for strictly, without notes.</summary>
    internal ListReading? Lists { get; init; }

    /// <summary>Its name's ending in small letters, such as <c>.csv</c>.</summary>
    internal string Ending => Path.GetExtension(Name).ToLowerInvariant();

    /// <summary>The text of a file.</summary>
    /// <exception cref="InputException">Missing, a folder, not readable, empty or too large.</exception>
    public static InputText OfFile(string path) => new(path, InputBytes.Read(path), Path.GetDirectoryName(path) ?? string.Empty);

    /// <summary>A text that is at hand already.</summary>
    /// <param name="name">What messages call it.</param>
    /// <param name="bytes">The text, UTF-8.</param>
    /// <exception cref="InputException">It is empty.</exception>
    public static InputText Of(string name, ReadOnlyMemory<byte> bytes) => bytes.IsEmpty
        ? throw new InputException(name, null, "is empty")
        : new InputText(name, InputBytes.WithoutMark(bytes), null);

    /// <summary>A text that is at hand already and names files as seen from a folder.</summary>
    /// <param name="name">What messages call it.</param>
    /// <param name="bytes">The text, UTF-8.</param>
    /// <param name="folder">The folder.</param>
    /// <exception cref="InputException">It is empty.</exception>
    internal static InputText In(string name, ReadOnlyMemory<byte> bytes, string folder) => bytes.IsEmpty
        ? throw new InputException(name, null, "is empty")
        : new InputText(name, InputBytes.WithoutMark(bytes), folder);

    /// <summary>Where a file lies that this text names, as seen from its own place.</summary>
    internal string Beside(string file) => folder is null
        ? throw new InputException(Name, null, $"names the file '{OneLine.Of(file)}': that can be read beside a file only")
        : Path.Combine(folder, file);
}
