namespace FeltNest.Die;

/// <summary>Cautions printed with everything a die or a press is set from. No option leaves them out.</summary>
internal static class SafetyWords
{
    /// <summary>What goes before a die, on drawings and on sheets of computed panels.</summary>
    public const string Trial = "Computed: cut and wrap a trial pair before a die is made.";

    /// <summary>Who comes first.</summary>
    public static IReadOnlyList<string> Deferral { get; } =
    [
        "Local codes, the machine maker's instructions and qualified or licensed people come first.",
        "This sheet is no risk assessment, and a check of geometry is no permission to run.",
    ];

    /// <summary>The block of the die sheet.</summary>
    public static IReadOnlyList<string> Block { get; } =
    [
        "1  Strike by two-hand control or fitted guard only, never bypassed or shared. It protects only the operator.",
        "2  Isolate, lock out, check that the power is off before changing die, board or ejection or clearing a jam. Block the head.",
        "3  Start of each shift: try guards, stop and two-hand control. If one fails, do not cut.",
        "4  Carry a die by board or handles, edge covered, in cut-resistant gloves. Never catch a falling die. Rack it edge safe.",
        "5  Force within the rating and central. Begin low, raise until it just cuts; more is no cure for a dull edge.",
        "6  Look for lifted rule, cracked joints and loose ejection. Take damaged dies out and tag them.",
        "7  Coated felt, rubber solution: flammable vapour, heavier than air. Extract low, no sparks; earth (ground) the rolls.",
        "8  Keep hands out of feed rollers and turning rolls. Know a die's mass before lifting. Off-centre load within the maker's limit.",
        "9  Fibre dust: extract, never blow. Eye and ear protection as assessed. Lift rolls with aids.",
    ];

    /// <summary>Standards to look into; which law holds depends on the place.</summary>
    public static IReadOnlyList<string> Standards { get; } =
    [
        "See EN 12044 (relevant, not by itself enough), ISO 12100, 13850, 13851, 13855, 13857, 14118, 14120, OSHA 1910.212, 1910.147, "
            + "1910.106. Check the current edition; which law applies depends on the place.",
    ];

    /// <summary>The block on a ticket.</summary>
    public static IReadOnlyList<string> Ticket { get; } =
    [
        "Local codes, the machine maker's instructions and qualified people come first. This ticket is no risk assessment.",
        "- Strike by two-hand control or guard only, never bypassed. It protects only the operator: others keep clear.",
        "- Power off and locked before a hand goes under the head, for a jam too. Check that it is off. Block the head.",
        "- Start of shift: try guards, stop and two-hand control. If one fails, do not cut.",
        "- Carry a die with its edge covered, in cut-resistant gloves. Never catch a falling die.",
        "- Least pressure that cuts, load centred, within the rating. A strike over the roll's end loads off centre.",
        "- Earth (ground) the rolls against static. Coated felt, rubber solution: flammable vapour. Extract low, no sparks.",
        "- Keep hands out of feed rollers; lift rolls with aids; eye, ear and dust protection as assessed.",
    ];

    /// <summary>The short form, one line each.</summary>
    public static IReadOnlyList<string> Brief { get; } =
    [
        "Cautions: local codes, the machine maker and qualified people come first; no risk assessment.",
        "Two-hand control or guard only. Lock out before a hand goes under the head. Edge covered, gloves on.",
        "Force within the rating, central, begun low. Coated felt gives off flammable vapour.",
    ];

    /// <summary>How the force per mm of the shop's own felt is measured.</summary>
    public static IReadOnlyList<string> ForceProcedure { get; } =
    [
        "Force per mm, measured: 1  a sharp test rule of known length (say 25 mm) of the same rule and bevel, no ejection;",
        "2  the felt, plies and board of the job, on a press with adjustable, indicated force, test rule central;",
        "3  two-hand control, begin at the least force, raise step by step, fresh felt each strike;",
        "4  least force that cuts through all round, five times; the mean over length and plies is N/mm per ply.",
        "Only people allowed to set the press do this; lock out before touching the rule.",
    ];

    /// <summary>The block on the sheets for tests of felt.</summary>
    public static IReadOnlyList<string> FeltTests { get; } =
    [
        "Cautions: local codes, the makers of cement, press and tester, and qualified people come first. This sheet is no risk assessment.",
        "- Cement: its solvent burns and harms. Work under extraction, no sparks or flames, gloves and eyes as its safety data sheet says.",
        "- Hot cores, moulds and ovens burn: let them cool, or use tongs and gloves. No wet cement into an oven that is not made for it.",
        "- Tester: guards as its maker says, fingers away from the jaws. Knives and punches: cut away from the hand.",
    ];
}
