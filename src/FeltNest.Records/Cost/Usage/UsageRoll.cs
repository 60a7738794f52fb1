using FeltNest.Yield;

namespace FeltNest.Cost.Usage;

/// <summary>One roll against its standard.</summary>
internal sealed record UsageRoll
{
    /// <summary>What it gave.</summary>
    public required ActualRoll Actual { get; init; }

    /// <summary>Good balls it stands for.</summary>
    public required double Balls { get; init; }

    /// <summary>Panels per metre that its width takes, per cent of the layout's.</summary>
    public required double RowsPercent { get; init; }

    /// <summary>Felt used per thousand good balls; infinite where it gave none.</summary>
    public required FeltUsage PerThousandBalls { get; init; }

    /// <summary>Felt used above the standard for its balls, in the unit of the account, %; infinite where it gave none.</summary>
    public required double MorePercent { get; init; }
}
