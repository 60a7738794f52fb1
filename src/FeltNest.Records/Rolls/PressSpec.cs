using FeltNest.Rolls.Orders.Clock;

namespace FeltNest.Rolls;

/// <summary>A cutting press as its maker and its shop state it. A geometry check against it is not approval to run.</summary>
public sealed record PressSpec
{
    /// <summary>Name in the shop.</summary>
    public required string Name { get; init; }

    /// <summary>Force that the maker rates it for, kN.</summary>
    public required double RatedForceKn { get; init; }

    /// <summary>Most of the rating to be used, %. 80 is common practice, no source.</summary>
    public required double AllowedSharePercent { get; init; }

    /// <summary>Where it can cut.</summary>
    public required PressBed Bed { get; init; }

    /// <summary>Opening between bed and head, mm; null where it is not stated.</summary>
    public required double? DaylightMm { get; init; }

    /// <summary>Strikes a minute that it really keeps up, feeding included.</summary>
    public required double StrokesPerMinute { get; init; }

    /// <summary>Minutes to take one die out and set up the next.</summary>
    public required double ChangeOverMinutes { get; init; }

    /// <summary>Minutes to take one roll off and put the next on.</summary>
    public double RollChangeMinutes { get; init; }

    /// <summary>Name of the die that stands on it when cutting begins, or null for none.</summary>
    public string? MountedDie { get; init; }

    /// <summary>When it runs; null for the usual days of the plan.</summary>
    public PressCalendar? Calendar { get; init; }

    /// <summary>Hours it may run in the time planned for at most, changes of dies and rolls included; null where it is not
    /// stated.</summary>
    public required double? Hours { get; init; }

    /// <summary>Most layers of felt under one strike.</summary>
    public required int MostPlies { get; init; }

    /// <summary>How far the feed may stop short of or past the length set, mm.</summary>
    public required double FeedToleranceMm { get; init; }

    /// <summary>How far the side guide may let the felt wander to either side, mm.</summary>
    public required double GuideToleranceMm { get; init; }

    /// <summary>Names of the dies that fit its mounting; empty where every die does that its bed takes.</summary>
    public required IReadOnlyList<string> Dies { get; init; }

    /// <summary>Share of the rating that is used where none is stated, %. Common practice, no source: the rest is for a dull edge and a
    /// high spot.</summary>
    public const double UsualSharePercent = 80;

    /// <summary>Most force to be used, kN.</summary>
    public double AllowedForceKn => RatedForceKn * AllowedSharePercent / 100;
}
