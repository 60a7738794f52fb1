namespace FeltNest.Ball.Rules;

/// <summary>The ball table of the ITF Rules of Tennis, Appendix I, as far as it is known here.</summary>
/// <remarks>No row was read in the rule book itself. Adult rows follow C. Lindsey, <i>Tennis Ball Performance Testing</i>, 2021, a
/// secondary table. Of the stage rows the rebounds follow ITF, <i>About slower balls</i>, 2012; masses and diameters are from memory.
/// Limits are inclusive.</remarks>
public static class RuleTable
{
    /// <summary>Which editions the rows come from, and what the reader has to do about it.</summary>
    public const string Edition = "rows as quoted in 2021 (adult) and 2012 (stages): check the current rule book";

    private const string Adult = "C. Lindsey, Tennis Ball Performance Testing, 2021 (a secondary table)";
    private const string Stage = "rebound: ITF, About slower balls, 2012; mass and diameter from memory";

    private static readonly RuleRow[] Table =
    [
        new(RuleType.Type1, Quoted(56.0, 59.4), Quoted(65.4, 68.6), Quoted(138, 151), Adult),
        new(RuleType.Type2, Quoted(56.0, 59.4), Quoted(65.4, 68.6), Quoted(135, 147), Adult),
        new(RuleType.Type3, Quoted(56.0, 59.4), Quoted(70.0, 73.0), Quoted(135, 147), Adult),
        new(RuleType.HighAltitude, Quoted(56.0, 59.4), Quoted(65.4, 68.6), Quoted(122, 135), Adult),
        new(RuleType.Stage1, Memory(47.0, 51.5), Memory(63.0, 68.6), Quoted(120, 135), Stage),
        new(RuleType.Stage2, Memory(36.0, 46.9), Memory(60.0, 68.6), Quoted(105, 120), Stage),
        new(RuleType.Stage3Felt, Memory(36.0, 49.0), Memory(70.0, 80.0), Quoted(90, 105), Stage),
        new(RuleType.Stage3Foam, Memory(25.0, 43.0), Memory(80.0, 90.0), Quoted(85, 105), Stage),
    ];

    /// <summary>All rows.</summary>
    public static IReadOnlyList<RuleRow> Rows => Table;

    /// <summary>The row of a type, or null where no rule is asked for.</summary>
    public static RuleRow? Row(RuleType type) => Array.Find(Table, row => row.Type == type);

    private static RuleLimits Quoted(double low, double high) => new(low, high, RuleMark.Quoted);

    private static RuleLimits Memory(double low, double high) => new(low, high, RuleMark.Memory);
}
