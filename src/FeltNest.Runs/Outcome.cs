namespace FeltNest.Runs;

/// <summary>What a run gives.</summary>
internal sealed record Outcome
{
    /// <summary>Its files, the result's JSON first.</summary>
    public required IReadOnlyList<ResultFile> Files { get; init; }

    /// <summary>The figures as a table to read.</summary>
    public required string Table { get; init; }

    /// <summary>What has to be told beside them, in order.</summary>
    public IReadOnlyList<Remark> Remarks { get; init; } = [];

    /// <summary>Whether the search ended before its work was done.</summary>
    public bool CutShort { get; init; }

    /// <summary>Whether what was judged does not conform.</summary>
    public bool Refused { get; init; }

    /// <summary>The file of a name.</summary>
    public ResultFile File(string name) => Files.First(file => file.Name == name);
}
