namespace FeltNest.Ball.Tolerance;

/// <summary>How often a part lies how far off within its plus-minus.</summary>
public enum ToleranceReading
{
    /// <summary>Every value within the plus-minus is as likely as any other; none lies outside.</summary>
    Uniform,

    /// <summary>Normal, the plus-minus being two standard deviations: 4.6 % of the parts lie outside.</summary>
    TwoSigma,
}
