namespace FeltNest.Panel.Trial;

/// <summary>What the readings of a trial wrap show.</summary>
internal sealed record TrialFinding
{
    /// <summary>Gap aimed at, mm.</summary>
    public required double AimMm { get; init; }

    /// <summary>Parts of the gap that the panel can mend.</summary>
    public required IReadOnlyList<TrialPart> Parts { get; init; }

    /// <summary>Move of the seam: the wave of order 2 of the panel's edge that leaves the gaps and moves the seam; null where no waist was
    /// measured. Positive where the waist of the ball is too wide.</summary>
    public required TrialAmount? Seam { get; init; }

    /// <summary>Waists measured.</summary>
    public required int Waists { get; init; }

    /// <summary>Ball by ball, what panels cannot show.</summary>
    public required IReadOnlyList<TrialPlacing> Balls { get; init; }

    /// <summary>Places round the seam.</summary>
    public required IReadOnlyList<TrialPlace> Places { get; init; }

    /// <summary>Standard deviation of one reading, mm.</summary>
    public required double NoiseMm { get; init; }

    /// <summary>Freedoms of it.</summary>
    public required int Freedom { get; init; }

    /// <summary>Whether the gap is off the one aimed at by what a panel can mend.</summary>
    public required TrialTest Panel { get; init; }

    /// <summary>Whether panels are placed askew on a ball.</summary>
    public required TrialTest Placing { get; init; }

    /// <summary>Whether the two panels of a ball are unlike, or pulled unevenly.</summary>
    public required TrialTest Unlike { get; init; }

    /// <summary>Whether the balls differ among each other by more than one ball's noise; null for one ball.</summary>
    public required TrialTest? BallsDiffer { get; init; }

    /// <summary>Whether the seam lies elsewhere than drawn.</summary>
    public bool SeamMoved => Seam is { IsFound: true };

    /// <summary>Whether a new drawing has something to mend.</summary>
    public bool Mends => Panel.Found || SeamMoved;

    /// <summary>Mean gap expected at a place of the corrected panel, placed as on these balls; null where none was read. Moves of the seam
    /// leave it.</summary>
    public double? LeftMm(TrialPlace place)
    {
        double mended = Panel.Found ? place.Fitted.Mm - AimMm : 0;
        return place.ReadMm - mended;
    }

    /// <summary>What the edge is moved by, mm outwards; empty where there is nothing to mend.</summary>
    public IReadOnlyList<EdgeWave> Correction =>
    [
        .. Panel.Found ? Parts.Select(part => part.Wave with { AmountMm = part.Amount.Mm / 2 }) : [],
        .. SeamMoved ? [new EdgeWave(2, false, -Seam!.Mm)] : Array.Empty<EdgeWave>(),
    ];
}
