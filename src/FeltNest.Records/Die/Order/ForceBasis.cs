namespace FeltNest.Die.Order;

/// <summary>Where a force per mm comes from.</summary>
public enum ForceBasis
{
    /// <summary>A figure to plan with that nobody has measured: no press is set from it.</summary>
    Placeholder,

    /// <summary>Measured on the shop's own felt.</summary>
    Measured,
}
