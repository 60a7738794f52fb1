using FeltNest.Files.Dies;
using FeltNest.Files.Layouts;
using FeltNest.Files.Rolls;

namespace FeltNest.Files;

/// <summary>A file to be verified, as read.</summary>
/// <param name="Layout">Its layout.</param>
/// <param name="Plan">The roll plan the layout is part of, or null.</param>
/// <param name="Die">The die the layout is part of, or null.</param>
public sealed record CheckedInput(LayoutInput Layout, RollPlanInput? Plan, DieInput? Die);
