using FeltNest.Geometry;
using NetTopologySuite.Algorithm.Locate;
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
    private const double AngleSlackDeg = 1e-6;
    private const int MostLines = 20;
    private static readonly GeometryFactory Factory = new();

    private readonly RollLayout layout;
    private readonly List<string> violations = [];
    private double leastGap = double.PositiveInfinity;
    private int pairs;

    private LayoutCheck(RollLayout layout) => this.layout = layout;

    /// <summary>Checks a layout.</summary>
    public static LayoutVerdict Verify(RollLayout layout) => new LayoutCheck(layout).Run();

    private LayoutVerdict Run()
    {
        foreach (LayoutPart part in layout.Parts)
        {
            CheckPart(part);
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

        CheckRules();
        foreach (string line in ShopCheck.Violations(layout))
        {
            Report(line);
        }

        return new LayoutVerdict(double.IsInfinity(leastGap) ? layout.GapMm : leastGap, pairs, violations);
    }

    private void CheckPart(LayoutPart part)
    {
        if (part.Arcs is not { } arcs)
        {
            return;
        }

        // The curve is walked in chords within 1e-5 mm of it, so that is what the two limits may be off by.
        const double most = 0.01 + 2e-5;
        const double inside = 2e-5;
        Polygon polygon = Place(part.Outline, 0, 0, 0);
        Coordinate[] curve = [.. arcs.Vertices.SelectMany((from, i) => Along(from, arcs.Vertices[(i + 1) % arcs.Vertices.Count]))];
        IndexedFacetDistance toPolygon = new(polygon.Shell);
        IndexedFacetDistance toCurve = new(Factory.CreateLineString([.. curve, curve[0].Copy()]));
        IndexedPointInAreaLocator locator = new(polygon);
        foreach (Coordinate at in curve)
        {
            if (locator.Locate(at) == Location.Exterior && toPolygon.Distance(Factory.CreatePoint(at)) is var off && off > inside)
            {
                Report(Invariant($"part \"{part.Name}\": its arcs leave its polygon by {off:0.#####} mm near ({at.X:0.##}, {at.Y:0.##})"));
                return;
            }
        }

        foreach (Coordinate at in polygon.Coordinates)
        {
            double away = toCurve.Distance(Factory.CreatePoint(at));
            if (away > most)
            {
                Report(
                    Invariant(
                        $"part \"{part.Name}\": its polygon lies {away:0.#####} mm off its arcs near ({at.X:0.##}, {at.Y:0.##}), at "
                            + $"most 0.01 is allowed"));
                return;
            }
        }
    }

    // Own arc arithmetic, apart from the geometry stage's: chords from the start, each at half its turn to the tangent there.
    private static IEnumerable<Coordinate> Along(ArcVertex from, ArcVertex to)
    {
        double chordX = to.X - from.X;
        double chordY = to.Y - from.Y;
        double half = from.Turn / 2;
        double chord = Math.Sqrt((chordX * chordX) + (chordY * chordY));
        if (Math.Abs(half) < 1e-12)
        {
            yield return new Coordinate(from.X, from.Y);
            yield break;
        }

        double radius = chord / 2 / Math.Sin(half);
        double heading = Math.Atan2(chordY, chordX) - half;
        int count = 1 + (int)Math.Min(100_000, Math.Abs(half) / Math.Acos(Math.Max(-1, 1 - (1e-5 / Math.Abs(radius)))));
        for (int k = 0; k < count; k++)
        {
            double turned = from.Turn * k / count;
            double reach = 2 * radius * Math.Sin(turned / 2);
            yield return new Coordinate(
                from.X + (reach * Math.Cos(heading + (turned / 2))), from.Y + (reach * Math.Sin(heading + (turned / 2))));
        }
    }

    private void CheckBand(LayoutBand band)
    {
        double length = band.Repeat.LengthMm;
        double low = Math.Max(band.YFromMm, layout.Trims.LowerMm);
        double high = Math.Min(band.YToMm, layout.RollWidthMm - layout.Trims.UpperMm);
        IReadOnlyList<PlacedPanel> panels = band.Repeat.Panels;
        Polygon[] homes = [.. panels.Select(panel => Copy(panel, length, 0))];
        for (int i = 0; i < homes.Length; i++)
        {
            Envelope extent = homes[i].EnvelopeInternal;
            if (extent.MinY < low - EdgeSlack || extent.MaxY > high + EdgeSlack)
            {
                Report(
                    Invariant(
                        $"panel {i}: reaches from {extent.MinY:0.####} to {extent.MaxY:0.####} mm across, allowed {low:0.####} to "
                            + $"{high:0.####}"));
            }
        }

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
                    CheckPair(homes[i], Copy(panels[other], length, copy), Invariant($"panel {i} and panel {other}, {copy} repeats on"));
                }
            }
        }
    }

    // Panels may be written anywhere along the roll: brought to the first repeat before copies are laid beside it.
    private Polygon Copy(PlacedPanel panel, double length, int copy) =>
        Place(
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
            band.Repeat.Panels.Select(p => Place(layout.Parts[p.Part].Outline, p.XMm, p.YMm, p.AngleDeg).EnvelopeInternal);
        return (all.Min(e => e.MinY), all.Max(e => e.MaxY));
    }

    private void CheckPair(Polygon a, Polygon b, string which)
    {
        pairs++;
        double distance = Apart(a, b);
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

    // Distance of the boundaries, and 0 where one part lies wholly inside the other.
    private static double Apart(Polygon a, Polygon b)
    {
        double boundaries = IndexedFacetDistance.Distance(a, b);
        bool inside = boundaries > 0 && a.EnvelopeInternal.Intersects(b.EnvelopeInternal)
            && (a.Contains(Factory.CreatePoint(b.Coordinate)) || b.Contains(Factory.CreatePoint(a.Coordinate)));
        return inside ? 0 : boundaries;
    }

    // The rules on angles bind the first part; a further one is laid at its own design angle. Each part's panels keep the rules among
    // themselves.
    private void CheckRules()
    {
        foreach (IGrouping<int, PlacedPanel> part in layout.Bands.SelectMany(b => b.Repeat.Panels).GroupBy(p => p.Part))
        {
            double? warp = part.Key == 0 ? layout.Rules.WarpAngleDeg : layout.Parts[part.Key].WarpAngleDeg;
            foreach (PlacedPanel panel in part.Where(_ => warp is not null))
            {
                double off = Math.Abs(Math.IEEERemainder(panel.AngleDeg - warp!.Value, 180));
                if (off > layout.Rules.WarpToleranceDeg + AngleSlackDeg)
                {
                    Report(
                        Invariant(
                            $"a panel lies at {panel.AngleDeg:0.######} degrees: {off:0.######} off the warp angle {warp:0.######}, "
                                + $"tolerance {layout.Rules.WarpToleranceDeg:0.######}"));
                }
            }

            CheckRows([.. part]);
        }

        PlacedPanel[] all = [.. layout.Bands.SelectMany(b => b.Repeat.Panels)];
        if (layout.Rules.OneWay && all.Length > 0)
        {
            double first = all[0].AngleDeg;
            double[] off = [.. all.Select(p => Math.IEEERemainder(p.AngleDeg - first, 360))];

            // Half a turn apart is as far as directions get: two such panels lie head to tail.
            if (off.Max() - off.Min() > 180 - AngleSlackDeg)
            {
                Report("one way: panels do not lie within 90 degrees of one direction");
            }
        }
    }

    private void CheckRows(PlacedPanel[] panels)
    {
        double[] tilts = [.. panels.Select(p => p.AngleDeg - (Math.Floor(p.AngleDeg / 180) * 180))];
        bool Parallel(double a, double b) => Math.Abs(Math.IEEERemainder(a - b, 180)) <= AngleSlackDeg;
        if (tilts.Length == 0 || layout.Rules.Rows == RowRule.Any)
        {
            return;
        }

        bool kept = layout.Rules.Rows == RowRule.Same
            ? tilts.All(t => Parallel(t, tilts[0]))
            : tilts.All(t => Parallel(t, tilts[0]) || Parallel(t, -tilts[0]));
        if (!kept)
        {
            Report(
                layout.Rules.Rows == RowRule.Same
                    ? "rows same: panels are not parallel"
                    : "rows alternate: panels lie at other angles than +a and -a");
        }
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

    private static Polygon Place(Outline outline, double x, double y, double angleDeg)
    {
        double angle = angleDeg * Math.PI / 180;
        double cos = Math.Cos(angle);
        double sin = Math.Sin(angle);
        Coordinate[] ring = new Coordinate[outline.Points.Count + 1];
        for (int i = 0; i < ring.Length - 1; i++)
        {
            Point2 p = outline.Points[i];
            ring[i] = new Coordinate(x + (p.X * cos) - (p.Y * sin), y + (p.X * sin) + (p.Y * cos));
        }

        ring[^1] = ring[0].Copy();
        return Factory.CreatePolygon(ring);
    }
}
