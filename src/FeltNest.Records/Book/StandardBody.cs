namespace FeltNest.Book;

/// <summary>What felt was promised for a ball from a day on. A later version never changes an earlier one.</summary>
internal sealed record StandardBody
{
    /// <summary>Version, from 1 on.</summary>
    public required int Version { get; init; }

    /// <summary>First day it holds, as 2026-03-02.</summary>
    public required string From { get; init; }

    /// <summary>Width its felt is bought in, mm.</summary>
    public required decimal WidthMm { get; init; }

    /// <summary>Felt of full width for one panel, without any loss, m2.</summary>
    public required decimal PanelM2 { get; init; }

    /// <summary>Felt lost at the ends of a roll, whatever its length, m.</summary>
    public required decimal EndsM { get; init; }

    /// <summary>Length of roll that the figures a thousand balls are for, m.</summary>
    public required decimal RollLengthM { get; init; }

    /// <summary>Panels lost to faults, %.</summary>
    public required decimal FaultPercent { get; init; }

    /// <summary>Of the others, panels rejected, %.</summary>
    public required decimal RejectPercent { get; init; }

    /// <summary>Of those that pass, panels without a partner, %.</summary>
    public required decimal UnpairedPercent { get; init; }

    /// <summary>Price of a square metre; null where none was promised.</summary>
    public decimal? PricePerM2 { get; init; }

    /// <summary>Its currency.</summary>
    public string? Currency { get; init; }
}
