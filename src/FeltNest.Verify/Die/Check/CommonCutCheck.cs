using System.Globalization;
using FeltNest.Layout;
using NetTopologySuite.Geometries;
using NetTopologySuite.Index.Strtree;
using NetTopologySuite.Noding.Snap;
using NetTopologySuite.Operation.Overlay;
using NetTopologySuite.Operation.OverlayNG;

namespace FeltNest.Die.Check;

/// <summary>Measures with NetTopologySuite what edges of neighbouring cavities share; shares no code with the design.</summary>
/// <remarks>The lines of both edges are noded and snapped into one net: what that is shorter than the two is shared.</remarks>
internal sealed class CommonCutCheck
{
    // Chords of arcs, and what is snapped together: mm. Chords stay well within what is snapped.
    private const double Chord = 1e-4;
    private const double Snap = 2e-3;

    // Shorter than this is a place where edges touch, and lengths this near are the same: mm.
    private const double Least = 0.1;
    private const double Slack = 0.02;

    private static readonly GeometryFactory Factory = new();

    private readonly LineString[] edges;

    /// <summary>The edges of a die as stated, each at its place.</summary>
    public CommonCutCheck(StatedDie die)
    {
        Dictionary<int, Coordinate[]> walked = die.Edges.ToDictionary(e => e.Key, e => DieEdgeCheck.Walk(e.Value.Vertices, Chord));
        edges = [.. die.Cavities.Select(c => Placed(walked[c.Part], c))];
    }

    /// <summary>Length that is shared in all, mm; what is wrong with what the die states is added to the violations.</summary>
    public double Run(StatedDie die, List<string> violations)
    {
        double all = 0;
        ILookup<int, int> told = die.CommonCuts.Keys.ToLookup(pair => pair.First, pair => pair.Second);
        STRtree<int> tree = new();
        for (int i = 0; i < edges.Length; i++)
        {
            tree.Insert(edges[i].EnvelopeInternal, i);
        }

        // Pairs whose boxes are apart share nothing, whatever is stated.
        for (int i = 0; i < edges.Length; i++)
        {
            Envelope reach = edges[i].EnvelopeInternal.Copy();
            reach.ExpandBy(Snap);
            foreach (int k in tree.Query(reach).Concat(told[i]).Where(k => k > i).Distinct().Order())
            {
                double found = Shared(edges[i], edges[k]);
                double stated = die.CommonCuts.GetValueOrDefault((i, k));
                all += found;
                if (Math.Abs(found - stated) > Slack)
                {
                    violations.Add(
                        string.Create(
                            CultureInfo.InvariantCulture,
                            $"commonCuts: cavities {i + 1} and {k + 1} share {found:0.###} mm of edge, {stated:0.###} is stated"));
                }
            }
        }

        return all;
    }

    private static double Shared(LineString one, LineString two)
    {
        Envelope reach = one.EnvelopeInternal.Copy();
        reach.ExpandBy(Snap);
        if (!reach.Intersects(two.EnvelopeInternal))
        {
            return 0;
        }

        double shared = one.Length + two.Length - OverlayNG.Overlay(one, two, SpatialFunction.Union, null, new SnappingNoder(Snap)).Length;
        return shared > Least ? shared : 0;
    }

    private static LineString Placed(Coordinate[] edge, PlacedPanel placed)
    {
        double angle = placed.AngleDeg * Math.PI / 180;
        double cos = Math.Cos(angle);
        double sin = Math.Sin(angle);
        return Factory.CreateLineString([
            .. edge
                .Append(edge[0])
                .Select(p => new Coordinate(placed.XMm + (p.X * cos) - (p.Y * sin), placed.YMm + (p.X * sin) + (p.Y * cos))),
        ]);
    }
}
