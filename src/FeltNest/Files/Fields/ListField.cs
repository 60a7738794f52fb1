using System.Text.Json.Nodes;

namespace FeltNest.Files.Fields;

/// <summary>A list.</summary>
/// <param name="name">Name in the file.</param>
/// <param name="meaning">What it means.</param>
internal abstract class ListField(string name, string meaning) : Field(name, meaning)
{
    /// <summary>Fewest entries.</summary>
    public int Least { get; init; }

    /// <summary>Most entries, or null for any number.</summary>
    public int? Most { get; init; }

    /// <inheritdoc/>
    public override string Kind => $"list of {ItemKind}";

    /// <summary>What one entry is, for the reference page.</summary>
    protected abstract string ItemKind { get; }

    /// <inheritdoc/>
    protected override string OwnRange
    {
        get
        {
            if (Most is { } most)
            {
                return $"{Least} to {most} entries";
            }

            if (Least > 0)
            {
                return $"at least {Least}";
            }

            return string.Empty;
        }
    }

    /// <summary>What a schema says of one entry.</summary>
    protected abstract JsonObject ItemSchema();

    /// <inheritdoc/>
    internal override JsonObject ValueSchema()
    {
        JsonObject schema = new() { ["type"] = "array" };
        if (Least > 0)
        {
            schema["minItems"] = Least;
        }

        if (Most is { } most)
        {
            schema["maxItems"] = most;
        }

        schema["items"] = ItemSchema();
        return schema;
    }
}
