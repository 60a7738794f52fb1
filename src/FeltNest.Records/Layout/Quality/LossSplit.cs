namespace FeltNest.Layout.Quality;

/// <summary>Where the waste comes from, each share in per cent of the full roll width; with the good panels they add to 100.</summary>
public sealed record LossSplit
{
    /// <summary>What the best lattice of the endless plane leaves without any gap.</summary>
    public required double ShapePercent { get; init; }

    /// <summary>What the gap takes in the endless plane.</summary>
    public required double GapPercent { get; init; }

    /// <summary>Cloth in edge trims and forbidden stripes that the plane's lattice would have used.</summary>
    public required double TrimPercent { get; init; }

    /// <summary>What straight edges cost: half of (row height - row step) on each side, the step with its gap, in cloth the lattice
    /// would have used.</summary>
    public required double EdgesPercent { get; init; }

    /// <summary>The rest: rows strained, or spaced out, so that a whole number of them fits; below 0 where the strip does better than
    /// the lattice.</summary>
    public required double RowFitPercent { get; init; }
}
