namespace FeltNest.Layout;

/// <summary>Which tilts the rows of one layout may mix.</summary>
public enum RowRule
{
    /// <summary>All panels parallel.</summary>
    Same,

    /// <summary>Rows at +a and -a.</summary>
    Alternate,

    /// <summary>Each row its own tilt within what the warp angle allows.</summary>
    Any,
}
