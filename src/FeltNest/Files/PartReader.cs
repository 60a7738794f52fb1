using System.Text.Json;
using FeltNest.Files.Balls;
using FeltNest.Files.Json;
using FeltNest.Files.Outlines;
using FeltNest.Files.Scan;

namespace FeltNest.Files;

/// <summary>Reads whatever can be laid: a ball specification or any outline.</summary>
internal static class PartReader
{
    /// <summary>The ball or the outline of a file, told apart by the file's ending and its <c>schema</c>.</summary>
    /// <param name="path">The file.</param>
    /// <param name="changes">Fields of a ball that go before those of the file, or null.</param>
    /// <param name="dpi">Resolution of a picture, dots per inch, or null.</param>
    /// <exception cref="InputException">Names the file, the field, the value found and what is allowed; or an outline for which fields of a
    /// ball are given, or a resolution for what is no picture.</exception>
    public static PartInput Read(string path, IReadOnlyList<BallChange>? changes = null, double? dpi = null) =>
        Read(InputText.OfFile(path) with { Dpi = dpi }, changes);

    /// <summary>The ball or the outline of a text, told apart by the ending of its name and its <c>schema</c>.</summary>
    /// <param name="text">The text.</param>
    /// <param name="changes">Fields of a ball that go before those of the text, or null.</param>
    /// <exception cref="InputException">Names the text, the field, the value found and what is allowed; or an outline for which fields of a
    /// ball are given.</exception>
    public static PartInput Read(InputText text, IReadOnlyList<BallChange>? changes = null)
    {
        if (text.Dpi is not null && !PictureReader.IsPicture(text))
        {
            throw new InputException(AskedFor.Resolution, $"belongs to a picture, and {OneLine.Of(text.Name)} is no PNG or JPEG");
        }

        PartInput part = Either(text, changes ?? []);
        return part.Ball is null && changes is { Count: > 0 }
            ? throw new InputException(
                text.Name, null, $"is a flat outline: {changes[0].Field} belongs to a ball specification and cannot be given with it")
            : part;
    }

    private static PartInput Either(InputText text, IReadOnlyList<BallChange> changes)
    {
        PictureReader.RefuseOthers(text);
        if (text.Ending is ".csv" or ".svg" or ".dxf" || PictureReader.IsPicture(text))
        {
            return new PartInput(null, OutlineReader.Read(text));
        }

        JsonElement root = JsonInput.ReadObject(text);
        string schema = JsonInput.SchemaOf(root, text.Name, SchemaName.Ball, SchemaName.Outline, SchemaName.Panel, SchemaName.Layout,
            SchemaName.Trace);
        return schema == SchemaName.Ball
            ? new PartInput(BallReader.Read(text, root, changes), null)
            : new PartInput(null, OutlineReader.Read(text.Name, root));
    }
}
