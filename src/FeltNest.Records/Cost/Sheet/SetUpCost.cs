namespace FeltNest.Cost.Sheet;

/// <summary>Setting up the press for a batch.</summary>
public sealed record SetUpCost
{
    /// <summary>Hours of one set-up.</summary>
    public required decimal Hours { get; init; }

    /// <summary>Money for an hour.</summary>
    public required decimal RatePerHour { get; init; }

    /// <summary>Thousand balls cut in one set-up.</summary>
    public required decimal BatchThousandBalls { get; init; }

    /// <summary>Money for a thousand balls.</summary>
    public decimal PerThousandBalls => Hours * RatePerHour / BatchThousandBalls;
}
