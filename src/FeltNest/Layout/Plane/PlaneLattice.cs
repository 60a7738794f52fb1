using FeltNest.Geometry;
using FeltNest.Layout.Check;
using FeltNest.Layout.Limits;
using FeltNest.Layout.Polish;
using FeltNest.Layout.Rows;
using FeltNest.Layout.Rows.Tables;

namespace FeltNest.Layout.Plane;

/// <summary>The densest lattice of a part in the endless plane, gap included: the reference that says how much of the loss is due to the
/// shape and how much to the roll.</summary>
/// <remarks>Every tilt of the row direction gives a lattice whose first side touches; the best of these are polished in all four numbers of
/// a lattice. Parts without a half-turn are also laid in pairs with their turned selves. A search, not a proof: for a part that is not
/// convex no lattice is known to be the densest packing.</remarks>
internal static class PlaneLattice
{
    /// <summary>Parts per mm2 of plane.</summary>
    internal static double BestDensity(LayoutRequest request, RowTables tables, SearchEffort effort, CancellationToken stop)
    {
        // Boxes side by side are a lattice whatever the part.
        Outline part = request.Part.Outline;
        double boxes = 1 / ((part.MaxX - part.MinX + request.GapMm) * (part.MaxY - part.MinY + request.GapMm));
        return Math.Max(Best(request, tables, effort, stop)?.Density ?? 0, boxes);
    }

    /// <summary>The densest lattice found, polished; null where no start settled.</summary>
    internal static (double Density, PoseModel Model)? Best(
        LayoutRequest request, RowTables tables, SearchEffort effort, CancellationToken stop)
    {
        RowLattice[] all = [.. AllTilts(request, tables, effort).Select(t => t.Plane()).Where(l => l.Step > 0)];
        List<(double Density, PoseModel Model, double Parts)> starts = [];
        for (int i = 0; i < all.Length; i++)
        {
            double here = Density(all[i]);
            if (here >= Density(all[(i + 1) % all.Length]) && here >= Density(all[(i + all.Length - 1) % all.Length]))
            {
                starts.Add((here, RowModels.Plane(request, all[i]), 1));
            }
        }

        if (!tables.HasHalfTurn && !request.Rules.OneWay)
        {
            starts.AddRange(PairedRows.Plane(request, effort));
        }

        (double Density, PoseModel Model)? best = null;
        int tried = 0;
        foreach ((_, PoseModel model, double parts) in starts.OrderByDescending(s => s.Density))
        {
            // Where corners meet corners a start may not settle: then the next ones are asked until one does.
            if ((stop.IsCancellationRequested || tried++ >= effort.Starts / 2) && best is not null)
            {
                break;
            }

            if (LayoutPolisher.Polish(model, effort.PolishSteps, effort.FirstTrust) is { } end
                && parts / model.Cost(end) > (best?.Density ?? 0)
                && Passes(request, model, end))
            {
                best = (parts / model.Cost(end), model with { Parameters = end });
            }
        }

        return best;
    }

    // As a layout of rows, so many that every neighbour in the plane is among them: sharp corners can deceive the polish, never the check.
    private static bool Passes(LayoutRequest request, PoseModel model, double[] end)
    {
        double radius = request.Part.Outline.Points.Max(p => p.Length);
        double pitch = model.Periods[0].X.At(end);
        double shift = model.Periods[1].X.At(end);
        double step = model.Periods[1].Y.At(end);
        int rows = 2 + (int)Math.Ceiling(((2 * radius) + request.GapMm) / step);
        double spread = model.Panels.Max(p => Math.Abs(p.Y.At(end)));
        double half = radius + spread + 1;
        PlacedPanel[] panels = [.. from j in Enumerable.Range(0, rows) from p in model.Panels select new PlacedPanel
        {
            Part = 0,
            XMm = p.X.At(end) + (j * shift),
            YMm = half + p.Y.At(end) + (j * step),
            AngleDeg = double.RadiansToDegrees(p.Angle.At(end)),
        }];
        double width = (2 * half) + (rows * step);
        RollLayout layout = new()
        {
            Parts = [request.Part with { Arcs = null }],
            RollWidthMm = width,
            Trims = EdgeTrims.Both(0),
            GapMm = request.GapMm,
            Rules = new LayoutRules(null, 0, RowRule.Any, false),
            Bands = [new LayoutBand { YFromMm = 0, YToMm = width, Repeat = new LayoutRepeat(pitch, panels) }],
            Search = new SearchRecord
            {
                Seed = 1,
                Effort = 1,
                CutShort = false,
                Method = string.Empty,
                ProvedOnGrid = null,
                PlaneUtilisationPercent = 0,
                LeastGapMm = 0,
                FreerRowsPanelsPerMetre = null,
            },
        };
        return LayoutCheck.Verify(layout).Passed;
    }

    // A fixed warp angle leaves few tables; the plane is searched over all tilts whatever the rules, as turning the whole plane changes
    // nothing.
    private static IEnumerable<TiltRows> AllTilts(LayoutRequest request, RowTables tables, SearchEffort effort)
    {
        TiltRange free = new() { Least = double.NegativeInfinity, Most = double.PositiveInfinity, IsFree = true };
        return TiltRange.Of(request.Rules).IsFree
            ? tables.Tilts
            : free.Grid(effort.TiltStepDeg).AsParallel().AsOrdered().WithDegreeOfParallelism(2)
                .Select(t => new TiltRows(TurnedPart.Make(request.Part.Outline, t, tables.Grid, request.GapMm)));
    }

    private static double Density(RowLattice lattice) => 1 / (lattice.Pitch * lattice.Step);
}
