namespace FeltNest.Rolls.Check;

/// <summary>What a plan states of one part.</summary>
internal readonly record struct StatedPart
{
    /// <summary>Index into the layout's parts.</summary>
    public required int Part { get; init; }

    /// <summary>Good panels.</summary>
    public required int GoodPanels { get; init; }

    /// <summary>Balls they cover.</summary>
    public required int Balls { get; init; }
}
