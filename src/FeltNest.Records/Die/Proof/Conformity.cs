namespace FeltNest.Die.Proof;

/// <summary>What a measurement says of a tolerance, by ISO 14253-1.</summary>
internal enum Conformity
{
    /// <summary>Within the tolerance by more than the uncertainty, and nowhere unmeasured.</summary>
    Conforms,

    /// <summary>Outside the tolerance by more than the uncertainty.</summary>
    DoesNotConform,

    /// <summary>Neither is proved: too near to the limit, or too few points.</summary>
    Undecided,
}
