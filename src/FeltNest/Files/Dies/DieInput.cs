using FeltNest.Die.Check;
using FeltNest.Die.Order;
using FeltNest.Files.Layouts;

namespace FeltNest.Files.Dies;

/// <summary>A die file as read.</summary>
internal sealed record DieInput
{
    /// <summary>Its layout.</summary>
    public required LayoutInput Layout { get; init; }

    /// <summary>The die.</summary>
    public required StatedDie Die { get; init; }

    /// <summary>Repeats of the layout to one feed.</summary>
    public required int Repeats { get; init; }

    /// <summary>Price and life, or null where not stated.</summary>
    public required DieWear? Wear { get; init; }

    /// <summary>Die that it replaces, or null.</summary>
    public required string? Replaces { get; init; }

    /// <summary>Profile tolerance of a cut panel.</summary>
    public required double PanelProfileMm { get; init; }
}
