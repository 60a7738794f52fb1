using FeltNest.Layout;
using FeltNest.Rolls;

namespace FeltNest.Page.Inputs;

/// <summary>What the page asks with. Lengths in mm, shares in per cent.</summary>
internal sealed record PageInputs
{
    /// <summary>The ball.</summary>
    public required PageCover Cover { get; init; }

    /// <summary>Roll width.</summary>
    public required double WidthMm { get; init; }

    /// <summary>Gap.</summary>
    public required double GapMm { get; init; }

    /// <summary>Trim at the lower selvedge.</summary>
    public required double LowerTrimMm { get; init; }

    /// <summary>Trim at the upper selvedge.</summary>
    public required double UpperTrimMm { get; init; }

    /// <summary>Which tilts may be mixed.</summary>
    public required RowRule Rows { get; init; }

    /// <summary>Angle to the warp, degrees; null where the panel's design or any angle serves, as <see cref="WarpFree"/>
    /// says.</summary>
    public required double? Warp { get; init; }

    /// <summary>True where any angle may be used whatever the design.</summary>
    public required bool WarpFree { get; init; }

    /// <summary>No half-turns.</summary>
    public required bool OneWay { get; init; }

    /// <summary>Counted work of the refined answer.</summary>
    public required int Effort { get; init; }

    /// <summary>Price and losses.</summary>
    public required PageMoney Money { get; init; }

    /// <summary>The press that the die is for, or null where none is stated.</summary>
    public required PressSpec? Press { get; init; }
}
