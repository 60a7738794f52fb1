namespace FeltNest.Layout.Rows;

/// <summary>What an effort buys, all of it counted work: about <c>effort</c> seconds for one width on two cores of the reference
/// machine.</summary>
/// <param name="TiltStepDeg">Step of the tilts in the tables.</param>
/// <param name="Samples">Samples over the part's greatest extent.</param>
/// <param name="Starts">Starts polished.</param>
/// <param name="PolishSteps">Most linear programs a polish may solve.</param>
/// <param name="FirstTrust">First step of a polish, mm.</param>
/// <param name="MixTiltStepDeg">Step of the tilts that mixed rows choose from.</param>
/// <param name="MixStarts">Mixed row sequences polished.</param>
/// <param name="FreerPolishes">Mixed sequences polished only to say what freer rows would gain.</param>
/// <param name="Shakes">Seeded restarts near the best.</param>
/// <param name="MixTilts">Tilts for rows that may stand several times in a repeat.</param>
/// <param name="BandChoices">Choices of bands polished.</param>
/// <param name="BandTilts">Tilts at which bands are tried where all panels must be parallel.</param>
/// <param name="FreeTries">Repeats tried by the free search, from the rows and from scratch alike.</param>
/// <param name="FreeOnSameRows">Whether the free search is also tried on parallel panels of any tilt, where it has been seen to gain
/// nothing.</param>
/// <param name="FreeWork">Depths read for each of these at most.</param>
internal sealed record SearchEffort(
    double TiltStepDeg, int Samples, int Starts, int PolishSteps, double FirstTrust, double MixTiltStepDeg, int MixStarts,
    int FreerPolishes, int Shakes, int MixTilts, int BandChoices, int BandTilts, int FreeTries, bool FreeOnSameRows, long FreeWork)
{
    /// <summary>The work for a request; grows with its effort, and more effort only adds.</summary>
    internal static SearchEffort Of(LayoutRequest request)
    {
        int e = request.Effort;
        double extent =
            Math.Max(request.Part.Outline.MaxX - request.Part.Outline.MinX, request.Part.Outline.MaxY - request.Part.Outline.MinY);
        return new SearchEffort(
            TiltStepDeg: e < 2 ? 1 : e < 20 ? 0.5 : 0.25,
            Samples: e < 2 ? 300 : e < 20 ? 600 : 1000,
            Starts: 4 + (4 * e),
            PolishSteps: 60,

            // About 1 mm on a ball's panel: sampled starts are off by less.
            FirstTrust: extent / 170,
            MixTiltStepDeg: e < 2 ? 15 : e < 20 ? 7.5 : 5,
            MixStarts: 2 + e,
            FreerPolishes: e < 2 ? 0 : 1 + (e / 5),
            Shakes: 2 * e,
            MixTilts: e < 2 ? 2 : e < 20 ? 4 : 8,
            BandChoices: 2 + (e / 2),
            BandTilts: 2 + (e / 5),
            FreeTries: 3 + (3 * e),
            FreeOnSameRows: e >= 5,
            FreeWork: 150_000L * (1 + e));
    }
}
