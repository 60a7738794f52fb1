namespace FeltNest.Layout.Polish;

/// <summary>Two panels that may meet: the second one's copy stands at the given forms from the first.</summary>
internal sealed record PanelPair(int First, int Second, AffineForm OffsetX, AffineForm OffsetY);
