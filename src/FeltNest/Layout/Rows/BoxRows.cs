using FeltNest.Geometry;
using FeltNest.Layout.Limits;

namespace FeltNest.Layout.Rows;

/// <summary>Rows of bounding boxes: the plainest layout, which keeps every distance by construction. The last resort where nothing better
/// passes the check.</summary>
internal static class BoxRows
{
    /// <summary>As many boxes over the width as fit, at the allowed tilt with the least height.</summary>
    internal static LayCandidate Lay(LayoutRequest request, TiltRange tilts)
    {
        List<double> places = [];
        Outline part = request.Part.Outline;
        (_, double tilt) = tilts.Flattest(part);
        Outline turned = part.Turned(tilt);

        // A hair more than the gap, so that rounding of the written places keeps it.
        double gap = request.GapMm + (1e-9 * (turned.MaxX - turned.MinX));
        double height = turned.MaxY - turned.MinY;
        foreach ((double low, double high) in FreeCloth.Of(request))
        {
            for (double y = low - turned.MinY; y + turned.MaxY <= high + (1e-12 * high); y += height + gap)
            {
                places.Add(y);
            }
        }

        LayoutRepeat repeat = new(
            turned.MaxX - turned.MinX + gap,
            [.. places.Select(y => new PlacedPanel { Part = 0, XMm = 0, YMm = y, AngleDeg = RowModels.Degrees(tilt) })]);
        return new LayCandidate(
            "rows of bounding boxes", [new LayoutBand { YFromMm = request.Usable.Low, YToMm = request.Usable.High, Repeat = repeat }]);
    }
}
