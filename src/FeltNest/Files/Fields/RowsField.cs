using System.Text.Json.Nodes;

namespace FeltNest.Files.Fields;

/// <summary>A list of rows of numbers.</summary>
/// <param name="name">Name in the file.</param>
/// <param name="columns">What the numbers of a row are, such as u and v.</param>
/// <param name="meaning">What it means.</param>
internal sealed class RowsField(string name, IReadOnlyList<string> columns, string meaning = "") : ListField(name, meaning)
{
    /// <summary>Least and greatest of its numbers.</summary>
    public (double Low, double High) Within { get; init; } = (double.NegativeInfinity, double.PositiveInfinity);

    /// <summary>How many numbers stand in a row.</summary>
    public int Columns => columns.Count;

    /// <summary>The columns in words: <c>[u, v]</c>.</summary>
    public string ColumnWords => $"[{string.Join(", ", columns)}]";

    /// <inheritdoc/>
    protected override string ItemKind => ColumnWords;

    /// <inheritdoc/>
    protected override JsonObject ItemSchema()
    {
        JsonObject number = new() { ["type"] = "number" };
        if (double.IsFinite(Within.Low))
        {
            number["minimum"] = Within.Low;
            number["maximum"] = Within.High;
        }

        return new JsonObject { ["type"] = "array", ["minItems"] = Columns, ["maxItems"] = Columns, ["items"] = number };
    }
}
