using System.Runtime.CompilerServices;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Buffer;
using NetTopologySuite.Operation.Distance;
using static FeltNest.InvariantText;

namespace FeltNest.Layout.Check;

/// <summary>Verifies a layout from its numbers alone with NetTopologySuite; shares no code with the search.</summary>
/// <remarks>Gap above 0: every distance must reach gap - 1e-4 mm. Gap 0: interiors shrunk by 5e-5 mm must be disjoint, as a distance of 0
/// says nothing about overlap. Panels must lie inside the usable width, the rules must be kept, and each part's polygon must contain its
/// arcs, at most 0.01 mm outside.</remarks>
internal sealed class LayoutCheck
{
    private const double GapSlack = 1e-4;
    private const double Shrink = 5e-5;
    private const double EdgeSlack = 1e-4;
    private const int MostLines = 20;

    // Moves of a pair that differ by less than this are one, mm.
    private const double PoseStep = 1e-9;

    // A part does not change: laid over many widths it is looked at once. What is not in use any more is forgotten.
    private static readonly ConditionalWeakTable<LayoutPart, ArcFault> ArcFaults = [];

    private readonly RollLayout layout;
    private readonly List<string> violations = [];
    private readonly Dictionary<PairPose, double> distances = [];
    private double leastGap = double.PositiveInfinity;
    private int pairs;

    private LayoutCheck(RollLayout layout) => this.layout = layout;

    /// <summary>Checks a layout.</summary>
    public static CheckVerdict Verify(RollLayout layout) => new LayoutCheck(layout).Run();

    private CheckVerdict Run()
    {
        foreach (LayoutPart part in layout.Parts)
        {
            if (ArcFaults.GetValue(part, found => new ArcFault(PartArcsCheck.Violation(found))).Line is { } line)
            {
                Report(line);
            }
        }

        foreach (LayoutBand band in layout.Bands)
        {
            CheckBand(band);
        }

        for (int i = 0; i < layout.Bands.Count; i++)
        {
            for (int k = i + 1; k < layout.Bands.Count; k++)
            {
                CheckBandsApart(layout.Bands[i], layout.Bands[k]);
            }
        }

        foreach (string line in AngleCheck.Violations(layout).Concat(ShopCheck.Violations(layout)))
        {
            Report(line);
        }

        return new CheckVerdict(double.IsInfinity(leastGap) ? layout.GapMm : leastGap, pairs, violations);
    }

    private void CheckBand(LayoutBand band)
    {
        double length = band.Repeat.LengthMm;
        double low = Math.Max(band.YFromMm, layout.Trims.LowerMm);
        double high = Math.Min(band.YToMm, layout.RollWidthMm - layout.Trims.UpperMm);
        IReadOnlyList<PlacedPanel> panels = band.Repeat.Panels;
        Polygon[] homes = [.. panels.Select(panel => Copy(panel, length, 0))];
        CheckExtents(homes, low, high);

        // Copies are made one at a time, where they can be near: a long part on a short repeat has thousands of them.
        for (int i = 0; i < homes.Length; i++)
        {
            Envelope near = homes[i].EnvelopeInternal.Copy();
            near.ExpandBy(layout.GapMm + 1);
            for (int other = i; other < homes.Length; other++)
            {
                Envelope extent = homes[other].EnvelopeInternal;
                if (extent.MinY > near.MaxY || extent.MaxY < near.MinY)
                {
                    continue;
                }

                int last = (int)Math.Floor((near.MaxX - extent.MinX) / length);
                for (int copy = other == i ? 1 : (int)Math.Ceiling((near.MinX - extent.MaxX) / length); copy <= last
                    && violations.Count < MostLines; copy++)
                {
                    CheckPair(
                        (panels[i], homes[i]), (panels[other], Copy(panels[other], length, copy)),
                        Invariant($"panel {i + 1} and panel {other + 1}, {copy} repeats on"));
                }
            }
        }
    }

    private void CheckExtents(Polygon[] homes, double low, double high)
    {
        for (int i = 0; i < homes.Length; i++)
        {
            Envelope extent = homes[i].EnvelopeInternal;
            if (extent.MinY < low - EdgeSlack || extent.MaxY > high + EdgeSlack)
            {
                Report(
                    Invariant(
                        $"panel {i + 1}: reaches from {extent.MinY:0.####} to {extent.MaxY:0.####} mm across, allowed {low:0.####} to "
                            + $"{high:0.####}"));
            }
        }
    }

    // Panels may be written anywhere along the roll: brought to the first repeat before copies are laid beside it.
    private Polygon Copy(PlacedPanel panel, double length, int copy) =>
        PlacedShape.Of(
            layout.Parts[panel.Part].Outline, panel.XMm + (-Math.Floor(panel.XMm / length) * length) + (copy * length), panel.YMm,
            panel.AngleDeg);

    // Bands do not share a repeat, so every relative shift comes about: they are apart when their extents across are.
    private void CheckBandsApart(LayoutBand first, LayoutBand second)
    {
        (double Low, double High) a = Extent(first);
        (double Low, double High) b = Extent(second);
        double apart = Math.Max(b.Low - a.High, a.Low - b.High);
        leastGap = Math.Min(leastGap, Math.Max(0, apart));
        if (apart < layout.GapMm - GapSlack)
        {
            Report(
                Invariant(
                    $"bands at {first.YFromMm:0.##} and {second.YFromMm:0.##} mm: {apart:0.####} mm apart, gap {layout.GapMm:0.####} "
                        + $"promised"));
        }
    }

    private (double Low, double High) Extent(LayoutBand band)
    {
        IEnumerable<Envelope> all =
            band.Repeat.Panels.Select(p => PlacedShape.Of(layout, p).EnvelopeInternal);
        return (all.Min(e => e.MinY), all.Max(e => e.MaxY));
    }

    private void CheckPair((PlacedPanel Panel, Polygon Shape) first, (PlacedPanel Panel, Polygon Shape) second, string which)
    {
        pairs++;
        (Polygon a, Polygon b) = (first.Shape, second.Shape);
        double distance = KnownApart(first, second);
        leastGap = Math.Min(leastGap, distance);
        if (layout.GapMm > 0)
        {
            // Distance is 0 both for touching and for overlapping parts, so one comparison serves.
            if (distance < layout.GapMm - GapSlack)
            {
                Report(Invariant($"{which}: {distance:0.#####} mm apart, gap {layout.GapMm:0.####} promised"));
            }
        }
        else if (distance <= 0 && Shrunk(a).Intersects(Shrunk(b)))
        {
            Report(Invariant($"{which}: overlap by more than {2 * Shrink:0.#####} mm"));
        }
    }

    // Two panels that lie to each other as two before do are as far apart as they: rows of one tilt have few such pairs. Moves are told
    // apart to a hundred-thousandth of the slack, and a distance differs by no more than its move.
    private double KnownApart((PlacedPanel Panel, Polygon Shape) first, (PlacedPanel Panel, Polygon Shape) second)
    {
        (Coordinate from, Coordinate to) = (first.Shape.Coordinate, second.Shape.Coordinate);
        PairPose pose = new()
        {
            Parts = (first.Panel.Part, second.Panel.Part),
            AnglesDeg = (first.Panel.AngleDeg, second.Panel.AngleDeg),
            Move = (Math.Round((to.X - from.X) / PoseStep), Math.Round((to.Y - from.Y) / PoseStep)),
        };
        if (!distances.TryGetValue(pose, out double distance))
        {
            distances[pose] = distance = Apart(first.Shape, second.Shape);
        }

        return distance;
    }

    // Distance of the boundaries, and 0 where one part lies wholly inside the other.
    private static double Apart(Polygon a, Polygon b)
    {
        double boundaries = IndexedFacetDistance.Distance(a, b);
        bool inside = boundaries > 0 && a.EnvelopeInternal.Intersects(b.EnvelopeInternal)
            && (a.Contains(PlacedShape.Factory.CreatePoint(b.Coordinate)) || b.Contains(PlacedShape.Factory.CreatePoint(a.Coordinate)));
        return inside ? 0 : boundaries;
    }

    private void Report(string line)
    {
        if (violations.Count < MostLines)
        {
            violations.Add(line);
        }
    }

    private static NetTopologySuite.Geometries.Geometry Shrunk(Polygon shape) =>
        BufferOp.Buffer(shape, -Shrink, new BufferParameters(8, EndCapStyle.Round, JoinStyle.Mitre, 5) { SimplifyFactor = 0 });

    // How one panel lies to another.
    private readonly record struct PairPose
    {
        public required (int First, int Second) Parts { get; init; }

        public required (double First, double Second) AnglesDeg { get; init; }

        // In steps, of the first corners.
        public required (double X, double Y) Move { get; init; }
    }

    private sealed record ArcFault(string? Line);
}
