using FeltNest.Ball;
using FeltNest.Geometry.Curves;
using FeltNest.Panel.Disc;
using FeltNest.Panel.Domain;
using FeltNest.Panel.Elastic;
using FeltNest.Panel.Felt;
using FeltNest.Panel.Flatten;
using FeltNest.Panel.Shape;

namespace FeltNest.Panel;

/// <summary>From the ball to the flat panel as it is cut: seam, flattening at zero gap, allowances, arcs.</summary>
internal static class PanelFlattener
{
    /// <summary>Greatest distance between the arcs and the computed edge, mm.</summary>
    public const double ArcTolerance = 0.01;

    // How far the polygon may lie outside the arcs, mm: a little under the promised 0.01, so that rounding cannot pass it.
    private const double PolygonTolerance = 0.0099;

    // Places of the edge map: every half degree of the seam parameter, so that waists and tips are among them.
    private const int EdgePlaces = 720;

    // Rings and spokes of the strain field: fine enough that a picture a hand wide shows no facets.
    private const int Rings = 41;
    private const int Spokes = 180;

    /// <summary>The flat panel of a ball.</summary>
    /// <exception cref="InputException">The ball cannot have such a panel.</exception>
    /// <exception cref="NoAnswerException">The felt has no equilibrium on this seam.</exception>
    public static FlatPanel Flatten(BallSpec ball) => Flatten(PanelRequest.For(ball));

    /// <summary>The flat panel of a request.</summary>
    /// <exception cref="InputException">The seam gap is too wide for the panel.</exception>
    /// <exception cref="NoAnswerException">The felt has no equilibrium on this seam.</exception>
    public static FlatPanel Flatten(PanelRequest request)
    {
        SeamDomain domain = new(request.Seam);
        (FlatMap map, PanelSolve solve, EdgeLimitReport? limit) = Flatten(request, domain);
        double radius = request.RadiusMm;
        FlatEdge edge = new(map, radius);
        (CutEdge cut, IReadOnlyList<PanelAllowance> allowances) = AllowanceChain.Apply(request, edge);
        CorrectedEdge corrected = new(cut, request.Correction);
        IPlaneCurve shape = request.Correction.Count == 0 ? cut : corrected;
        EdgeMeasure measure = EdgeMeasure.Of(shape);
        bool mirror = map.Space.IsMirrorSymmetric && cut.KeepsMirrors && corrected.KeepsMirrors;
        BiarcFit fit = BiarcFitter.Fit(shape, ArcTolerance, mirror ? CurveSymmetry.Mirrors : CurveSymmetry.HalfTurn);
        EdgePoint[] edgeMap = EdgeMap(edge);
        StrainSampler sampler = new(map, radius);
        StrainField field = sampler.Field(Rings, Spokes);
        sampler.RefuseFold(field);
        return new FlatPanel
        {
            Arcs = fit.Arcs,
            Outline = fit.Arcs.ContainingPolygon(PolygonTolerance),
            ArcDeviationMm = fit.Deviation,
            LengthMm = measure.LengthMm,
            WidthMm = measure.WidthMm,
            WaistMm = measure.WaistMm,
            Sphere = Figures(request),
            EdgeMap = edgeMap,
            Strain = Summary(sampler, field, edgeMap, PanelEnergy.Of(map, request.Law) * radius * radius),
            Allowances = allowances,
            Field = field,
            Solve = solve with { ChordTorqueNmm = solve.ChordTorqueNmm * request.Law.UU * radius * radius },
            EdgeLimit = limit,
        };
    }

    // Extremes are those of places where strain is settled; what a spike reads at a tip is said apart.
    private static StrainSummary Summary(StrainSampler sampler, StrainField field, EdgePoint[] edgeMap, double energyNmm)
    {
        // A spike is told from its surroundings by so much, per cent.
        const double apart = 0.5;
        double compression = Math.Max(0, sampler.Greatest(field, sample => -sample.MinorPercent, settled: true));
        double stretch = Math.Max(0, sampler.Greatest(field, sample => sample.MajorPercent, settled: true));
        double read = sampler.Greatest(field, sample => -sample.MinorPercent);
        double pulled = sampler.Greatest(field, sample => sample.MajorPercent);
        return new StrainSummary
        {
            MaxStretchPercent = stretch,
            MaxCompressionPercent = compression,
            EdgeMaxCompressionPercent = Math.Max(0, -edgeMap.Min(place => place.StretchPercent)),
            EdgeMismatchPercent = Mismatch(edgeMap),
            EnergyNmm = energyNmm,
            HasTipSpike = read > compression + apart || pulled > stretch + apart,
        };
    }

    // The elastic solve runs at unit stiffness, where its tolerances mean the same for every felt.
    private static (FlatMap Map, PanelSolve Solve, EdgeLimitReport? Limit) Flatten(PanelRequest request, SeamDomain domain)
    {
        FeltLaw unit = request.Law.Scaled(1 / request.Law.UU);
        if (request is { Method: FlatteningMethod.Elastic, Edge: EdgeRule.Mated, EdgeLimit: { } limit })
        {
            return new LimitedFlattening(unit, limit, ElasticFlattening.UsualDegree).Flatten(domain, request.RadiusMm, request.Law.UU);
        }

        IFlattening method = request.Method switch
        {
            FlatteningMethod.Elastic => new ElasticFlattening(unit, request.Edge, null, ElasticFlattening.UsualDegree),
            FlatteningMethod.Conformal => new ConformalFlattening(ConformalFlattening.UsualDegree),
            FlatteningMethod.Equidistant => new EquidistantFlattening(EquidistantFlattening.UsualDegree),
            _ => throw new ArgumentOutOfRangeException(nameof(request), request.Method, "no such flattening"),
        };
        (FlatMap map, PanelSolve solve) = method.Flatten(domain);
        return (map, solve, null);
    }

    private static SphereFigures Figures(PanelRequest request)
    {
        double radius = request.RadiusMm;
        return new SphereFigures
        {
            RadiusMm = radius,
            SeamLengthMm = radius * request.Seam.Length,
            PanelAreaMm2 = radius * radius * Seam.SeamCurve.PanelArea,
            WaistMm = radius * request.Seam.WaistAngle,
            LengthMm = radius * request.Seam.LengthAngle,
            WidthMm = radius * request.Seam.WidthAngle,
            LeastRadiusMm = radius / request.Seam.GreatestCurvature,
        };
    }

    /// <summary>The edge map of an edge before allowances.</summary>
    internal static EdgePoint[] EdgeMap(FlatEdge edge) =>
    [
        .. Enumerable.Range(0, EdgePlaces).Select(i =>
        {
            double s = 2 * Math.PI * i / EdgePlaces;
            CurvePoint here = edge.At(s);
            return new EdgePoint
            {
                U = here.Place.X,
                V = here.Place.Y,
                S = s,
                StretchPercent = 100 * (edge.StretchAt(s) - 1),
            };
        }),
    ];

    // s meets pi/2 - s.
    private static double Mismatch(EdgePoint[] edge)
    {
        double worst = 0;
        for (int i = 0; i < edge.Length; i++)
        {
            int mate = (edge.Length + (edge.Length / 4) - i) % edge.Length;
            double ratio = (1 + (edge[i].StretchPercent / 100)) / (1 + (edge[mate].StretchPercent / 100));
            worst = Math.Max(worst, 100 * Math.Abs(ratio - 1));
        }

        return worst;
    }
}
