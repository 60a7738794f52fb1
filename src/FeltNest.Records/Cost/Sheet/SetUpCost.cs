namespace FeltNest.Cost.Sheet;

/// <summary>Setting up the press for a batch.</summary>
/// <param name="Hours">Hours of one set-up.</param>
/// <param name="RatePerHour">Money for an hour.</param>
/// <param name="BatchThousandBalls">Thousand balls cut in one set-up.</param>
public sealed record SetUpCost(decimal Hours, decimal RatePerHour, decimal BatchThousandBalls)
{
    /// <summary>Money for a thousand balls.</summary>
    public decimal PerThousandBalls => Hours * RatePerHour / BatchThousandBalls;
}
