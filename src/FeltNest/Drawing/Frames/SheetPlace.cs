namespace FeltNest.Drawing.Frames;

/// <summary>Where a sheet stands in a set.</summary>
/// <param name="Number">From 1.</param>
/// <param name="Count">Sheets in the set.</param>
/// <param name="Scale">Scale as written.</param>
/// <param name="Part">What it shows, for the supplementary title where none is given.</param>
public readonly record struct SheetPlace(int Number, int Count, string Scale, string Part);
