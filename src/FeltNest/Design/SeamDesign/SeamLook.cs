using FeltNest.Geometry;
using FeltNest.Seam;

namespace FeltNest.Design.SeamDesign;

/// <summary>What is read off a panel at fixed places: its outline, the felt's strains, the seam. As differences of two looks at states
/// moved along a tangent they are slopes.</summary>
internal sealed record SeamLook
{
    /// <summary>Places of the cut outline at equal steps of the seam parameter, the whole way round.</summary>
    public required Point2[] Outline { get; init; }

    /// <summary>Greater principal stretch at the places of the field, per cent.</summary>
    public required double[] Stretch { get; init; }

    /// <summary>Greatest principal compression at the same places, per cent of flat length.</summary>
    public required double[] Compression { get; init; }

    /// <summary>Area of sphere for a unit of disc at the places of the field, at unit radius: it goes to 0 where a tip is so blunt that
    /// the panel cannot be charted.</summary>
    public required double[] Chart { get; init; }

    /// <summary>Geodesic curvature of the seam at the outline's parameters, 1/mm.</summary>
    public required double[] Curvature { get; init; }

    /// <summary>Places of the seam on the fitted sphere, mm.</summary>
    public required SpherePoint[] Seam { get; init; }

    /// <summary>Gap round the seam with the edge free, mm; empty where no gap is limited. Places that do not face each other have
    /// none.</summary>
    public required double[] Gaps { get; init; }

    /// <summary>Slope between two looks that lie <paramref name="apart"/> from each other.</summary>
    public static SeamLook Slope(SeamLook above, SeamLook below, double apart) => new()
    {
        Outline = [.. above.Outline.Select((p, i) => (p - below.Outline[i]) * (1 / apart))],
        Stretch = Differences(above.Stretch, below.Stretch, apart),
        Compression = Differences(above.Compression, below.Compression, apart),
        Chart = Differences(above.Chart, below.Chart, apart),
        Curvature = Differences(above.Curvature, below.Curvature, apart),
        Gaps = Differences(above.Gaps, below.Gaps, apart),
        Seam = [.. above.Seam.Select((p, i) => (1 / apart) * (p - below.Seam[i]))],
    };

    private static double[] Differences(double[] above, double[] below, double apart) =>
        [.. above.Select((value, i) => (value - below[i]) / apart)];
}
