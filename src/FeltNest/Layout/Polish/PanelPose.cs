namespace FeltNest.Layout.Polish;

/// <summary>Where a panel of the repeat stands, as forms of the parameters: x and y in mm, angle in radians.</summary>
internal sealed record PanelPose(AffineForm X, AffineForm Y, AffineForm Angle);
