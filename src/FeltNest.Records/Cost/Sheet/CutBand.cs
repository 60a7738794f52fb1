namespace FeltNest.Cost.Sheet;

/// <summary>One band of a lay as it is cut.</summary>
internal sealed record CutBand
{
    /// <summary>Length of a repeat, mm.</summary>
    public required double RepeatMm { get; init; }

    /// <summary>How far a strike reaches past its feed, mm: the last one on a roll needs so much more; below 0 so much less.</summary>
    public double OverhangMm { get; init; }

    /// <summary>Panels in a repeat.</summary>
    public required int Panels { get; init; }

    /// <summary>Area of all of them together, mm2.</summary>
    public required double PanelAreaMm2 { get; init; }

    /// <summary>Width of cloth the band takes, mm.</summary>
    public required double HeightMm { get; init; }

    /// <summary>Strikes that one repeat takes; 1 where a die cuts a whole repeat or more.</summary>
    public required int StrikesPerRepeat { get; init; }
}
