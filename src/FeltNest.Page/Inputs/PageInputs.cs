using FeltNest.Layout;
using FeltNest.Rolls;

namespace FeltNest.Page.Inputs;

/// <summary>What the page asks with. Lengths in mm, shares in per cent.</summary>
/// <param name="Cover">The ball.</param>
/// <param name="WidthMm">Roll width.</param>
/// <param name="GapMm">Gap.</param>
/// <param name="LowerTrimMm">Trim at the lower selvedge.</param>
/// <param name="UpperTrimMm">Trim at the upper selvedge.</param>
/// <param name="Rows">Which tilts may be mixed.</param>
/// <param name="Warp">Angle to the warp, degrees; null where the panel's design or any angle serves, as <paramref name="WarpFree"/>
/// says.</param>
/// <param name="WarpFree">True where any angle may be used whatever the design.</param>
/// <param name="OneWay">No half-turns.</param>
/// <param name="Effort">Counted work of the refined answer.</param>
/// <param name="Money">Price and losses.</param>
/// <param name="Press">The press that the die is for, or null where none is stated.</param>
internal sealed record PageInputs(
    PageCover Cover, double WidthMm, double GapMm, double LowerTrimMm, double UpperTrimMm, RowRule Rows, double? Warp, bool WarpFree,
    bool OneWay, int Effort,
    PageMoney Money, PressSpec? Press);
