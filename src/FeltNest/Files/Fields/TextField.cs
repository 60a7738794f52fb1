using System.Text.Json.Nodes;

namespace FeltNest.Files.Fields;

/// <summary>A text that is not blank.</summary>
internal class TextField(string name, string meaning = "") : Field(name, meaning)
{
    /// <summary>Whether it may be blank, as the unit of a plain ratio is.</summary>
    public bool OrBlank { get; init; }

    /// <summary>Most letters, or null for any number.</summary>
    public int? MostLetters { get; init; }

    /// <summary>Where that number comes from, for messages, or null.</summary>
    public string? Because { get; init; }

    /// <summary>What it must look like, as a pattern of schemas, or null.</summary>
    public string? Pattern { get; init; }

    /// <summary>Text that counts where it is left out, or null.</summary>
    public string? Default { get; init; }

    /// <inheritdoc/>
    public override JsonNode? Fallback => Default;

    /// <inheritdoc/>
    public override string Kind => "text";

    /// <inheritdoc/>
    protected override string OwnRange => MostLetters is { } most ? $"1 to {most} letters" : string.Empty;

    /// <inheritdoc/>
    internal override JsonObject ValueSchema()
    {
        JsonObject schema = new() { ["type"] = "string" };
        if (!OrBlank)
        {
            schema["minLength"] = 1;
        }

        if (MostLetters is { } most)
        {
            schema["maxLength"] = most;
        }

        if (Pattern is not null)
        {
            schema["pattern"] = Pattern;
        }

        return schema;
    }
}
