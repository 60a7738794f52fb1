using System.Text.Json.Nodes;

namespace FeltNest.Files.Fields;

/// <summary>A field that holds a whole document of another kind.</summary>
/// <param name="name">Name in the file.</param>
/// <param name="document">The document.</param>
/// <param name="meaning">What it means.</param>
internal sealed class DocumentField(string name, Document document, string meaning = "") : Field(name, meaning)
{
    /// <summary>The document.</summary>
    public Document Document => document;

    /// <inheritdoc/>
    public override string Kind => $"[{document.Name}](#{document.Name})";

    /// <inheritdoc/>
    internal override JsonObject ValueSchema() => JsonSchema.OfInner(document);
}
