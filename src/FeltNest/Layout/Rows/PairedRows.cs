using FeltNest.Geometry;
using FeltNest.Geometry.NoFit;
using FeltNest.Layout.Limits;
using FeltNest.Layout.Polish;
using FeltNest.Layout.Rows.Tables;

namespace FeltNest.Layout.Rows;

/// <summary>Rows of pairs, each a part and a second one touching it. With the second half-turned: single rows head to tail and every
/// lattice of such pairs, for parts without a half-turn of their own. With it parallel: two panels a row period, each with its own offset,
/// which gains where the warp fixes the angle.</summary>
/// <remarks>The second part's places are taken along the boundary of its no-fit region against the part; the pair then moves as one. R.
/// Cuninghame-Green and L. S. Davis,
/// <i>Cut out waste!</i>, O.R. Insight 5, 1992 (from memory), pair turned blanks in strips likewise.</remarks>
internal static class PairedRows
{
    // As for single parts: deeper than this share of the loose step, pairs no longer stand in each other's openings.
    private const double DeepestStep = 0.5;

    // Rings of more corners than this are thinned.
    private const int ManyCorners = 200;

    /// <summary>The most promising layouts of pairs over the roll, best first.</summary>
    internal static List<LayStart> Best(LayoutRequest request, TiltRange tilts, double turn, SearchEffort effort)
    {
        double width = request.UsableWidthMm;
        return [.. Pairs(request, tilts, turn, effort)
            .SelectMany(pair => pair.Rows.Fits(width, DeepestStep).Select(rows => (Rows: rows, pair.Offset)))
            .OrderByDescending(f => f.Rows.Density).Take(effort.Starts)
            .Select(f => new LayStart(
                turn == 0 ? "rows of two panels a period, polished" : "head-to-tail rows, polished", 2 * f.Rows.Density,
                RowModels.Paired(request, f.Rows, f.Offset, turn, tilts),
                at => RowModels.PairedRepeat(f.Rows.Rows, turn, at)))];
    }

    /// <summary>The most promising lattices of pairs in the endless plane.</summary>
    internal static List<(double Density, PoseModel Model, double Parts)> Plane(LayoutRequest request, SearchEffort effort)
    {
        TiltRange free = new() { Least = double.NegativeInfinity, Most = double.PositiveInfinity, IsFree = true };
        return [.. Pairs(request, free, Math.PI, effort).Select(pair => (Rows: pair.Rows.Plane(), pair.Offset)).Where(f => f.Rows.Step > 0)
            .OrderBy(f => f.Rows.Pitch * f.Rows.Step).Take(effort.Starts)
            .Select(f => (2 / (f.Rows.Pitch * f.Rows.Step), RowModels.PlanePaired(request, f.Rows, f.Offset), 2.0))];
    }

    private static List<(TiltRows Rows, Point2 Offset)> Pairs(LayoutRequest request, TiltRange tilts, double turn, SearchEffort effort)
    {
        Outline part = request.Part.Outline;
        double extent = Math.Max(part.MaxX - part.MinX, part.MaxY - part.MinY);

        // A quarter of the samples and few tilts: pairs are many, and the best are polished. Where the tilt is fixed there is time for all
        // samples.
        double[] angles = tilts.Grid(6 * effort.TiltStepDeg);
        double grid = (extent + request.GapMm) / (angles.Length > 1 ? effort.Samples / 4.0 : effort.Samples);

        // About as many places round the part as a tenth of the samples: the way round is some six times the part's extent.
        double spacing = 60 * extent / effort.Samples;
        Point2[] places = [.. Places(part, turn, request.GapMm, extent, spacing)];
        return [.. (from angle in angles from place in places select (angle, place)).AsParallel().AsOrdered().WithDegreeOfParallelism(2)
            .Select(c => (new TiltRows(TurnedPart.Pair(part, c.place, turn, c.angle, grid, request.GapMm), spacing / 2), c.place))];
    }

    // Evenly along the boundary on which the second part touches the gap round the part. A part of many corners is simplified by a
    // thousandth of its size first.
    private static IEnumerable<Point2> Places(Outline part, double turn, double gap, double extent, double spacing)
    {
        Outline plain = part.Points.Count <= 60 ? part : Outline.From(PolygonSets.Simplified(part.Points, extent / 1000));
        NoFitRegion region = NoFitRegion.Of(plain, plain.Turned(turn));
        if (gap == 0)
        {
            // Exact fits into a pocket: the only allowed places there.
            foreach (Point2 tight in region.IsolatedPoints.Concat(region.Slits.SelectMany(s => new[] { s.From, s.To })))
            {
                yield return tight;
            }
        }

        foreach (Point2[] ring in region.Rings)
        {
            IEnumerable<Point2[]> grown = gap > 0 ? PolygonSets.Offset(ring, gap) : [ring];
            foreach (Point2 place in grown.SelectMany(round => Along(round, spacing)))
            {
                yield return place;
            }
        }
    }

    // Every corner of a plain ring, exact fits among them, and of a ring of many corners those that are not close together; and places
    // evenly between them.
    private static IEnumerable<Point2> Along(Point2[] round, double spacing)
    {
        double next = 0;
        double since = double.PositiveInfinity;
        double close = round.Length <= ManyCorners ? 0 : spacing / 4;
        for (int i = 0; i < round.Length; i++)
        {
            Point2 along = round[(i + 1) % round.Length] - round[i];
            if (since >= close)
            {
                since = 0;
                yield return round[i];

                // Where two sides face each other over their whole length.
                yield return round[i] + (along * 0.5);
            }

            since += along.Length;
            for (; next < along.Length; next += spacing)
            {
                yield return round[i] + (along * (next / along.Length));
            }

            next -= along.Length;
        }
    }
}
