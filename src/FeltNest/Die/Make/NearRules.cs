using FeltNest.Die.Edge;
using FeltNest.Die.Effort;
using FeltNest.Die.SharedRule;
using FeltNest.Geometry;

namespace FeltNest.Die.Make;

/// <summary>Edges of a die with common cuts that come nearer to each other than a rule is thick, yet are not one line.</summary>
internal static class NearRules
{
    // The edge is looked at in steps of about this, mm.
    private const double Step = 1;

    // Near the end of a common run the rules that go on from it must come near each other: so many thicknesses are not looked at.
    private const double AtEnds = 3;

    /// <summary>Length of such edge, both sides counted, mm; 0 where no common cut was asked for.</summary>
    public static double LengthMm(DieDesign design, DieWork work)
    {
        if (!design.Request.Order.CommonCut)
        {
            return 0;
        }

        double thick = design.Request.Order.Rule.ThicknessMm;
        IReadOnlyList<RuleRun> runs = design.Gang.Common.Runs;
        (int Cavity, EdgePiece Piece)[] alone =
        [
            .. design.Gang.Cavities.SelectMany((c, i) =>
                design.Gang.Common.Has(i) ? [] : EdgeWalk.Placed(design.Edges[c.Placed.Part]!, c).Pieces.Select(p => (i, p))),
            .. runs.Where(r => r.Other is null).SelectMany(r => r.Pieces.Select(p => (r.Cavity, p))),
        ];
        return Near(alone, Ends(runs, thick), thick, work);
    }

    private static PlaceGrid<Point2> Ends(IReadOnlyList<RuleRun> runs, double thick)
    {
        PlaceGrid<Point2> ends = new(AtEnds * thick);
        foreach (Point2 end in runs.SelectMany(r => new[] { r.Line[0].Point, r.Line[^1].Point }).Distinct())
        {
            ends.Add(end, end);
        }

        return ends;
    }

    private static double Near((int Cavity, EdgePiece Piece)[] alone, PlaceGrid<Point2> ends, double thick, DieWork work)
    {
        double reach = thick + alone.Select(p => p.Piece.LengthMm).DefaultIfEmpty().Max();
        double length = 0;
        PlaceGrid<(int Cavity, EdgePiece Piece)> middles = new(reach);
        foreach ((int Cavity, EdgePiece Piece) piece in alone)
        {
            middles.Add(piece.Piece.Middle, piece);
        }

        foreach ((int cavity, EdgePiece piece) in alone)
        {
            work.Look();
            EdgePiece[] close =
            [
                .. middles
                    .Near(piece.Middle, reach)
                    .Where(o => o.Cavity != cavity && MayBeNear(piece, o.Piece, thick))
                    .Select(o => o.Piece),
            ];
            int count = close.Length == 0 ? 0 : (int)Math.Ceiling(piece.LengthMm / Step);
            int near = Enumerable.Range(0, count)
                .Select(k => piece.At((k + 0.5) / count))
                .Count(p =>
                    close.Any(o => o.DistanceTo(p) < thick)
                        && ends.Near(p, AtEnds * thick).All(e => (e - p).Length > AtEnds * thick));
            length += near * piece.LengthMm / Math.Max(1, count);
        }

        return length;
    }

    private static bool MayBeNear(EdgePiece a, EdgePiece b, double within) =>
        (a.Middle - b.Middle).Length <= ((a.LengthMm + b.LengthMm) / 2) + within;
}
