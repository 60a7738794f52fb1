namespace FeltNest.Files;

/// <summary>Names of the fields that the checks of layouts, roll plans, dies and plans of orders hold against something. A test spoils
/// every number of such files and sees that those of these names are found.</summary>
internal static class CheckedFields
{
    private static readonly string[] Layout =
    [
        "panels.areaMm2", "panels.perimeterMm", "panels.massPerAreaGsm", "panels.outline", "panels.arcs", "roll", "gapMm", "rules",
        "repeat", "bands", "yield",
    ];

    private static readonly string[] RollPlan =
    [
        "goodPanels", "backToBackGoodPanels", "balls", "parts.goodPanels", "parts.balls", "better.goodPanels", "better.gainPercent",
        "guidePlayMm", "fromMm", "pastEnd", "lostPanels", "strikes", "pattern.repeats", "pattern.feedMm",
        "pattern.panels", "roll.lengthM", "roll.widths", "roll.joints", "roll.faults",
    ];

    private static readonly string[] Die =
    [
        "cavities.panel", "cavities.xMm", "cavities.yMm", "cavities.angleDeg", "feedMm", "ruleLengthMm", "edgeLengthMm", "forceKn",
        "commonCuts", "leastGapMm", "edges.arcs", "strike.band", "strike.places", "strike.originXMm", "strike.originYMm", "joint",
        "board.lengthMm", "board.widthMm", "board.landMm", "rule.thicknessMm", "rule.bevel", "force.nPerMmPerPly", "force.plies",
        "force.closeAddedMm", "force.lengthMm", "force.ejectionPercent", "force.reservePercent",
    ];

    private static readonly string[] OrderPlan =
    [
        "cost", "bound", "gapPercent", "badlyShort", "assignments.order", "assignments.roll", "assignments.die", "assignments.press",
        "assignments.goodBalls", "assignments.strikes", "assignments.fromM", "assignments.startHour", "assignments.endHour",
        "purchases.offer", "purchases.rolls", "shortfalls.order", "shortfalls.balls", "shortfalls.reserveBalls", "late.order", "late.days",
        "remnants.roll", "remnants.lengthM", "remnants.begun", "remnants.reserved", "dies.die", "dies.strikes",
        "dies.mountings", "assignments.rollChange", "mountings.die", "mountings.press", "mountings.startHour", "mountings.endHour",
        "mountings.paid", "overtime.press", "overtime.from", "overtime.hours", "changes.order", "changes.what", "changes.after",
        "search.leastLate", "search.leastWeightedDays",
    ];

    /// <summary>The names, by the kind of file; none for results whose own check says what it looks at.</summary>
    public static IEnumerable<string> Of(string schema) => schema switch
    {
        SchemaName.Layout => Layout,
        SchemaName.RollPlan => [.. RollPlan, .. Layout.Select(name => $"layout.{name}")],
        SchemaName.Die => [.. Die, .. Layout.Select(name => $"layout.{name}")],
        SchemaName.OrderPlan => OrderPlan,
        _ => [],
    };
}
