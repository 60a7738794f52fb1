using System.Text.Json.Nodes;

namespace FeltNest.Files.Fields;

/// <summary>A field that holds fields of its own.</summary>
/// <param name="name">Name in the file.</param>
/// <param name="fields">What it holds.</param>
/// <param name="meaning">What it means.</param>
internal sealed class ObjectField(string name, FieldSet fields, string meaning = "") : Field(name, meaning)
{
    /// <summary>What it holds.</summary>
    public FieldSet Fields => fields;

    /// <inheritdoc/>
    public override FieldSet Inner => fields;

    /// <inheritdoc/>
    public override string Kind => "object";

    /// <inheritdoc/>
    internal override JsonObject ValueSchema() => JsonSchema.Of(fields);
}
