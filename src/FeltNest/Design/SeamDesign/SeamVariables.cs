using FeltNest.Ball;
using FeltNest.Seam;

namespace FeltNest.Design.SeamDesign;

/// <summary>The numbers a seam is designed by: its waist and the amounts of its waves. All are lengths on the fitted sphere, mm, so that
/// one step means the same for each.</summary>
internal sealed class SeamVariables
{
    private readonly BallSpec ball;

    private SeamVariables(BallSpec ball, SeamFamily family, IReadOnlyList<int> orders, bool turnsWarp)
    {
        this.ball = ball;
        TurnsWarp = turnsWarp;
        Family = family;
        Orders = orders;
        RadiusMm = ball.FittedRadiusMm;
    }

    /// <summary>Family of the seam.</summary>
    public SeamFamily Family { get; }

    /// <summary>Orders of the waves.</summary>
    public IReadOnlyList<int> Orders { get; }

    /// <summary>Radius of the fitted sphere, mm.</summary>
    public double RadiusMm { get; }

    /// <summary>Whether the last number is the panel's turn against the warp, as an arc on the fitted sphere from the ball's own
    /// angle.</summary>
    public bool TurnsWarp { get; }

    /// <summary>How many numbers there are.</summary>
    public int Count => 1 + Orders.Count + (TurnsWarp ? 1 : 0);

    /// <summary>Waist and waves of a shaped seam, and the turn against the warp where that is free.</summary>
    public static SeamVariables Shaped(BallSpec ball, IReadOnlyList<int> orders, bool turnsWarp = false) =>
        new(ball, SeamFamily.Shaped, orders, turnsWarp);

    /// <summary>The waist of a family.</summary>
    public static SeamVariables OfFamily(BallSpec ball, SeamFamily family) => new(ball, family, [], turnsWarp: false);

    /// <summary>Numbers of a seam without waves at a waist, its panel turned against the warp.</summary>
    /// <param name="waistMm">The waist.</param>
    /// <param name="turn">From the ball's own angle, radians; nought where the turn is no number of the design.</param>
    public double[] Plain(double waistMm, double turn = 0)
    {
        double[] values = new double[Count];
        values[0] = waistMm;
        if (TurnsWarp)
        {
            values[^1] = turn * RadiusMm;
        }

        return values;
    }

    /// <summary>Least and greatest waist, mm: so far inside what the family allows that differences can be taken to both sides.</summary>
    public (double Least, double Most) Waists()
    {
        (double least, double most) = SeamCurve.WaistRange(Family);
        return ((least * RadiusMm) + (2 * SeamSolver.Step), (most * RadiusMm) - (2 * SeamSolver.Step));
    }

    /// <summary>The numbers with the panel at an angle to the warp.</summary>
    /// <param name="values">The numbers, the turn among them.</param>
    /// <param name="angleDeg">Angle from the warp to +u, degrees.</param>
    public double[] TurnedTo(double[] values, double angleDeg) =>
        [.. values[..^1], double.DegreesToRadians(Math.IEEERemainder(angleDeg - (ball.Panel.WarpAngleDeg ?? 0), 180)) * RadiusMm];

    /// <summary>The ball with the seam of given numbers.</summary>
    public BallSpec BallOf(double[] values) => ball with
    {
        Seam = new SeamSpec
        {
            Curve = Family,
            WaistMm = values[0],
            SeamGapMm = ball.Seam.SeamGapMm,
            Offsets = Family == SeamFamily.Shaped ? [.. Orders.Select((k, i) => new SeamOffset(k, values[1 + i]))] : null,
        },
        Panel = TurnsWarp ? ball.Panel with { WarpAngleDeg = Turned(values[^1]) } : ball.Panel,
    };

    // A half-turn of the panel is the panel again: angles are given from 0 to 180 degrees.
    private double Turned(double arcMm)
    {
        double degrees = ((ball.Panel.WarpAngleDeg ?? 0) + double.RadiansToDegrees(arcMm / RadiusMm)) % 180;
        return degrees < 0 ? degrees + 180 : degrees;
    }
}
