namespace FeltNest.Layout.Polish;

/// <summary>Two panels that may meet: the second one's copy stands at the given forms from the first.</summary>
internal sealed record PanelPair
{
    public required int First { get; init; }

    public required int Second { get; init; }

    public required AffineForm OffsetX { get; init; }

    public required AffineForm OffsetY { get; init; }
}
