using static FeltNest.InvariantText;

namespace FeltNest.Die.Check;

/// <summary>Holds a number that a file states against the one that was found.</summary>
internal static class StatedNumber
{
    /// <summary>Adds a line where the two are further apart than the slack.</summary>
    public static void Same(List<string> violations, string field, double stated, double found, double slack)
    {
        if (!(Math.Abs(stated - found) <= slack))
        {
            violations.Add(Invariant($"{field}: {stated:0.######} is stated, {found:0.######} was found"));
        }
    }
}
