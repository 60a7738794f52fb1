using System.Text.Json.Nodes;

namespace FeltNest.Files.Fields;

/// <summary>True or false.</summary>
internal sealed class FlagField(string name, string meaning = "") : Field(name, meaning)
{
    /// <summary>What counts where it is left out, or null.</summary>
    public bool? Default { get; init; }

    /// <inheritdoc/>
    public override JsonNode? Fallback => Default;

    /// <inheritdoc/>
    public override string Kind => "true or false";

    /// <inheritdoc/>
    internal override JsonObject ValueSchema() => new() { ["type"] = "boolean" };
}
