using FeltNest.Files.Layouts;
using FeltNest.Files.Rolls;

namespace FeltNest.Files;

/// <summary>A file to be verified, as read.</summary>
/// <param name="Layout">Its layout.</param>
/// <param name="Plan">The roll plan the layout is part of, or null for a layout alone.</param>
public sealed record CheckedInput(LayoutInput Layout, RollPlanInput? Plan);
