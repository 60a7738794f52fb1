using System.Text.Json.Nodes;

namespace FeltNest.Files.Fields;

/// <summary>A list of objects.</summary>
/// <param name="name">Name in the file.</param>
/// <param name="fields">What each entry holds.</param>
/// <param name="meaning">What it means.</param>
internal sealed class ObjectsField(string name, FieldSet fields, string meaning = "") : ListField(name, meaning)
{
    /// <summary>What each entry holds.</summary>
    public FieldSet Fields => fields;

    /// <inheritdoc/>
    public override FieldSet Inner => fields;

    /// <inheritdoc/>
    public override string PathMark => "[]";

    /// <inheritdoc/>
    protected override string ItemKind => "objects";

    /// <inheritdoc/>
    protected override JsonObject ItemSchema() => JsonSchema.Of(fields);
}
