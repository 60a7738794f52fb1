using FeltNest.Cost.Sheet;

namespace FeltNest.Cost.Compare.Findings;

/// <summary>A figure of the costs file that can be changed by itself.</summary>
/// <param name="Field">Its place in the file.</param>
/// <param name="Words">What it is, with its unit.</param>
/// <param name="Get">Its value, or null where it is not given.</param>
/// <param name="With">The costs with another value of it.</param>
/// <param name="UsualMost">Greatest value looked at where the user gave none, from the value it has; null to look at it only within a range
/// that is given.</param>
internal sealed record CostFigure(
    string Field, string Words, Func<CostInputs, double?> Get, Func<CostInputs, double, CostInputs> With,
    Func<double, double>? UsualMost = null);
