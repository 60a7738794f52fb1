namespace FeltNest.Rolls;

/// <summary>A cutting press as its maker and its shop state it. A geometry check against it is not approval to run.</summary>
/// <param name="Name">Name in the shop.</param>
/// <param name="RatedForceKn">Force that the maker rates it for, kN.</param>
/// <param name="AllowedSharePercent">Most of the rating to be used, %. 80 is common practice, no source.</param>
/// <param name="Bed">Where it can cut.</param>
/// <param name="DaylightMm">Opening between bed and head, mm; null where it is not stated.</param>
/// <param name="StrokesPerMinute">Strikes a minute that it really keeps up, feeding included.</param>
/// <param name="ChangeOverMinutes">Minutes to take one die out and set up the next.</param>
/// <param name="Hours">Hours it may run in the time planned for; null where it is not stated.</param>
/// <param name="MostPlies">Most layers of felt under one strike.</param>
/// <param name="FeedToleranceMm">How far the feed may stop short of or past the length set, mm.</param>
/// <param name="GuideToleranceMm">How far the side guide may let the felt wander to either side, mm.</param>
/// <param name="Dies">Names of the dies that fit its mounting; empty where every die does that its bed takes.</param>
public sealed record PressSpec(
    string Name, double RatedForceKn, double AllowedSharePercent, PressBed Bed, double? DaylightMm, double StrokesPerMinute,
    double ChangeOverMinutes,
    double? Hours, int MostPlies, double FeedToleranceMm, double GuideToleranceMm, IReadOnlyList<string> Dies)
{
    /// <summary>Share of the rating that is used where none is stated, %. Common practice, no source: the rest is for a dull edge and a
    /// high spot.</summary>
    public const double UsualSharePercent = 80;

    /// <summary>Most force to be used, kN.</summary>
    public double AllowedForceKn => RatedForceKn * AllowedSharePercent / 100;
}
