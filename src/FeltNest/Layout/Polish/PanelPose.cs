namespace FeltNest.Layout.Polish;

/// <summary>Where a panel of the repeat stands, as forms of the parameters: x and y in mm, angle in radians.</summary>
internal sealed record PanelPose(AffineForm X, AffineForm Y, AffineForm Angle)
{
    /// <summary>Lowest and highest y this panel may reach, mm, or null where the model's own limits hold.</summary>
    internal (double Lower, double Upper)? Within { get; init; }
}
