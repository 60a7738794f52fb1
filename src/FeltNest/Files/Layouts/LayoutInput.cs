using FeltNest.Layout;

namespace FeltNest.Files.Layouts;

/// <summary>A layout file as read.</summary>
/// <param name="Layout">The layout.</param>
/// <param name="Stated">Figures the file states that follow from the rest of it.</param>
internal sealed record LayoutInput(RollLayout Layout, IReadOnlyList<StatedFigure> Stated);
