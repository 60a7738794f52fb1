using FeltNest.Geometry;
using FeltNest.Geometry.Curves;
using FeltNest.Panel.Proven;

namespace FeltNest.Panel.Wrap.Edge;

/// <summary>Lays a smooth edge through the places of a real outline: a tracing, a probed edge, a scan, a few points.</summary>
/// <remarks>How many waves the places support is found by generalised cross-validation (P. Craven, G. Wahba, <i>Numerische Mathematik</i>
/// 31:377-403, 1979): fewer would leave shape behind, more would follow the noise. Half-turn and mirrors are taken where the places are off
/// them by no more than their own noise, or than a careful tracing repeats to.</remarks>
internal static class EdgeSmoother
{
    /// <summary>Fewest places at which an outline bends that are places of a smooth edge: fewer are corners that are meant.</summary>
    public const int FewestPlaces = 24;

    /// <summary>Most that smoothing may move the places, root mean square, mm: what a hand probe scatters by.</summary>
    public const double MostRmsMm = 0.25;

    // Most that it may move one of them, and run off the outline as drawn between them, mm: the rise of the tips over chords of 9 mm.
    private const double MostMm = 1;

    // Turns of a vertex below this, radians (half a degree), are rounding.
    private const double Bend = 0.5 * Math.PI / 180;

    // The highest wave ever needed: a panel's tips are followed to 0.001 mm.
    private const int MostWave = 41;

    // Symmetric edges may scatter by this share and as much more than one without, mm.
    private const double KeptShare = 1.1;
    private const double KeptMm = 0.003;

    /// <summary>The smooth edge; null where the outline is smooth as drawn, has corners that are meant, or is no smooth edge within its
    /// noise.</summary>
    /// <param name="outline">The outline.</param>
    /// <param name="mayBeEven">Whether the edge may be taken to have mirrors or the half-turn.</param>
    public static SmoothEdge? Smoothed(ArcOutline outline, bool mayBeEven = true)
    {
        if (EdgePlaces.Bends(outline, Bend) < FewestPlaces && EdgePlaces.IsEven(outline))
        {
            return null;
        }

        Point2 centroid = outline.Centroid;
        double axis = LongAxis.Of([.. outline.Vertices.Select(v => v.Point)], centroid).Angle;
        (Point2[] places, double[] parameters) = EdgePlaces.Of(outline, centroid, axis);
        if (places.Length < FewestPlaces || Best(places, parameters, mayBeEven) is not var (fit, symmetry))
        {
            return null;
        }

        MovedCurve curve = new(fit.Curve, axis, centroid);
        EdgeSmoothing smoothing = new()
        {
            Places = places.Length,
            RmsMm = fit.Rms,
            GreatestMm = fit.Off.Max(Math.Abs),
            OffDrawnMm = EdgePlaces.OffDrawn(outline, curve),
            KeptBy = Words(symmetry),
        };
        bool isEdge = smoothing is { RmsMm: <= MostRmsMm, GreatestMm: <= MostMm, OffDrawnMm: <= MostMm };
        return isEdge ? new SmoothEdge(curve, smoothing, symmetry, axis + fit.Axis) : null;
    }

    private static string Words(CurveSymmetry symmetry) => symmetry switch
    {
        CurveSymmetry.None => "nothing",
        CurveSymmetry.HalfTurn => "half-turn",
        _ => "mirrors",
    };

    private static (WaveFit Fit, CurveSymmetry Symmetry)? Best(Point2[] places, double[] parameters, bool mayBeEven)
    {
        if (Fitted(CurveSymmetry.None, places, parameters) is not { } plain)
        {
            return null;
        }

        double most = Math.Max((KeptShare * plain.Scatter) + KeptMm, ProvenFit.LeastTellableMm);
        CurveSymmetry[] even = mayBeEven ? [CurveSymmetry.Mirrors, CurveSymmetry.HalfTurn] : [];
        foreach (CurveSymmetry symmetry in even)
        {
            if (Fitted(symmetry, places, parameters) is { } kept && kept.Scatter <= most)
            {
                return (kept.Fit, symmetry);
            }
        }

        return (plain.Fit, CurveSymmetry.None);
    }

    // The fit with the number of waves that predicts a left out place best, and the scatter it finds: its rms by the values it has left.
    private static (WaveFit Fit, double Scatter)? Fitted(CurveSymmetry symmetry, Point2[] places, double[] parameters)
    {
        int n = places.Length;
        (WaveFit Fit, double Scatter)? best = null;
        double least = double.PositiveInfinity;
        for (int wave = 3; wave <= MostWave; wave += 2)
        {
            WaveFit fit = new(symmetry, places, parameters);

            // At least a third of the places is left to tell noise from shape.
            int values = fit.Values(wave);
            if (3 * values > 2 * n || !fit.TryFit(wave))
            {
                break;
            }

            double left = 1 - ((double)values / n);
            double score = fit.Rms / left;
            if (score < least)
            {
                (least, best) = (score, (fit, fit.Rms / Math.Sqrt(left)));
            }
        }

        return best;
    }
}
