namespace FeltNest.Runs.Book;

/// <summary>A standard that is to be set.</summary>
internal sealed record StandardAsk
{
    /// <summary>Name of the ball.</summary>
    public required string Ball { get; init; }

    /// <summary>Its layout.</summary>
    public required string LayoutFile { get; init; }

    /// <summary>Losses and price.</summary>
    public required string CostsFile { get; init; }

    /// <summary>First day it holds, as 2026-03-02.</summary>
    public required string From { get; init; }
}
