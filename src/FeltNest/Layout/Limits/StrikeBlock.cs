namespace FeltNest.Layout.Limits;

/// <summary>The die of a repeat: the first panels of the repeat's list are its cavities, and the repeat is these struck <paramref name="Across"/> times, each strike moved by the step.</summary>
/// <param name="Panels">Cavities of the die.</param>
/// <param name="Across">Strikes that cut one repeat.</param>
/// <param name="StepXMm">Move along the roll from strike to strike, mm, up to whole repeats; 0 for a single strike.</param>
/// <param name="StepYMm">Move across from strike to strike, mm; 0 for a single strike.</param>
/// <param name="LengthMm">Extent of the die's cut edges along the roll, mm.</param>
/// <param name="WidthMm">Extent across, mm.</param>
public sealed record StrikeBlock(int Panels, int Across, double StepXMm, double StepYMm, double LengthMm, double WidthMm);
