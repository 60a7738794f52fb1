namespace FeltNest.Rolls.Plan;

/// <summary>Why a panel of a strike is lost; where several hold, the first of this list is given.</summary>
public enum LossCause
{
    /// <summary>It reaches past the end of the roll.</summary>
    RollEnd,

    /// <summary>A joint runs through it.</summary>
    Joint,

    /// <summary>It leaves the usable width at its place, or touches a stripe the layout forbids.</summary>
    Width,

    /// <summary>It touches a fault.</summary>
    Fault,
}
