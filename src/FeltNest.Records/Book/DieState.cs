namespace FeltNest.Book;

/// <summary>A die now. Given = struck + left + given up.</summary>
internal sealed record DieState
{
    public required DieBody Die { get; init; }

    /// <summary>Strikes of all its rules.</summary>
    public required long Given { get; init; }

    public long Struck { get; init; }

    /// <summary>Strikes that rules had left when new ones took their place; below 0 where they were struck beyond them.</summary>
    public long GivenUp { get; init; }

    public required long Left { get; init; }

    /// <summary>Press on which it was mounted last, or null.</summary>
    public string? Press { get; init; }

    /// <summary>Entry that says so: of two dies of one press the later stands there.</summary>
    public long MountedBy { get; init; }
}
