namespace FeltNest.Die.Order;

/// <summary>What an order for a die settles beside the drawing; null is asked for on the sheet as a blank.</summary>
public sealed record DieWishes
{
    /// <summary>Dies of this kind.</summary>
    public required int Quantity { get; init; }

    /// <summary>Die that this one replaces.</summary>
    public string? Replaces { get; init; }

    /// <summary>How it is held in the press.</summary>
    public string? Mounting { get; init; }

    /// <summary>How it finds its place on the press.</summary>
    public string? Registration { get; init; }

    /// <summary>Vents of the cavities.</summary>
    public string? AirHoles { get; init; }

    /// <summary>How cavities are marked.</summary>
    public string? CavityMarks { get; init; }

    /// <summary>How the first blank is judged.</summary>
    public string? JudgedBy { get; init; }
}
