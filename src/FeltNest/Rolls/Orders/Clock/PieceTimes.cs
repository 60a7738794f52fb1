namespace FeltNest.Rolls.Orders.Clock;

/// <summary>When each piece is cut, by its number.</summary>
/// <param name="pieces">How many pieces.</param>
internal sealed class PieceTimes(int pieces)
{
    /// <summary>Whether it is cut at all.</summary>
    public bool[] Placed { get; } = new bool[pieces];

    /// <summary>When its strikes begin.</summary>
    public double[] Start { get; } = new double[pieces];

    /// <summary>When they end.</summary>
    public double[] End { get; } = new double[pieces];

    /// <summary>Whether its die is mounted before it.</summary>
    public bool[] Mounts { get; } = new bool[pieces];

    /// <summary>Whether that takes time and money.</summary>
    public bool[] Paid { get; } = new bool[pieces];

    /// <summary>When the mounting begins.</summary>
    public double[] MountStart { get; } = new double[pieces];

    /// <summary>When the mounting ends.</summary>
    public double[] MountEnd { get; } = new double[pieces];

    /// <summary>Whether its roll is put on before it.</summary>
    public bool[] RollChange { get; } = new bool[pieces];
}
