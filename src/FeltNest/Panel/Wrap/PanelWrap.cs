using System.Globalization;
using FeltNest.Geometry;
using FeltNest.Geometry.Curves;
using FeltNest.Numerics;
using FeltNest.Panel.Felt;
using FeltNest.Panel.Wrap.Solve;
using FeltNest.Seam;

namespace FeltNest.Panel.Wrap;

/// <summary>Lays a flat piece of felt on a sphere with the least elastic energy, its edge free and its edge drawn to the seam.</summary>
/// <remarks>The place on the sphere is sought as polynomials in the flat coordinates, over the piece itself: nothing is meshed. Pieces with
/// the half-turn, and those with mirrors, are solved with functions of that symmetry alone.</remarks>
internal static class PanelWrap
{
    // Degrees by symmetry: as high as the unknowns, 240 to 312, are solved for within half a second. An edge that is smooth and held place
    // by place is worth the highest: a panel of our own returns its strains to 1e-4 by it, where an outline's arcs allow no more digits
    // than the lower ones give.
    private const int HeldDegree = 37;
    private const int MirrorDegree = 29;
    private const int HalfTurnDegree = 23;
    private const int PlainDegree = 14;
    private const int RoughDegree = 21;

    // The highest wave along the edge that is held, against the degree: the polynomials follow waves up to about it, and the high ones of a
    // mirrored piece a little farther.
    private const int MirrorWaves = 2;
    private const int PlainWaves = -1;

    // Share of the panel's area on the sphere that a flat outline must at least and may at most have: felt drawn farther than this to reach
    // the seam would tear or pleat.
    private const double LeastArea = 0.6;
    private const double GreatestArea = 1.5;

    // Greatest distance of a held edge from the seam that still counts as held, in radii: 0.06 mm on a ball.
    private const double Held = 2e-3;

    // Stations round the edge, multiples of 8: of a smooth one these are exact, and arcs' jumps of curvature leave an error below 1e-5.
    private const int SmoothStations = 240;
    private const int ArcStations = 480;

    /// <summary>Lays the piece on.</summary>
    /// <exception cref="InputException">Neither an outline nor a sound edge map is given.</exception>
    /// <exception cref="NoAnswerException">The piece is too large for the sphere, cannot be seen whole from its centroid, or no equilibrium
    /// was found.</exception>
    public static WrapResult Lay(WrapRequest request)
    {
        WrapRegion region = Region(request);
        FeltLaw law = request.Law.Scaled(1 / request.Law.UU);
        double scale = request.Law.UU * request.RadiusMm * request.RadiusMm;
        WrapField field = Field(region, law, request.EdgeMap is null ? MirrorDegree : HeldDegree);
        NewtonResult free = Solve(new WrapProblem(field, law, null), field.Start());
        EdgeFreeWrap edgeFree = Free(request, region, field, free, scale);
        double area = field.Weights.Sum() / SeamCurve.PanelArea;
        if (!(area >= LeastArea && area <= GreatestArea))
        {
            return new WrapResult(edgeFree, null, string.Create(
                CultureInfo.InvariantCulture,
                $"the outline's area is {100 * area:0} % of half the sphere's; {100 * LeastArea:0} to {100 * GreatestArea:0} % can be "
                    + $"drawn to the seam"));
        }

        try
        {
            EdgeHeldWrap held = Hold(request, region, field, law, free, scale);
            return held.EdgeOffSeamMm <= Held * request.RadiusMm ? new WrapResult(edgeFree, held, null)
                : new WrapResult(
                    edgeFree, null,
                    FormattableString.Invariant(
                        $"the edge stays {held.EdgeOffSeamMm:0.##} mm off the seam: the outline's edge is too unlike the seam"));
        }
        catch (NoAnswerException error)
        {
            return new WrapResult(edgeFree, null, error.Message);
        }
    }

    /// <summary>Lays the piece on with its edge free.</summary>
    /// <exception cref="InputException">As <see cref="Lay"/>.</exception>
    /// <exception cref="NoAnswerException">As <see cref="Lay"/>.</exception>
    public static EdgeFreeWrap LayFree(WrapRequest request)
    {
        WrapRegion region = Region(request);
        FeltLaw law = request.Law.Scaled(1 / request.Law.UU);
        WrapField field = Field(region, law, MirrorDegree);
        return Free(
            request, region, field, Solve(new WrapProblem(field, law, null), field.Start()),
            request.Law.UU * request.RadiusMm * request.RadiusMm);
    }

    /// <summary>Whether an edge by its seam parameter, and its felt, keep both mirrors.</summary>
    /// <exception cref="NoAnswerException">As <see cref="Lay"/>.</exception>
    public static bool KeepsMirrors(WrapRequest request, IPlaneCurve edge) =>
        request.Law.IsMirrorSymmetric && WrapRegion.Of(edge, default, 0, SmoothStations, request.RadiusMm).HasMirrors;

    /// <summary>Lays a panel on with its edge free, beginning with the solution for one much like it: for many that differ by little. With
    /// the same functions for all of them their differences are free of what the functions leave out.</summary>
    /// <param name="request">Sphere and felt.</param>
    /// <param name="edge">The panel's edge by its seam parameter about the image of its pole.</param>
    /// <param name="keepsMirrors">Whether functions that keep the mirrors are used.</param>
    /// <param name="near">Solution for a panel much like it, of the same functions; null for none.</param>
    /// <exception cref="NoAnswerException">As <see cref="Lay"/>.</exception>
    public static (EdgeFreeWrap Wrap, double[] Solution) LayFree(
        WrapRequest request, IPlaneCurve edge, bool keepsMirrors, double[]? near)
    {
        FeltLaw law = request.Law.Scaled(1 / request.Law.UU);
        WrapField field = new(
            WrapRegion.Of(edge, default, 0, SmoothStations, request.RadiusMm), keepsMirrors, keepsMirrors ? MirrorDegree : HalfTurnDegree);
        NewtonResult found = Solve(new WrapProblem(field, law, null), near ?? field.Start());
        WrapRegion seen = WrapRegion.Of(edge, default, 0, ArcStations, request.RadiusMm);
        return (Free(request, seen, field, found, request.Law.UU * request.RadiusMm * request.RadiusMm), found.X);
    }

    /// <summary>Gaps round the seam of a piece with its edge free, mm, at a lower degree than a wrap that is shown: for a panel that is
    /// still sought.</summary>
    /// <exception cref="InputException">As <see cref="Lay"/>.</exception>
    /// <exception cref="NoAnswerException">As <see cref="Lay"/>.</exception>
    public static IReadOnlyList<double?> RoughGaps(WrapRequest request)
    {
        WrapRegion region = Region(request);
        FeltLaw law = request.Law.Scaled(1 / request.Law.UU);
        WrapField field = Field(region, law, RoughDegree);
        return Free(request, region, field, Solve(new WrapProblem(field, law, null), field.Start()), 1).Gaps;
    }

    private static WrapField Field(WrapRegion region, FeltLaw law, int mirrorDegree)
    {
        int symmetricDegree = region.HasMirrors && law.IsMirrorSymmetric ? mirrorDegree : HalfTurnDegree;
        return new WrapField(region, law.IsMirrorSymmetric, region.HasHalfTurn ? symmetricDegree : PlainDegree);
    }

    // The piece of a request at unit radius.
    private static WrapRegion Region(WrapRequest request)
    {
        WrapRegion region;
        if (request.EdgeMap is { } map)
        {
            region = WrapRegion.Of(new EdgeMapCurve(map), default, 0, SmoothStations, request.RadiusMm);
        }
        else if (request.Edge is { } edge)
        {
            Point2 centroid = edge.Centroid();
            region = WrapRegion.Of(edge, centroid, edge.Below(centroid), ArcStations, request.RadiusMm);
        }
        else
        {
            ArcOutline outline =
                request.Outline ?? throw new InputException(null, "outline", "missing; an outline or an edge map is needed");
            ArcLengthCurve curve = new(outline);
            region = WrapRegion.Of(curve, outline.Centroid, curve.Below(outline.Centroid), ArcStations, request.RadiusMm);
        }

        // Angles the chart of the sphere can hold, radians, less what felt gives: 170 degrees to each side along the piece and 80 across.
        const double along = 2.96;
        const double across = 1.4;
        double u = region.Edge.Max(p => Math.Abs(p.X));
        double v = region.Edge.Max(p => Math.Abs(p.Y));
        return u <= along && v <= across ? region : throw new NoAnswerException(string.Create(
            CultureInfo.InvariantCulture,
            $"the outline reaches {u * request.RadiusMm:0.#} mm along and {v * request.RadiusMm:0.#} mm across from its centroid; on a "
                + $"sphere of radius {request.RadiusMm:0.##} mm at most {along * request.RadiusMm:0.#} and "
                + $"{across * request.RadiusMm:0.#} mm can be laid"));
    }

    private static NewtonResult Solve(WrapProblem problem, double[] start) => new ConstrainedNewton(problem).Minimise(start);

    private static EdgeFreeWrap Free(WrapRequest request, WrapRegion region, WrapField field, NewtonResult found, double scale)
    {
        SpherePoint[] edge = [.. region.Edge.Select(place => OnSphere(field, found.X, place))];
        double turn = field.HasMirrors ? 0 : SeamGap.BestTurn(edge);
        double?[] gaps = [.. SeamGap.Of(EdgeFreeWrap.Turned(edge, turn)).Select(gap => gap * request.RadiusMm)];
        double[] met = [.. gaps.OfType<double>()];
        return new EdgeFreeWrap
        {
            EnergyNmm = found.Value * scale,
            LargestGapMm = met.Length == 0 ? null : Math.Max(0, met.Max()),
            LargestOverlapMm = met.Length == 0 ? null : Math.Max(0, -met.Min()),
            Edge = [.. edge.Select(p => request.RadiusMm * p)],
            Turn = turn,
            Gaps = gaps,
            Residual = found.Residual,
        };
    }

    private static EdgeHeldWrap Hold(WrapRequest request, WrapRegion region, WrapField field, FeltLaw law, NewtonResult free, double scale)
    {
        bool slides = request.EdgeMap is null;
        double[] start = slides ? ByLength(request.Seam, region) : [.. region.Parameters.Take(region.Half)];
        WrapHold hold = new(region, field, request.Seam, start, field.Degree + (field.HasMirrors ? MirrorWaves : PlainWaves), slides);
        NewtonResult found = Solve(new WrapProblem(field, law, hold), [.. free.X, .. new double[hold.Slides]]);
        double[] parameters = hold.Parameters(found.X);
        double off = 0;
        double pull = 0;
        for (int i = 0; i < region.Half; i++)
        {
            off = Math.Max(off, (OnSphere(field, found.X, region.Edge[i]) - request.Seam.At(parameters[i]).Point).Length);
            Point2 normal = region.Outward(i);
            (double along, double across) = field.Density(law, found.X, region.Edge[i]).Pull(normal.X, normal.Y);
            pull = Math.Max(pull, Math.Sqrt((along * along) + (across * across)));
        }

        (double stretch, double compression) = WrapExtremes.Of(region, field, law, found.X);
        return new EdgeHeldWrap
        {
            EnergyNmm = found.Value * scale,
            MaxStretchPercent = stretch,
            MaxCompressionPercent = compression,
            EdgePullNPerMm = pull * request.Law.UU,
            EdgeOffSeamMm = off * request.RadiusMm,
            Residual = found.Residual,
        };
    }

    // Seam parameters at which the seam's length has the same share of its whole as the edge's length at each station.
    private static double[] ByLength(SeamCurve seam, WrapRegion region)
    {
        const int steps = 2880;
        double[] length = new double[steps + 1];
        for (int i = 0; i < steps; i++)
        {
            length[i + 1] = length[i] + (seam.At((i + 0.5) * 2 * Math.PI / steps).Speed * 2 * Math.PI / steps);
        }

        return [.. Shares(region).Take(region.Half).Select(share =>
        {
            double wanted = share * length[^1];
            int found = Array.BinarySearch(length, wanted);
            int at = Math.Clamp(found >= 0 ? found : ~found - 1, 0, steps - 1);
            return (at + ((wanted - length[at]) / (length[at + 1] - length[at]))) * 2 * Math.PI / steps;
        })];
    }

    // The share of the edge's length that lies before each station.
    private static double[] Shares(WrapRegion region)
    {
        double[] lengths = [.. region.Steps.Select(step => step.Length)];
        double whole = lengths.Sum();
        double[] shares = new double[lengths.Length];
        for (int i = 1; i < shares.Length; i++)
        {
            shares[i] = shares[i - 1] + ((lengths[i - 1] + lengths[i]) / 2 / whole);
        }

        return shares;
    }

    private static SpherePoint OnSphere(WrapField field, double[] x, Point2 place)
    {
        (double along, _, _, double across, _, _) = field.At(x, place);
        (double sinL, double cosL) = Math.SinCos(along);
        (double sinP, double cosP) = Math.SinCos(across);
        return new SpherePoint(sinL * cosP, sinP, cosL * cosP);
    }
}
