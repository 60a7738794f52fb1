using FeltNest.Layout;

namespace FeltNest.Rolls.Plan;

/// <summary>Panels of a pattern that pair with each other: the same part at the same angle, mod 180 degrees or, one way, mod 360.</summary>
public static class PanelClasses
{
    // Angles this near are one class, degrees: as in the account of a layout.
    private const double SlackDeg = 1e-6;

    /// <summary>Indices of the panels of each class.</summary>
    public static IReadOnlyList<IReadOnlySet<int>> Of(StrikePattern pattern, bool oneWay)
    {
        double turn = oneWay ? 360 : 180;
        List<(PlacedPanel First, HashSet<int> Panels)> classes = [];
        for (int i = 0; i < pattern.Panels.Count; i++)
        {
            PlacedPanel panel = pattern.Panels[i].Placed;
            int at = classes.FindIndex(c => c.First.Part == panel.Part && Math.Abs(Math.IEEERemainder(c.First.AngleDeg - panel.AngleDeg, turn)) <= SlackDeg);
            if (at < 0)
            {
                classes.Add((panel, []));
                at = classes.Count - 1;
            }

            classes[at].Panels.Add(i);
        }

        return [.. classes.Select(c => c.Panels)];
    }
}
