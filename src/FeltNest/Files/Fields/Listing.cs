namespace FeltNest.Files.Fields;

/// <summary>One kind of CSV list.</summary>
/// <param name="Name">Short name: <c>offers</c>.</param>
/// <param name="Columns">Its columns.</param>
internal sealed record Listing(string Name, FieldSet Columns)
{
    /// <summary>Columns that must be there.</summary>
    public IReadOnlyList<string> Required => [.. Columns.All.Where(column => column.IsRequired).Select(column => column.Name)];

    /// <summary>Columns that may be there.</summary>
    public IReadOnlyList<string> Others => [.. Columns.All.Where(column => !column.IsRequired).Select(column => column.Name)];
}
