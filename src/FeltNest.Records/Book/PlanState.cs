namespace FeltNest.Book;

/// <summary>A plan now.</summary>
internal sealed record PlanState
{
    public required PlanBody Plan { get; init; }

    public required string At { get; init; }

    public required string By { get; init; }

    public bool Taken { get; init; }
}
