namespace FeltNest.Layout.Polish;

/// <summary>Where a panel of the repeat stands, as forms of the parameters: x and y in mm, angle in radians.</summary>
internal sealed record PanelPose
{
    public required AffineForm X { get; init; }

    public required AffineForm Y { get; init; }

    public required AffineForm Angle { get; init; }

    /// <summary>Lowest and highest y this panel may reach, mm, or null where the model's own limits hold.</summary>
    internal (double Lower, double Upper)? Within { get; init; }
}
