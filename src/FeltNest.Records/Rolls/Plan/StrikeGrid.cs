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
    /// <exception cref="InputException">So short a feed that a roll holds more strikes than can be planned.</exception>
    public static StrikeGrid Of(RollRequest request, double feed) => request.Roll.LengthMm / feed <= MostStrikes
        ? new StrikeGrid(request, feed)
        : throw new InputException(AskedFor.RepeatsPerStrike, string.Create(
            CultureInfo.InvariantCulture,
            $"{request.RepeatsPerStrike} gives a feed of {feed:0.###} mm and more than {MostStrikes} strikes: at least "
                + $"{Math.Ceiling(request.Roll.LengthMm / MostStrikes / (feed / request.RepeatsPerStrike)):0} is wanted"));

    /// <summary>Place number k along the roll, mm.</summary>
    public double XMm(int k) => FromMm + (k / FeedSteps * feed) + (k % FeedSteps * StepMm);

    /// <summary>Shift number s across, mm.</summary>
    public double ShiftMm(int s) => (s - SideSteps) * SideStepMm;
}
