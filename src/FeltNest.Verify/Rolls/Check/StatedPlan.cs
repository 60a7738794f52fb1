using FeltNest.Layout;

namespace FeltNest.Rolls.Check;

/// <summary>What a roll plan states, to be checked against its layout and roll.</summary>
internal sealed record StatedPlan
{
    /// <summary>Repeats in one strike.</summary>
    public required int Repeats { get; init; }

    /// <summary>Feed, mm.</summary>
    public required double FeedMm { get; init; }

    /// <summary>Panels of one strike in its frame.</summary>
    public required IReadOnlyList<PlacedPanel> Panels { get; init; }

    /// <summary>Greatest shift to either side, mm.</summary>
    public required double GuidePlayMm { get; init; }

    /// <summary>Where whole cloth begins, mm.</summary>
    public required double FromMm { get; init; }

    /// <summary>True where strikes may reach past the end of the roll.</summary>
    public bool PastEnd { get; init; }

    /// <summary>What is stated of each part; empty where nothing is.</summary>
    public IReadOnlyList<StatedPart> Parts { get; init; } = [];

    /// <summary>Balls of all parts; null where they are not stated.</summary>
    public int? Balls { get; init; }

    /// <summary>Good panels with a layout made for the roll, and how many more that are, per cent; null where nothing is stated.</summary>
    public (int GoodPanels, double GainPercent)? Better { get; init; }

    /// <summary>Strikes.</summary>
    public required IReadOnlyList<StatedStrike> Strikes { get; init; }

    /// <summary>Good panels of all strikes.</summary>
    public required int GoodPanels { get; init; }

    /// <summary>Good panels of strikes in line from the start.</summary>
    public required int BackToBackGoodPanels { get; init; }

    /// <summary>Lost panels of all strikes, all causes.</summary>
    public required long LostPanels { get; init; }
}
