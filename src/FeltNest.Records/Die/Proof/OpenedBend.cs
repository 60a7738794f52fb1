using FeltNest.Geometry;

namespace FeltNest.Die.Proof;

/// <summary>A bend of the rule as it came out: a run of the edge that turns one way.</summary>
internal sealed record OpenedBend
{
    /// <summary>From 1, along the edge.</summary>
    public required int Number { get; init; }

    /// <summary>Middle of the run, in the part's frame.</summary>
    public required Point2 Place { get; init; }

    /// <summary>Angle wanted, degrees; below 0 where the edge turns inwards.</summary>
    public required double WantedDeg { get; init; }

    /// <summary>Share of the angle that is missing: above 0 the bend sprang open.</summary>
    public required double OpenedShare { get; init; }

    /// <summary>Standard error of that share, from the scatter of the cavities or of the points.</summary>
    public required double ErrorShare { get; init; }

    /// <summary>Angle that came out, degrees.</summary>
    public double GotDeg => WantedDeg * (1 - OpenedShare);

    /// <summary>Angle to set next time so that the one wanted comes out, degrees; the wanted one where the error is as large as what is
    /// seen.</summary>
    public double SetDeg => Math.Abs(OpenedShare) > 2 * ErrorShare ? WantedDeg / (1 - OpenedShare) : WantedDeg;
}
