using FeltNest.Ball;
using FeltNest.Seam;

namespace FeltNest.Design.SeamDesign;

/// <summary>The numbers a seam is designed by: its waist and the amounts of its waves. All are lengths on the fitted sphere, mm, so that
/// one step means the same for each.</summary>
internal sealed class SeamVariables
{
    private readonly BallSpec ball;

    private SeamVariables(BallSpec ball, SeamFamily family, IReadOnlyList<int> orders)
    {
        this.ball = ball;
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

    /// <summary>How many numbers there are.</summary>
    public int Count => 1 + Orders.Count;

    /// <summary>Waist and waves of a shaped seam.</summary>
    public static SeamVariables Shaped(BallSpec ball, IReadOnlyList<int> orders) => new(ball, SeamFamily.Shaped, orders);

    /// <summary>The waist of a family.</summary>
    public static SeamVariables OfFamily(BallSpec ball, SeamFamily family) => new(ball, family, []);

    /// <summary>Numbers of a seam without waves at a waist.</summary>
    public double[] Plain(double waistMm)
    {
        double[] values = new double[Count];
        values[0] = waistMm;
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
    };
}
