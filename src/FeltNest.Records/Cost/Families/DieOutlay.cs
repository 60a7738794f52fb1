namespace FeltNest.Cost.Families;

/// <summary>Whole dies and whole rules that a ball takes on one width over the years that are looked at.</summary>
public sealed record DieOutlay
{
    /// <summary>Dies bought.</summary>
    public required int Dies { get; init; }

    /// <summary>New rules put into them.</summary>
    public required int ReRules { get; init; }

    /// <summary>Price of one die, that of its cavities in it.</summary>
    public required decimal DiePrice { get; init; }

    /// <summary>Money a year for both, overhead on it, to the cent.</summary>
    public required decimal PerYear { get; init; }
}
