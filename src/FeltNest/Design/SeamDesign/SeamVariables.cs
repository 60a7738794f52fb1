using FeltNest.Ball;
using FeltNest.Seam;

namespace FeltNest.Design.SeamDesign;

/// <summary>The numbers a seam is designed by: its waist, the amounts of its waves, and the panel's angle to the warp where that is
/// sought too. All are lengths on the fitted sphere, mm, so that one step means the same for each.</summary>
internal sealed class SeamVariables
{
    private readonly BallSpec ball;

    private SeamVariables(BallSpec ball, SeamFamily family, IReadOnlyList<int> orders, bool seeksWarp)
    {
        this.ball = ball;
        Family = family;
        Orders = orders;
        SeeksWarp = seeksWarp;
        RadiusMm = ball.FittedRadiusMm;
    }

    /// <summary>Family of the seam.</summary>
    public SeamFamily Family { get; }

    /// <summary>Orders of the waves.</summary>
    public IReadOnlyList<int> Orders { get; }

    /// <summary>Whether the panel's angle to the warp is the last number.</summary>
    public bool SeeksWarp { get; }

    /// <summary>Radius of the fitted sphere, mm.</summary>
    public double RadiusMm { get; }

    /// <summary>How many numbers there are.</summary>
    public int Count => 1 + Orders.Count + (SeeksWarp ? 1 : 0);

    /// <summary>Waist and waves of a shaped seam.</summary>
    public static SeamVariables Shaped(BallSpec ball, IReadOnlyList<int> orders, bool seeksWarp) =>
        new(ball, SeamFamily.Shaped, orders, seeksWarp);

    /// <summary>The waist of a family.</summary>
    public static SeamVariables OfFamily(BallSpec ball, SeamFamily family, bool seeksWarp) => new(ball, family, [], seeksWarp);

    /// <summary>Numbers of a seam without waves at a waist.</summary>
    public double[] Plain(double waistMm)
    {
        double[] values = new double[Count];
        values[0] = waistMm;
        if (SeeksWarp)
        {
            values[^1] = (ball.Panel.WarpAngleDeg ?? 0) * Math.PI / 180 * RadiusMm;
        }

        return values;
    }

    /// <summary>Least and greatest waist, mm.</summary>
    public (double Least, double Most) Waists()
    {
        (double least, double most) = SeamCurve.WaistRange(Family);
        return (least * RadiusMm, most * RadiusMm);
    }

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
        Panel = SeeksWarp ? ball.Panel with { WarpAngleDeg = values[^1] / RadiusMm * 180 / Math.PI } : ball.Panel,
    };
}
