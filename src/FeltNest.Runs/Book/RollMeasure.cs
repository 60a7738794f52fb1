namespace FeltNest.Runs.Book;

/// <summary>What was found on a roll.</summary>
internal sealed record RollMeasure
{
    /// <summary>What is left, m; null where that was not measured.</summary>
    public decimal? LeftM { get; init; }

    /// <summary>Least width, mm, or null.</summary>
    public decimal? WidthMm { get; init; }

    /// <summary>File of the roll as measured, or null.</summary>
    public string? MeasuredFile { get; init; }

    /// <summary>Whether it goes back to stock.</summary>
    public bool PutBack { get; init; }

    /// <summary>Whether figures that look like a slip are meant so.</summary>
    public bool MeantSo { get; init; }

    /// <summary>Why, or null.</summary>
    public string? Why { get; init; }
}
