using FeltNest.Geometry;
using FeltNest.Layout.Rows.Tables;

namespace FeltNest.Layout.Rows;

/// <summary>Rows of bounding boxes: the plainest layout, which keeps every distance by construction. The last resort where nothing better passes the check.</summary>
internal static class BoxRows
{
    /// <summary>As many boxes over the width as fit, at the allowed tilt with the least height.</summary>
    internal static (LayStart Start, LayoutRepeat Repeat) Lay(LayoutRequest request, TiltRange tilts)
    {
        Outline part = request.Part.Outline;
        (_, double tilt) = tilts.IsFree ? OutlineWidth.Least(part, 0, Math.PI) : OutlineWidth.Least(part, tilts.Least, tilts.Most);
        Outline turned = part.Turned(tilt);

        // A hair more than the gap, so that rounding of the written places keeps it.
        double gap = request.GapMm + (1e-9 * (turned.MaxX - turned.MinX)), height = turned.MaxY - turned.MinY;
        int rows = 1 + (int)Math.Floor((request.UsableWidthMm - height) / (height + gap));
        RowLattice lattice = new(tilt, Math.Max(1, rows), turned.MaxX - turned.MinX + gap, 0, height + gap);
        LayStart start = LayStart.Of(request, lattice, tilts) with { Method = "rows of bounding boxes" };
        return (start, start.Build(start.Model.Parameters));
    }
}
