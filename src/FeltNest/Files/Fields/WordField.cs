using System.Text.Json.Nodes;

namespace FeltNest.Files.Fields;

/// <summary>One of a few words.</summary>
/// <param name="name">Name in the file.</param>
/// <param name="words">The words allowed.</param>
/// <param name="meaning">What it means.</param>
internal class WordField(string name, IReadOnlyList<string> words, string meaning = "") : TextField(name, meaning)
{
    /// <summary>The words allowed.</summary>
    public IReadOnlyList<string> Words => words;

    /// <summary>The word that was typed, or null where it is none of them. A raised 2, as in square metres, is a 2.</summary>
    public string? Find(string typed)
    {
        string plain = typed.Replace('\u00B2', '2');
        return words.Contains(plain) ? plain : null;
    }

    /// <inheritdoc/>
    public override string Kind => $"one of {string.Join(", ", words.Select(word => $"`{word}`"))}";

    /// <inheritdoc/>
    protected override string OwnRange => string.Empty;

    /// <inheritdoc/>
    internal override JsonObject ValueSchema() => new() { ["enum"] = new JsonArray([.. words.Select(word => (JsonNode)word)]) };
}
