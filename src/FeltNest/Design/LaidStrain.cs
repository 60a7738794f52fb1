using FeltNest.Ball;
using FeltNest.Layout;
using FeltNest.Panel;
using FeltNest.Panel.Felt;
using FeltNest.Panel.Wrap;

namespace FeltNest.Design;

/// <summary>What becomes of a panel's strains when the layout lays it at another angle to the warp than it is designed for.</summary>
internal sealed record LaidStrain
{
    /// <summary>Angle designed for, degrees.</summary>
    public required double DesignAngleDeg { get; init; }

    /// <summary>Angle laid at, degrees, 0 to 180.</summary>
    public required double LaidAngleDeg { get; init; }

    /// <summary>The panel laid on its ball with the felt's warp where the layout puts it: edge free, and held on the seam by its own
    /// edge map.</summary>
    public required WrapResult Wrap { get; init; }

    // Angles closer than this, in degrees, are one: no guide holds the cloth better.
    private const double SameAngleDeg = 0.05;

    // Each angle is a wrap of its own; where every panel has its own tilt the ones furthest off the design say enough.
    private const int MostAngles = 6;

    /// <summary>One entry for each angle of the layout that is not the design's, at most the six furthest from it; empty for felt that is
    /// the same in all directions.</summary>
    /// <remarks>Computed by the wrap, not estimated: the cut shape stays, the felt's stiff direction in it turns.</remarks>
    public static IReadOnlyList<LaidStrain> Of(BallSpec ball, FlatPanel panel, RollLayout layout)
    {
        if (ball.Panel.WarpAngleDeg is not { } design || FeltLaw.IsIsotropic(ball.Felt))
        {
            return [];
        }

        double[] laid = [.. layout.Bands
            .SelectMany(b => b.Repeat.Panels)
            .Where(p => p.Part == 0)
            .Select(p => Math.Round(p.AngleDeg - (Math.Floor(p.AngleDeg / 180) * 180), 6))
            .Distinct()
            .Where(angle => Math.Abs(Math.IEEERemainder(angle - design, 180)) >= SameAngleDeg)
            .OrderByDescending(angle => Math.Abs(Math.IEEERemainder(angle - design, 180))).Take(MostAngles).Order()];
        WrapRequest asDesigned = WrapRequest.For(ball, panel.EdgeMap);
        return [.. laid.Select(angle => new LaidStrain
        {
            DesignAngleDeg = design,
            LaidAngleDeg = angle,
            Wrap = PanelWrap.Lay(asDesigned with { Law = FeltLaw.For(ball.Felt, double.DegreesToRadians(angle)) }),
        })];
    }
}
