namespace FeltNest.Layout.Limits;

/// <summary>What an effort buys, all of it counted work: about <c>effort</c> seconds for one width on two cores of the reference
/// machine.</summary>
internal sealed record SearchEffort
{
    /// <summary>Step of the tilts in the tables.</summary>
    public required double TiltStepDeg { get; init; }

    /// <summary>Samples over the part's greatest extent.</summary>
    public required int Samples { get; init; }

    /// <summary>Starts polished.</summary>
    public required int Starts { get; init; }

    /// <summary>Most linear programs a polish may solve.</summary>
    public required int PolishSteps { get; init; }

    /// <summary>First step of a polish, mm.</summary>
    public required double FirstTrust { get; init; }

    /// <summary>Step of the tilts that mixed rows choose from.</summary>
    public required double MixTiltStepDeg { get; init; }

    /// <summary>Mixed row sequences polished.</summary>
    public required int MixStarts { get; init; }

    /// <summary>Mixed sequences polished only to say what freer rows would gain.</summary>
    public required int FreerPolishes { get; init; }

    /// <summary>Seeded restarts near the best.</summary>
    public required int Shakes { get; init; }

    /// <summary>Tilts for rows that may stand several times in a repeat.</summary>
    public required int MixTilts { get; init; }

    /// <summary>Choices of bands polished.</summary>
    public required int BandChoices { get; init; }

    /// <summary>Tilts at which bands are tried where all panels must be parallel.</summary>
    public required int BandTilts { get; init; }

    /// <summary>Repeats tried by the free search, from the rows and from scratch alike.</summary>
    public required int FreeTries { get; init; }

    /// <summary>Whether the free search is also tried on parallel panels of any tilt, where it has been seen to gain nothing.</summary>
    public required bool FreeOnSameRows { get; init; }

    /// <summary>Depths read for each of these at most.</summary>
    public required long FreeWork { get; init; }

    /// <summary>The work for a request; grows with its effort, and more effort only adds.</summary>
    internal static SearchEffort Of(LayoutRequest request)
    {
        int e = request.Effort;
        T ByEffort<T>(T low, T middle, T high) => e switch { < 2 => low, < 20 => middle, _ => high };
        double extent =
            Math.Max(request.Part.Outline.MaxX - request.Part.Outline.MinX, request.Part.Outline.MaxY - request.Part.Outline.MinY);
        return new SearchEffort
        {
            TiltStepDeg = ByEffort(1, 0.5, 0.25),
            Samples = ByEffort(300, 600, 1000),
            Starts = 4 + (4 * e),
            PolishSteps = 60,
            // About 1 mm on a ball's panel: sampled starts are off by less.
            FirstTrust = extent / 170,
            MixTiltStepDeg = ByEffort(15, 7.5, 5),
            MixStarts = 2 + e,
            FreerPolishes = e < 2 ? 0 : 1 + (e / 5),
            Shakes = 2 * e,
            MixTilts = ByEffort(2, 4, 8),
            BandChoices = 2 + (e / 2),
            BandTilts = 2 + (e / 5),
            FreeTries = 3 + (3 * e),
            FreeOnSameRows = e >= 5,
            FreeWork = 150_000L * (1 + e),
        };
    }
}
