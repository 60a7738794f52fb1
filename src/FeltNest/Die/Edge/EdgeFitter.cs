using FeltNest.Geometry;
using FeltNest.Geometry.Curves;
using FeltNest.Layout;

namespace FeltNest.Die.Edge;

/// <summary>Turns a part's outline into a cutting edge of few tangent arcs.</summary>
/// <remarks>Only one part of a symmetric outline is fitted and mirrored or turned, so both sides are equal to the last digit.</remarks>
internal static class EdgeFitter
{
    /// <summary>Most that a die's edge may lie off the true outline, mm.</summary>
    public const double ToleranceMm = 0.02;

    /// <summary>How far a computed panel's arcs may lie off the computed curve, mm.</summary>
    public const double PanelArcsMm = 0.01;

    // What the fit leaves for its own measuring between looks, mm.
    private const double Room = 4e-4;

    // Looks along a piece when distances are measured.
    private const int Looks = 24;

    /// <summary>Cutting edge of each part that a band holds, by the part's place in the layout's list; null for parts that are not
    /// cut.</summary>
    /// <exception cref="GeometryException">An outline too rough for arcs.</exception>
    /// <exception cref="OperationCanceledException">Broken off.</exception>
    public static IReadOnlyList<DieEdge?> Edges(RollLayout layout, int band, CancellationToken stop = default)
    {
        IReadOnlyList<int> cut = CutParts.Of(layout, band);
        return [.. layout.Parts.Select((part, i) => cut.Contains(i) ? Fit(part, stop) : null)];
    }

    /// <summary>The edge of a part.</summary>
    /// <param name="part">The part.</param>
    /// <param name="stop">Breaks the fit off.</param>
    /// <exception cref="GeometryException">The outline cannot be followed within the tolerance.</exception>
    /// <exception cref="OperationCanceledException">Broken off.</exception>
    public static DieEdge Fit(LayoutPart part, CancellationToken stop = default)
    {
        double layoutOff = part.Ball is not null ? PanelArcsMm : 0;
        double budget = ToleranceMm - layoutOff;
        SourceChain source = part.Arcs is { } arcs ? SourceChain.Of(arcs) : SourceChain.Of(part.Outline, (budget - Room) / 2);
        (EdgeMirrors mirrors, bool halfTurn) = EdgeSymmetry.Of(part.Outline);
        for (double asked = budget - source.SmoothedMm - Room; asked > budget / 4; asked *= 0.93)
        {
            ArcOutline fitted = ArcOutline.From(EdgeSymmetry.Whole(Domain(source, mirrors, halfTurn, asked, stop), mirrors, halfTurn));

            // An outline of fewer arcs than were found stays as it is.
            bool kept = source.SmoothedMm == 0
                && source.Vertices.Count <= fitted.Vertices.Count
                && source.Corners.Count == Corners(source.Pieces).Count;
            double off = kept ? 0 : Off(source, fitted) + source.SmoothedMm;
            if (off > budget)
            {
                continue;
            }

            ArcOutline edge = kept ? ArcOutline.From(source.Vertices) : fitted;
            DieEdge made = new()
            {
                Arcs = edge,
                Corners = [],
                OffLayoutMm = off,
                LayoutOffMm = layoutOff,
                Mirrors = mirrors,
                HalfTurn = halfTurn,
            };
            return made with { Corners = Corners(made.Pieces) };
        }

        throw new GeometryException(
            FormattableString.Invariant($"outline is too rough for arcs within {ToleranceMm} mm"), source.Vertices[0].Point);
    }

    /// <summary>Joints that bend by more than a tenth of a degree, as places in the list.</summary>
    internal static IReadOnlyList<int> Corners(IReadOnlyList<EdgePiece> pieces)
    {
        const double tangent = 0.1 * Math.PI / 180;
        return [.. Enumerable.Range(0, pieces.Count).Where(i =>
        {
            Point2 a = pieces[(i + pieces.Count - 1) % pieces.Count].Direction(1);
            Point2 b = pieces[i].Direction(0);
            return Math.Abs(Math.Atan2(a.Cross(b), a.Dot(b))) > tangent;
        })];
    }

    // Vertices of one part of the outline from which symmetry makes the rest, with its end.
    private static (List<ArcVertex> Chain, Point2 End) Domain(
        SourceChain source, EdgeMirrors mirrors, bool halfTurn, double tolerance, CancellationToken stop)
    {
        (double from, double to) = EdgeSymmetry.Domain(source, mirrors, halfTurn);
        double[] corners =
        [
            .. source.Corners
                .SelectMany(c => new[] { c, c + source.Length })
                .Where(c => c > from + (1e-9 * source.Length) && c < to - (1e-9 * source.Length))
                .Order(),
        ];
        List<double> stops = [from, .. corners, to];
        bool fromCorner = source.Corners.Any(c => Near(source, c, from));
        bool toCorner = source.Corners.Any(c => Near(source, c, to));
        List<ArcVertex> chain = [];
        for (int i = 0; i + 1 < stops.Count; i++)
        {
            double begin = stops[i];
            double end = stops[i + 1];
            double span = end - begin;
            bool first = i == 0 && !fromCorner;
            bool last = i + 2 == stops.Count && !toCorner;
            IPlaneCurve stretch = new HeldEnds(
                source.Stretch(begin, end), span, i == 0 ? EdgeSymmetry.Axis(mirrors, true) : default,
                i + 2 == stops.Count ? EdgeSymmetry.Axis(mirrors, false) : default, first, last);
            double[] joints =
            [
                .. source.Joints.SelectMany(j => new[] { j, j + source.Length }).Where(j => j > begin && j < end).Select(j => j - begin),
            ];
            chain.AddRange(One(source, stretch, begin, span, joints, tolerance, first || last, stop));
        }

        Straighten(chain);

        return (chain, new HeldEnds(source.Stretch(from, to), to - from, default, EdgeSymmetry.Axis(mirrors, false), false, !toCorner)
            .At(to - from).Place);
    }

    // Arcs that turn and rise so little that no bender makes them are straight: the bend at their joints stays far below a tenth of a
    // degree.
    private static void Straighten(List<ArcVertex> chain)
    {
        const double turn = 0.02 * Math.PI / 180;
        const double rise = 5e-4;
        for (int i = 0; i + 1 < chain.Count; i++)
        {
            if (Math.Abs(chain[i].Turn) < turn && Math.Abs(chain[i].Turn) * (chain[i + 1].Point - chain[i].Point).Length / 8 < rise)
            {
                chain[i] = chain[i] with { Turn = 0 };
            }
        }
    }

    private static IReadOnlyList<ArcVertex> One(
        SourceChain source, IPlaneCurve stretch, double begin, double span, double[] joints, double tolerance, bool held,
        CancellationToken stop)
    {
        Point2 start = stretch.At(0).Place;
        if (joints.Length == 0
            && source.Pieces.FirstOrDefault(p => p.Turn == 0 && p.DistanceTo(source.At(begin + (span / 2))) < 1e-9) is
            {
                LengthMm: > 0
            } straight
            && straight.LengthMm >= span - 1e-9)
        {
            return [new ArcVertex(start.X, start.Y, 0)];
        }

        return ArcSplineFitter.Fit(stretch, span, joints, tolerance, held, stop)
            ?? throw new GeometryException(FormattableString.Invariant($"outline is too rough for arcs within {ToleranceMm} mm"), start);
    }

    private static double Off(SourceChain source, ArcOutline fitted)
    {
        EdgePiece[] edge = [.. fitted.Vertices.Select((v, i) => EdgePiece.Of(v, fitted.Vertices[(i + 1) % fitted.Vertices.Count].Point))];
        return Math.Max(OneWay(source.Pieces, edge), OneWay(edge, source.Pieces));
    }

    private static double OneWay(IReadOnlyList<EdgePiece> from, IReadOnlyList<EdgePiece> to) =>
        from.Max(piece => Enumerable.Range(0, Looks).Max(k => to.Min(other => other.DistanceTo(piece.At((double)k / Looks)))));

    private static bool Near(SourceChain source, double a, double b) =>
        Math.Abs(Math.IEEERemainder(a - b, source.Length)) < 1e-9 * source.Length;

    // A curve whose ends are put on the mirrors they belong to, their directions square to them.
    private sealed class HeldEnds(
        IPlaneCurve inner, double span, Point2 startAxis, Point2 endAxis, bool startSmooth, bool endSmooth) : IPlaneCurve
    {
        public double Period => inner.Period;

        public CurvePoint At(double parameter)
        {
            CurvePoint at = inner.At(parameter);
            if (parameter <= 0)
            {
                return On(at, startAxis, startSmooth);
            }

            if (parameter >= span)
            {
                return On(at, endAxis, endSmooth);
            }

            return at;
        }

        private static CurvePoint On(CurvePoint at, Point2 axis, bool smooth)
        {
            if (axis == default)
            {
                return at;
            }

            Point2 square = axis.Left;
            return new CurvePoint(axis * at.Place.Dot(axis), smooth ? square * Math.Sign(at.Derivative.Dot(square)) : at.Derivative);
        }
    }
}
