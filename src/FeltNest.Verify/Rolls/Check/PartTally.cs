using FeltNest.Layout;
using static FeltNest.InvariantText;

namespace FeltNest.Rolls.Check;

/// <summary>Counts the good panels and the balls of each part, at least and at most, against what a plan states.</summary>
internal sealed class PartTally
{
    private readonly RollLayout layout;
    private readonly StatedPlan plan;
    private readonly (long Least, long Most)[] good;

    public PartTally(RollLayout layout, StatedPlan plan)
    {
        (this.layout, this.plan) = (layout, plan);
        good = new (long, long)[plan.Panels.Count];
    }

    /// <summary>A panel of one strike: surely good, perhaps good.</summary>
    public void Add(int panel, bool surely, bool perhaps) =>
        good[panel] = (good[panel].Least + (surely ? 1 : 0), good[panel].Most + (perhaps ? 1 : 0));

    /// <summary>What is violated.</summary>
    public IEnumerable<string> Broken()
    {
        if (plan.Parts.Count > 0 && plan.Balls is { } balls && balls != plan.Parts.Sum(part => (long)part.Balls))
        {
            yield return $"balls: {balls} stated, the parts add to {plan.Parts.Sum(part => (long)part.Balls)}";
        }

        foreach (StatedPart stated in plan.Parts)
        {
            // Panels pair at one angle to the warp; in a one-way layout a half-turn is another angle.
            double turn = layout.Rules.OneWay ? 360 : 180;
            (long Least, long Most)[] groups =
            [
                .. Enumerable.Range(0, good.Length).Where(i => plan.Panels[i].Part == stated.Part)
                    .GroupBy(i => Math.Round(plan.Panels[i].AngleDeg - (Math.Floor((plan.Panels[i].AngleDeg / turn) + 1e-9) * turn), 5))
                    .Select(g => (g.Sum(i => good[i].Least), g.Sum(i => good[i].Most))),
            ];
            if (stated.GoodPanels < groups.Sum(g => g.Least) || stated.GoodPanels > groups.Sum(g => g.Most))
            {
                yield return Invariant(
                    $"parts: {stated.GoodPanels} good panels of panel {stated.Part} stated, the shapes give {groups.Sum(g => g.Most)}");
            }

            if (stated.Balls < groups.Sum(g => g.Least / 2) || stated.Balls > groups.Sum(g => g.Most / 2))
            {
                yield return Invariant(
                    $"parts: {stated.Balls} balls of panel {stated.Part} stated, its good panels pair to {groups.Sum(g => g.Most / 2)}");
            }
        }
    }
}
