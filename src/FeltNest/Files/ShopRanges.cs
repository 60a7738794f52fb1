using FeltNest.Ball.Ranges;
using FeltNest.Layout.Limits;

namespace FeltNest.Files;

/// <summary>What quantities of the shop may be that several documents, options or fields of the page set: one range for one
/// quantity.</summary>
internal static class ShopRanges
{
    // Greatest sound amount of money: beyond it a slip of the keys is likelier.
    private const double MostMoney = 1_000_000_000;

    /// <summary>Longest roll, m.</summary>
    public const double MostRollM = 100_000;

    /// <summary>Most strikes, balls or panels: as many as a die may last, so that sums of whole lists can be held.</summary>
    public const int MostCount = 1_000_000_000;

    /// <summary>Most days that felt or a die is waited for: ten years.</summary>
    public const int MostWaitDays = 3650;

    /// <summary>A length on the table: width of a roll, length of a repeat.</summary>
    public static readonly FieldRange Length = new()
    {
        Field = "lengthMm",
        Low = LayoutLimits.LeastLengthMm,
        High = LayoutLimits.MostLengthMm,
        Unit = "mm",
        Reason = "sound lengths run from 0.1 mm to 100 m",
    };

    /// <summary>A length that may be none: a trim, a gap.</summary>
    public static readonly FieldRange LengthOrNone = new()
    {
        Field = "lengthMm",
        Low = 0,
        High = LayoutLimits.MostLengthMm,
        Unit = "mm",
        Reason = "sound lengths run to 100 m",
    };

    /// <summary>How far a panel may lie off its angle to the warp.</summary>
    public static readonly FieldRange WarpTolerance = new()
    {
        Field = "warpToleranceDeg",
        Low = 0,
        High = 90,
        Unit = "degrees",
        Reason = "90 already allows every angle",
    };

    /// <summary>Length of a roll, on offer, in stock or measured.</summary>
    public static readonly FieldRange RollLength = new()
    {
        Field = "lengthM",
        Low = 0.1,
        High = MostRollM,
        Unit = "m",
        Reason = "sound rolls run from 0.1 m to 100 km",
    };

    /// <summary>Width of a roll on offer, in stock or as it was cut.</summary>
    public static readonly FieldRange RollWidth = new()
    {
        Field = "widthMm",
        Low = 10,
        High = 10_000,
        Unit = "mm",
        Reason = "looms end well before",
    };

    /// <summary>Edge trim of a roll on offer.</summary>
    public static readonly FieldRange EdgeTrim = new()
    {
        Field = "edgeMm",
        Low = 0,
        High = 1000,
        Unit = "mm",
        Reason = "selvedges are narrower",
    };

    /// <summary>Length lost at each end of a roll.</summary>
    public static readonly FieldRange EndLoss = new() { Field = "endLossMm", Low = 0, High = 100_000, Unit = "mm", Reason = string.Empty };

    /// <summary>Felt on each side of a roll splice that no strike touches.</summary>
    public static readonly FieldRange SpliceClear = new()
    {
        Field = "clearMm",
        Low = 0,
        High = 1000,
        Unit = "mm",
        Reason = "a splice that spoils more is the end of a roll",
    };

    /// <summary>Share of panels lost: to faults, rejected, without a partner.</summary>
    public static readonly FieldRange LossShare = new() { Field = "faultPercent", Low = 0, High = 90, Unit = "%", Reason = string.Empty };

    /// <summary>Price of felt for one unit.</summary>
    public static readonly FieldRange FeltPrice = new()
    {
        Field = "price",
        Low = 0.0001,
        High = MostMoney,
        Unit = string.Empty,
        Reason = string.Empty,
    };

    /// <summary>An amount of money.</summary>
    public static readonly FieldRange Money = new()
    {
        Field = "price",
        Low = 0,
        High = MostMoney,
        Unit = string.Empty,
        Reason = string.Empty,
    };

    /// <summary>An amount of money of a whole plan: far above any sound one, far below where sums of amounts cannot be held.</summary>
    public static readonly FieldRange PlanAmount = new()
    {
        Field = "amount",
        Low = -1e12,
        High = 1e12,
        Unit = string.Empty,
        Reason = string.Empty,
    };

    /// <summary>Strikes until a rule is dull.</summary>
    public static readonly FieldRange LifeStrikes = new()
    {
        Field = "lifeStrikes",
        Low = 1,
        High = MostCount,
        Unit = string.Empty,
        Reason = string.Empty,
    };

    /// <summary>How often a die may be ruled again.</summary>
    public static readonly FieldRange ReRules = new()
    {
        Field = "reRules",
        Low = 0,
        High = 1000,
        Unit = string.Empty,
        Reason = string.Empty,
    };

    /// <summary>Thickness of felt as cut, for a die: as of a ball's felt.</summary>
    public static readonly FieldRange FeltThickness = BallRanges.FeltThickness;

    /// <summary>Mass per area of felt as bought: as of a ball's felt.</summary>
    public static readonly FieldRange MassPerArea = BallRanges.FeltMass;

    /// <summary>Layers of felt under a strike of a press.</summary>
    public static readonly FieldRange Plies = new() { Field = "plies", Low = 1, High = 100, Unit = string.Empty, Reason = string.Empty };

    /// <summary>Hours a press runs on a working day.</summary>
    public static readonly FieldRange HoursPerDay = new()
    {
        Field = "hoursPerDay",
        Low = 0.1,
        High = 24,
        Unit = "hours",
        Reason = string.Empty,
    };

    /// <summary>Weight of a day late of an order.</summary>
    public static readonly FieldRange Priority = new()
    {
        Field = "priority",
        Low = 1,
        High = 9,
        Unit = string.Empty,
        Reason = string.Empty,
    };

    /// <summary>Minutes to take one roll off a press and put the next on.</summary>
    public static readonly FieldRange RollChange = new()
    {
        Field = "rollChangeMinutes",
        Low = 0,
        High = 10_000,
        Unit = string.Empty,
        Reason = string.Empty,
    };

    /// <summary>What felt is worth that goes back to stock, of its price.</summary>
    public static readonly FieldRange RemnantValue = new()
    {
        Field = "remnantValuePercent",
        Low = 0,
        High = 100,
        Unit = "%",
        Reason = string.Empty,
    };

    /// <summary>Shortest remnant kept, or shortest piece cut.</summary>
    public static readonly FieldRange LeastPiece = new() { Field = "leastCutM", Low = 0, High = 1000, Unit = "m", Reason = string.Empty };

    /// <summary>Length or width of a press's bed.</summary>
    public static readonly FieldRange BedSide = new() { Field = "lengthMm", Low = 20, High = 10_000, Unit = "mm", Reason = string.Empty };

    /// <summary>Margin of a press's bed.</summary>
    public static readonly FieldRange BedMargin = new() { Field = "marginMm", Low = 0, High = 500, Unit = "mm", Reason = string.Empty };

    /// <summary>Force of a press.</summary>
    public static readonly FieldRange PressForce = new()
    {
        Field = "ratedForceKn",
        Low = 1,
        High = 20_000,
        Unit = "kN",
        Reason = string.Empty,
    };

    /// <summary>How far the feed may stop off its length.</summary>
    public static readonly FieldRange FeedTolerance = new()
    {
        Field = "feedToleranceMm",
        Low = 0,
        High = 20,
        Unit = "mm",
        Reason = string.Empty,
    };

    /// <summary>How far the side guide may let the felt wander.</summary>
    public static readonly FieldRange GuideTolerance = new()
    {
        Field = "guideToleranceMm",
        Low = 0,
        High = 20,
        Unit = "mm",
        Reason = string.Empty,
    };
}
