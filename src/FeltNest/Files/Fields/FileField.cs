namespace FeltNest.Files.Fields;

/// <summary>Path of a file, as seen from the file it stands in.</summary>
internal sealed class FileField(string name, string meaning = "") : TextField(name, meaning)
{
    /// <inheritdoc/>
    public override string Kind => "file";
}
