using FeltNest.Ball.Ranges;
using FeltNest.Layout.Limits;

namespace FeltNest.Files;

/// <summary>What quantities of the shop may be that several documents, options or fields of the page set: one range for one
/// quantity.</summary>
public static class ShopRanges
{
    // Greatest sound amount of money: beyond it a slip of the keys is likelier.
    private const double MostMoney = 1_000_000_000;

    /// <summary>Longest roll, m.</summary>
    public const double MostRollM = 100_000;

    /// <summary>Most strikes, balls or panels: as many as a die may last, so that sums of whole lists can be held.</summary>
    public const int MostCount = 1_000_000_000;

    /// <summary>A length on the table: width of a roll, length of a repeat.</summary>
    public static readonly FieldRange Length = new(
        "lengthMm", LayoutLimits.LeastLengthMm, LayoutLimits.MostLengthMm, "mm", "sound lengths run from 0.1 mm to 100 m");

    /// <summary>A length that may be none: a trim, a gap.</summary>
    public static readonly FieldRange LengthOrNone = new("lengthMm", 0, LayoutLimits.MostLengthMm, "mm", "sound lengths run to 100 m");

    /// <summary>How far a panel may lie off its angle to the warp.</summary>
    public static readonly FieldRange WarpTolerance = new("warpToleranceDeg", 0, 90, "degrees", "90 already allows every angle");

    /// <summary>Length of a roll, on offer, in stock or measured.</summary>
    public static readonly FieldRange RollLength = new("lengthM", 0.1, MostRollM, "m", "sound rolls run from 0.1 m to 100 km");

    /// <summary>Width of a roll on offer, in stock or as it was cut.</summary>
    public static readonly FieldRange RollWidth = new("widthMm", 10, 10_000, "mm", "looms end well before");

    /// <summary>Edge trim of a roll on offer.</summary>
    public static readonly FieldRange EdgeTrim = new("edgeMm", 0, 1000, "mm", "selvedges are narrower");

    /// <summary>Length lost at each end of a roll.</summary>
    public static readonly FieldRange EndLoss = new("endLossMm", 0, 100_000, "mm", string.Empty);

    /// <summary>Share of panels lost: to faults, rejected, without a partner.</summary>
    public static readonly FieldRange LossShare = new("faultPercent", 0, 90, "%", string.Empty);

    /// <summary>Price of felt for one unit.</summary>
    public static readonly FieldRange FeltPrice = new("price", 0.0001, MostMoney, string.Empty, string.Empty);

    /// <summary>An amount of money.</summary>
    public static readonly FieldRange Money = new("price", 0, MostMoney, string.Empty, string.Empty);

    /// <summary>An amount of money of a whole plan: far above any sound one, far below where sums of amounts cannot be held.</summary>
    public static readonly FieldRange PlanAmount = new("amount", -1e12, 1e12, string.Empty, string.Empty);

    /// <summary>Strikes until a rule is dull.</summary>
    public static readonly FieldRange LifeStrikes = new("lifeStrikes", 1, MostCount, string.Empty, string.Empty);

    /// <summary>How often a die may be ruled again.</summary>
    public static readonly FieldRange ReRules = new("reRules", 0, 1000, string.Empty, string.Empty);

    /// <summary>Thickness of felt as cut, for a die: as of a ball's felt.</summary>
    public static readonly FieldRange FeltThickness = BallRanges.FeltThickness;

    /// <summary>Mass per area of felt as bought: as of a ball's felt.</summary>
    public static readonly FieldRange MassPerArea = BallRanges.FeltMass;

    /// <summary>Layers of felt under a strike of a press.</summary>
    public static readonly FieldRange Plies = new("plies", 1, 100, string.Empty, string.Empty);

    /// <summary>Hours a press runs on a working day.</summary>
    public static readonly FieldRange HoursPerDay = new("hoursPerDay", 0.1, 24, "hours", string.Empty);

    /// <summary>What felt is worth that goes back to stock, of its price.</summary>
    public static readonly FieldRange RemnantValue = new("remnantValuePercent", 0, 100, "%", string.Empty);

    /// <summary>Shortest remnant kept, or shortest piece cut.</summary>
    public static readonly FieldRange LeastPiece = new("leastCutM", 0, 1000, "m", string.Empty);

    /// <summary>Length or width of a press's bed.</summary>
    public static readonly FieldRange BedSide = new("lengthMm", 20, 10_000, "mm", string.Empty);

    /// <summary>Margin of a press's bed.</summary>
    public static readonly FieldRange BedMargin = new("marginMm", 0, 500, "mm", string.Empty);

    /// <summary>Force of a press.</summary>
    public static readonly FieldRange PressForce = new("ratedForceKn", 1, 20_000, "kN", string.Empty);

    /// <summary>How far the feed may stop off its length.</summary>
    public static readonly FieldRange FeedTolerance = new("feedToleranceMm", 0, 20, "mm", string.Empty);

    /// <summary>How far the side guide may let the felt wander.</summary>
    public static readonly FieldRange GuideTolerance = new("guideToleranceMm", 0, 20, "mm", string.Empty);
}
