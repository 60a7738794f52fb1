namespace FeltNest.Panel.Trial;

/// <summary>Whether something is more than the noise of the readings: the F test of its mean square against that of the noise.</summary>
internal sealed record TrialTest
{
    // Above this chance it is taken for noise.
    private const double Level = 0.05;

    /// <summary>Ratio of the mean squares.</summary>
    public required double Ratio { get; init; }

    /// <summary>Freedoms of what is tested.</summary>
    public required int Above { get; init; }

    /// <summary>Freedoms of the noise.</summary>
    public required int Below { get; init; }

    /// <summary>Chance that noise alone gives as large a ratio.</summary>
    public required double Chance { get; init; }

    /// <summary>Whether it is more than noise.</summary>
    public bool Found => Chance < Level;
}
