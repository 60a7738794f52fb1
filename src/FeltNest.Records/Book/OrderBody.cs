namespace FeltNest.Book;

/// <summary>An order as it was taken or changed.</summary>
internal sealed record OrderBody
{
    public required string Ball { get; init; }

    public required int Balls { get; init; }

    public required string Due { get; init; }

    public required bool OneLot { get; init; }

    public string? Felt { get; init; }

    public required int ReserveBalls { get; init; }

    public required int Priority { get; init; }

    public IReadOnlyList<string>? Lots { get; init; }

    public IReadOnlyList<string>? Rolls { get; init; }

    public IReadOnlyList<string>? Presses { get; init; }

    public IReadOnlyList<string>? Dies { get; init; }

    public string? Day { get; init; }

    public IReadOnlyList<string>? NotLots { get; init; }

    public IReadOnlyList<string>? NotRolls { get; init; }

    public IReadOnlyList<string>? NotPresses { get; init; }

    public IReadOnlyList<string>? NotDies { get; init; }
}
