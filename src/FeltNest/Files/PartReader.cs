using System.Text.Json;
using FeltNest.Files.Balls;
using FeltNest.Files.Json;
using FeltNest.Files.Outlines;

namespace FeltNest.Files;

/// <summary>Reads whatever can be laid: a ball specification or any outline.</summary>
internal static class PartReader
{
    /// <summary>The ball or the outline of a file, told apart by the file's ending and its <c>schema</c>.</summary>
    /// <param name="path">The file.</param>
    /// <param name="changes">Fields of a ball that go before those of the file, or null.</param>
    /// <exception cref="InputException">Names the file, the field, the value found and what is allowed; or an outline for which fields of a
    /// ball are given.</exception>
    public static PartInput Read(string path, IReadOnlyList<BallChange>? changes = null) => Read(InputText.OfFile(path), changes);

    /// <summary>The ball or the outline of a text, told apart by the ending of its name and its <c>schema</c>.</summary>
    /// <param name="text">The text.</param>
    /// <param name="changes">Fields of a ball that go before those of the text, or null.</param>
    /// <exception cref="InputException">Names the text, the field, the value found and what is allowed; or an outline for which fields of a
    /// ball are given.</exception>
    public static PartInput Read(InputText text, IReadOnlyList<BallChange>? changes = null)
    {
        PartInput part = Either(text, changes ?? []);
        return part.Ball is null && changes is { Count: > 0 }
            ? throw new InputException(
                text.Name, null, $"is a flat outline: {changes[0].Field} belongs to a ball specification and cannot be given with it")
            : part;
    }

    private static PartInput Either(InputText text, IReadOnlyList<BallChange> changes)
    {
        if (text.Ending is ".csv" or ".svg" or ".dxf")
        {
            return new PartInput(null, OutlineReader.Read(text));
        }

        JsonElement root = JsonInput.ReadObject(text);
        string schema = JsonInput.SchemaOf(root, text.Name, SchemaName.Ball, SchemaName.Outline, SchemaName.Panel, SchemaName.Layout);
        return schema == SchemaName.Ball
            ? new PartInput(BallReader.Read(text.Name, root, changes), null)
            : new PartInput(null, OutlineReader.Read(text.Name, root));
    }
}
