namespace FeltNest.Book;

/// <summary>An order now. Wanted = done + left.</summary>
internal sealed record OrderState
{
    public required OrderBody Order { get; init; }

    public required int Done { get; init; }

    /// <summary>Balls wanted still; below 0 where more were cut than wanted.</summary>
    public required int Left { get; init; }

    public bool Closed { get; init; }

    /// <summary>The roll it was cut from first, or null.</summary>
    public string? FirstRoll { get; init; }
}
