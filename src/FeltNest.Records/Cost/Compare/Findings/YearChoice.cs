namespace FeltNest.Cost.Compare.Findings;

/// <summary>Something to spend money on, and what it saves in a year against what is cut today.</summary>
public sealed record YearChoice
{
    /// <summary>What it is.</summary>
    public required string What { get; init; }

    /// <summary>Money laid out at once: the die.</summary>
    public required decimal Outlay { get; init; }

    /// <summary>Saved on a thousand balls, wear of dies left out; below 0 where it costs more.</summary>
    public required decimal SavedPerThousandBalls { get; init; }

    /// <summary>Saved in a year.</summary>
    public required decimal SavedPerYear { get; init; }

    /// <summary>Months until the outlay is saved; null where nothing is saved.</summary>
    public required double? PaybackMonths { get; init; }

    /// <summary>Present value of the savings at the stated interest, less the outlay; null where no interest is known.</summary>
    public required decimal? NetPresentValue { get; init; }
}
