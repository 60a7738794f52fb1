namespace FeltNest.Die.Order;

/// <summary>Where the cutting edge stands over the rule's body.</summary>
public enum RuleBevel
{
    /// <summary>Edge over the middle of the body.</summary>
    Centre,

    /// <summary>Edge over the middle, ground long: less force in thick stock.</summary>
    LongCentre,

    /// <summary>Edge flush with the panel's side, bevel to the waste.</summary>
    SideWaste,

    /// <summary>Edge flush with the waste's side, bevel to the panel.</summary>
    SidePanel,
}
