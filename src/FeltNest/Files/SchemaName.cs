namespace FeltNest.Files;

/// <summary>Names by which the files say what they are.</summary>
internal static class SchemaName
{
    /// <summary>Ball specification.</summary>
    public const string Ball = "feltnest/ball/1";

    /// <summary>Flat outline.</summary>
    public const string Outline = "feltnest/outline/1";

    /// <summary>Computed flat panel.</summary>
    public const string Panel = "feltnest/panel/1";

    /// <summary>Flat outline laid on a ball.</summary>
    public const string Wrap = "feltnest/wrap/1";

    /// <summary>Panels traced from a picture.</summary>
    public const string Trace = "feltnest/trace/1";

    /// <summary>Readings of a trial wrap.</summary>
    public const string Trial = "feltnest/trial/1";

    /// <summary>Budget of the seam gap.</summary>
    public const string GapBudget = "feltnest/gap-budget/1";

    /// <summary>Felt of one lot, measured.</summary>
    public const string Felt = "feltnest/felt/1";

    /// <summary>A die against a new lot of felt.</summary>
    public const string Lot = "feltnest/lot/1";

    /// <summary>Roll layout.</summary>
    public const string Layout = "feltnest/layout/1";

    /// <summary>Study of waists.</summary>
    public const string Waist = "feltnest/waist/1";

    /// <summary>Ball fitted to a measured outline.</summary>
    public const string Proven = "feltnest/proven/1";

    /// <summary>Seam families side by side.</summary>
    public const string Seams = "feltnest/seams/1";

    /// <summary>Seams designed for least felt.</summary>
    public const string SeamDesign = "feltnest/seam-design/1";

    /// <summary>Costs of a shop.</summary>
    public const string Costs = "feltnest/costs/1";

    /// <summary>Widths or offers side by side.</summary>
    public const string Compare = "feltnest/compare/1";

    /// <summary>Widths to stock for a family of balls.</summary>
    public const string Family = "feltnest/family/1";

    /// <summary>One real roll.</summary>
    public const string Roll = "feltnest/roll/1";

    /// <summary>Strikes planned for one roll.</summary>
    public const string RollPlan = "feltnest/roll-plan/1";

    /// <summary>What a shop wants of a die.</summary>
    public const string DieOrder = "feltnest/die-order/1";

    /// <summary>Gang die.</summary>
    public const string Die = "feltnest/die/1";

    /// <summary>Measured panel judged.</summary>
    public const string FirstArticle = "feltnest/first-article/1";

    /// <summary>A maker's answer to a request for a quote.</summary>
    public const string DieQuote = "feltnest/die-quote/1";

    /// <summary>Die as it was made, judged.</summary>
    public const string MadeDie = "feltnest/made-die/1";

    /// <summary>Life of a die.</summary>
    public const string DieLife = "feltnest/die-life/1";

    /// <summary>Orders planned against stock.</summary>
    public const string OrderPlan = "feltnest/order-plan/1";

    /// <summary>Verdict of a check.</summary>
    public const string Check = "feltnest/check/1";

    /// <summary>A cutting press.</summary>
    public const string Press = "feltnest/press/1";

    /// <summary>Felt of a period's tickets against standard.</summary>
    public const string PeriodUsage = "feltnest/period-usage/1";

    /// <summary>Felt used against standard.</summary>
    public const string Usage = "feltnest/usage/1";
}
