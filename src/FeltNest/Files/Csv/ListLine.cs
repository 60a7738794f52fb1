namespace FeltNest.Files.Csv;

/// <summary>One line of a list as it stands in its file.</summary>
/// <param name="Number">Its number in the file, from 1.</param>
/// <param name="Cells">Its cells.</param>
/// <param name="Fault">What keeps it from being read, or null.</param>
internal sealed record ListLine(int Number, IReadOnlyList<string> Cells, string? Fault = null)
{
    /// <summary>Whether nothing stands in it.</summary>
    public bool IsBlank => Fault is null && Cells.All(string.IsNullOrWhiteSpace);
}
