using FeltNest.Layout;

namespace FeltNest.Die.Check;

/// <summary>Lengths of rule and of cutting edge worked out again from the arcs of the edges; shares no code with the design.</summary>
/// <remarks>Edge and rule are walked along in short chords: the middle of the rule's body stands beside the edge, so its chords are longer
/// by the tangents of half their bends.</remarks>
internal static class RuleLengthCheck
{
    /// <summary>Fields of the die's file with what they state, what was found, and how far these may differ, mm.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="die">The die as stated.</param>
    /// <param name="shared">Length that cavities share, mm.</param>
    public static IEnumerable<(string Field, double Stated, double Found, double Slack)> Of(RollLayout layout, StatedDie die, double shared)
    {
        double edge = -shared;
        double rule = -shared;
        foreach (IGrouping<int, PlacedPanel> of in die.Cavities.GroupBy(c => c.Part))
        {
            (double ring, double beside) = DieEdgeCheck.Lengths(die.Edges[of.Key].Vertices, die.MiddleInWasteMm);
            (edge, rule) = (edge + (of.Count() * ring), rule + (of.Count() * beside));
        }

        double slack = (1e-6 * edge) + (shared > 0 ? 1e-4 * shared : 0);
        if (die.EdgeLengthMm is { } stated)
        {
            return
            [
                ("ruleLengthMm", die.RuleLengthMm, rule, slack), ("edgeLengthMm", stated, edge, slack),
                ("force.lengthMm", die.Force.LengthMm, edge, slack),
            ];
        }

        // Older files tell one length, that of the edge, and take the force from the layout's outline.
        return
        [
            ("ruleLengthMm", die.RuleLengthMm, edge, slack),
            ("force.lengthMm", die.Force.LengthMm, die.Cavities.Sum(c => layout.Parts[c.Part].PerimeterMm) - shared, slack),
        ];
    }
}
