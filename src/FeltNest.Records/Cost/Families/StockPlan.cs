namespace FeltNest.Cost.Families;

/// <summary>Which widths to stock, and on which of them each ball is cut, so that a year costs least.</summary>
public sealed record StockPlan
{
    /// <summary>Most widths that were allowed, or null for any number.</summary>
    public required int? MostWidths { get; init; }

    /// <summary>The same in words.</summary>
    public string Allowed => MostWidths switch
    {
        null => "any number",
        1 => "1 width",
        { } most => $"at most {most}",
    };

    /// <summary>For each ball, in the order of the family, the width and die it is cut with.</summary>
    public required IReadOnlyList<FamilyPair> Takes { get; init; }

    /// <summary>Money a year to keep the widths in stock.</summary>
    public required decimal Stock { get; init; }

    /// <summary>No plan of so many widths costs less than this, money a year.</summary>
    public required decimal Bound { get; init; }

    /// <summary>Places of the widths stocked, in the order asked.</summary>
    public IReadOnlyList<int> Widths => [.. Takes.Select(pair => pair.Width).Distinct().Order()];

    /// <summary>Felt, strikes and all else but dies and stock, money a year.</summary>
    public decimal Running => Takes.Sum(pair => pair.RunningPerYear);

    /// <summary>Dies, money a year.</summary>
    public decimal Dies => Takes.Sum(pair => pair.Dies?.PerYear ?? 0);

    /// <summary>Everything, money a year.</summary>
    public decimal Total => Running + Dies + Stock;

    /// <summary>True where no other plan can cost less.</summary>
    public bool IsProved => Bound == Total;
}
