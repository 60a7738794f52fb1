using System.Globalization;

namespace FeltNest.Rolls.Plan;

/// <summary>Places a strike may have. The feed is a whole number of steps, so strikes in line lie on the grid as they are.</summary>
public sealed class StrikeGrid
{
    // Steps along and across that are wanted, mm: finer than a feed or a guide is set by hand.
    private const double WantedMm = 1;

    // Most steps to one side: more only cost time.
    private const int MostShifts = 10;

    /// <summary>Most strikes on a roll, so that a plan's merit fits a whole number.</summary>
    public const int MostStrikes = 16_000;

    // Most places along a roll that are weighed: half a kilometre in steps of a millimetre, longer than any roll that a press draws from.
    private const int MostPlaces = 500_000;

    private readonly double feed;

    private StrikeGrid(RollRequest request, double feed)
    {
        this.feed = feed;
        FromMm = request.FromMm;
        FeedSteps = Math.Max(1, (int)Math.Round(feed / WantedMm));
        StepMm = feed / FeedSteps;
        Places = (int)Math.Floor(((request.Roll.LengthMm - FromMm) / StepMm) + 1e-9) + 1;
        SideSteps = Math.Min(MostShifts, (int)Math.Ceiling(request.GuidePlayMm / WantedMm));
        SideStepMm = SideSteps == 0 ? 0 : request.GuidePlayMm / SideSteps;
    }

    /// <summary>First place, mm.</summary>
    public double FromMm { get; }

    /// <summary>Step along the roll, mm.</summary>
    public double StepMm { get; }

    /// <summary>Steps in one feed.</summary>
    public int FeedSteps { get; }

    /// <summary>Places along the roll.</summary>
    public int Places { get; }

    /// <summary>Step across, mm; 0 where nothing is moved.</summary>
    public double SideStepMm { get; }

    /// <summary>Steps to either side.</summary>
    public int SideSteps { get; }

    /// <summary>Places across.</summary>
    public int Shifts => (2 * SideSteps) + 1;

    /// <summary>The grid of a question.</summary>
    /// <exception cref="InputException">So short a feed, or so long a roll, that it holds more strikes or places than can be
    /// planned.</exception>
    public static StrikeGrid Of(RollRequest request, double feed)
    {
        if (request.Roll.LengthMm / feed > MostStrikes)
        {
            throw TooShort(request, feed);
        }

        StrikeGrid grid = new(request, feed);
        return grid.Places <= MostPlaces
            ? grid
            : throw new InputException(AskedFor.PlanFrom, string.Create(
                CultureInfo.InvariantCulture,
                $"{request.FromMm:0.###} mm leaves {(request.Roll.LengthMm - request.FromMm) / 1000:0.###} m of roll {request.Roll.Name}: "
                    + $"strikes are planned on at most {MostPlaces * grid.StepMm / 1000:0.#} m at a time"));
    }

    /// <summary>Place number k along the roll, mm.</summary>
    public double XMm(int k) => FromMm + (k / FeedSteps * feed) + (k % FeedSteps * StepMm);

    /// <summary>Shift number s across, mm.</summary>
    public double ShiftMm(int s) => (s - SideSteps) * SideStepMm;

    private static InputException TooShort(RollRequest request, double feed) =>
        new(AskedFor.RepeatsPerStrike, string.Create(
            CultureInfo.InvariantCulture,
            $"{request.RepeatsPerStrike} gives a feed of {feed:0.###} mm and more than {MostStrikes} strikes: at least "
                + $"{Math.Ceiling(request.Roll.LengthMm / MostStrikes / (feed / request.RepeatsPerStrike)):0} is wanted"));
}
