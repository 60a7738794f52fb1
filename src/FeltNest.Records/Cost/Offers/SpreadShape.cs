namespace FeltNest.Cost.Offers;

/// <summary>How likely the values between low and high are.</summary>
public enum SpreadShape
{
    /// <summary>Most likely at the likely value, falling straight to both ends.</summary>
    Triangular,

    /// <summary>All alike.</summary>
    Uniform,

    /// <summary>Normal about the likely value; low and high lie two standard deviations off.</summary>
    Normal,
}
