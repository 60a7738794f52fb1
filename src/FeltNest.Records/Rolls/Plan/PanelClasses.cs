using FeltNest.Layout;
using FeltNest.Yield;

namespace FeltNest.Rolls.Plan;

/// <summary>Panels of a pattern that pair with each other: the same part at the same angle, mod 180 degrees or, one way, mod 360.</summary>
internal static class PanelClasses
{
    /// <summary>Indices of the panels of each class.</summary>
    public static IReadOnlyList<IReadOnlySet<int>> Of(StrikePattern pattern, bool oneWay)
    {
        List<(PairingClass Class, HashSet<int> Panels)> classes = [];
        for (int i = 0; i < pattern.Panels.Count; i++)
        {
            PlacedPanel panel = pattern.Panels[i].Placed;
            int at = classes.FindIndex(c => c.Class.Holds(panel, oneWay));
            if (at < 0)
            {
                classes.Add((PairingClass.Of(panel, oneWay), []));
                at = classes.Count - 1;
            }

            classes[at].Panels.Add(i);
        }

        return [.. classes.Select(c => c.Panels)];
    }
}
