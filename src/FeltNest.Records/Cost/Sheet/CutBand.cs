namespace FeltNest.Cost.Sheet;

/// <summary>One band of a lay as it is cut.</summary>
/// <param name="RepeatMm">Length of a repeat, mm.</param>
/// <param name="Panels">Panels in a repeat.</param>
/// <param name="PanelAreaMm2">Area of all of them together, mm2.</param>
/// <param name="HeightMm">Width of cloth the band takes, mm.</param>
/// <param name="StrikesPerRepeat">Strikes that one repeat takes; 1 where a die cuts a whole repeat or more.</param>
public sealed record CutBand(double RepeatMm, int Panels, double PanelAreaMm2, double HeightMm, int StrikesPerRepeat);
