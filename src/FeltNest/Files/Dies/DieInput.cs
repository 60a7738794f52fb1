using FeltNest.Die.Check;
using FeltNest.Die.Order;
using FeltNest.Files.Layouts;

namespace FeltNest.Files.Dies;

/// <summary>A die file as read.</summary>
/// <param name="Layout">Its layout.</param>
/// <param name="Die">The die.</param>
/// <param name="Repeats">Repeats of the layout to one feed.</param>
/// <param name="Wear">Price and life, or null where not stated.</param>
/// <param name="Replaces">Die that it replaces, or null.</param>
/// <param name="PanelProfileMm">Profile tolerance of a cut panel.</param>
public sealed record DieInput(LayoutInput Layout, StatedDie Die, int Repeats, DieWear? Wear, string? Replaces, double PanelProfileMm);
