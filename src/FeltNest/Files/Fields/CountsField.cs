using System.Text.Json.Nodes;

namespace FeltNest.Files.Fields;

/// <summary>A list of whole numbers from 1 on, each greater than the one before.</summary>
/// <param name="name">Name in the file.</param>
/// <param name="greatest">Greatest number allowed.</param>
/// <param name="meaning">What it means.</param>
internal sealed class CountsField(string name, int greatest, string meaning = "") : ListField(name, meaning)
{
    /// <summary>Greatest number allowed.</summary>
    public int Greatest => greatest;

    /// <inheritdoc/>
    protected override string ItemKind => "whole numbers";

    /// <inheritdoc/>
    protected override string OwnRange => $"{base.OwnRange} of 1 to {greatest}, each greater than the one before";

    /// <inheritdoc/>
    protected override JsonObject ItemSchema() => new() { ["type"] = "integer", ["minimum"] = 1, ["maximum"] = greatest };
}
