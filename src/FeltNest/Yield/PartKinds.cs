using FeltNest.Geometry;
using FeltNest.Layout;

namespace FeltNest.Yield;

/// <summary>The kinds of part that the layers of a strike give: panels of unlike kinds make no pair and must be kept apart.</summary>
internal static class PartKinds
{
    // Angles and outlines this near are one kind: as for pairing classes, and a hair of the part's size.
    private const double SameDeg = 1e-6;
    private const double SameShare = 1e-6;

    /// <summary>How many kinds of part come off the table. A layer that lies nap side down gives the mirror image about the warp: a panel
    /// at angle a comes out at -a, and where its outline is not its own mirror image about its axis it is another part
    /// altogether.</summary>
    public static int Of(RollLayout layout)
    {
        IReadOnlyList<(PairingClass Class, double PanelsPerMetre)> classes = YieldAccount.Classes(layout);
        if (!layout.Rules.Plies.FaceToFace)
        {
            return classes.Count;
        }

        double turn = layout.Rules.OneWay ? 360 : 180;
        int more = classes.Count(c => !HasMirror(layout.Parts[c.Class.Part].Outline)
            || !classes.Any(o =>
                o.Class.Part == c.Class.Part && Math.Abs(Math.IEEERemainder(o.Class.AngleDeg + c.Class.AngleDeg, turn)) <= SameDeg));
        return classes.Count + more;
    }

    private static bool HasMirror(Outline outline)
    {
        double reach = SameShare * outline.Points.Max(p => p.Length);
        return outline.Points.All(p => outline.Points.Any(q => Math.Abs(q.X - p.X) <= reach && Math.Abs(q.Y + p.Y) <= reach));
    }
}
