using System.Text.Json.Nodes;

namespace FeltNest.Files.Fields;

/// <summary>A list of texts.</summary>
internal sealed class TextsField(string name, string meaning = "") : ListField(name, meaning)
{
    /// <summary>Whether no text may stand there twice.</summary>
    public bool EachOnce { get; init; }

    /// <inheritdoc/>
    protected override string ItemKind => "texts";

    /// <inheritdoc/>
    protected override JsonObject ItemSchema() => new() { ["type"] = "string", ["minLength"] = 1 };

    /// <inheritdoc/>
    internal override JsonObject ValueSchema()
    {
        JsonObject schema = base.ValueSchema();
        if (EachOnce)
        {
            schema["uniqueItems"] = true;
        }

        return schema;
    }
}
