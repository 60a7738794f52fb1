using System.Text.Json;
using FeltNest.Files.Balls;
using FeltNest.Files.Json;
using FeltNest.Files.Outlines;

namespace FeltNest.Files;

/// <summary>Reads whatever can be laid: a ball specification or any outline.</summary>
public static class PartReader
{
    /// <summary>The ball or the outline of a file, told apart by the file's ending and its <c>schema</c>.</summary>
    /// <exception cref="InputException">Names the file, the field, the value found and what is allowed.</exception>
    public static PartInput Read(string path)
    {
        if (Path.GetExtension(path).ToLowerInvariant() is ".csv" or ".svg" or ".dxf")
        {
            return new PartInput(null, OutlineReader.Read(path));
        }

        JsonElement root = JsonInput.ReadObject(path);
        string schema = JsonInput.SchemaOf(root, path, SchemaName.Ball, SchemaName.Outline, SchemaName.Panel, SchemaName.Layout);
        return schema == SchemaName.Ball
            ? new PartInput(BallReader.Read(path, root), null)
            : new PartInput(null, OutlineReader.Read(path, root));
    }
}
