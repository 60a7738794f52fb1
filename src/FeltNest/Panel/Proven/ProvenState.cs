using FeltNest.Geometry;

namespace FeltNest.Panel.Proven;

/// <summary>A measured outline laid on the panel of some values.</summary>
internal sealed record ProvenState
{
    /// <summary>Neutral layer, waist in mm, edge limit in per cent.</summary>
    public required double[] Values { get; init; }

    /// <summary>Turn of the outline, radians, after its long axis was laid along u.</summary>
    public required double Turn { get; init; }

    /// <summary>Move of the outline, mm.</summary>
    public required Point2 Move { get; init; }

    /// <summary>Parameter of the panel's edge nearest to each place.</summary>
    public required double[] Parameters { get; init; }

    /// <summary>That place of the edge.</summary>
    public required Point2[] Feet { get; init; }

    /// <summary>Normal there, out of the panel.</summary>
    public required Point2[] Outward { get; init; }

    /// <summary>Distance along it, mm.</summary>
    public required double[] Off { get; init; }

    /// <summary>Sum of the squared distances, mm2.</summary>
    public double Square => Off.Sum(d => d * d);

    /// <summary>Root mean square of the distances, mm.</summary>
    public double Rms => Math.Sqrt(Square / Off.Length);
}
