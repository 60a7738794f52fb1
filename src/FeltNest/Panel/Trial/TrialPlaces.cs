using FeltNest.Ball;
using FeltNest.Seam;

namespace FeltNest.Panel.Trial;

/// <summary>The numbered places round the seam at which a trial wrap is read.</summary>
/// <remarks>They stand at equal steps of the seam parameter from a waist of panel A on. Places 1 and 9 lie on the waist of panel A and on
/// the tips of panel B, places 5 and 13 on the tips of A and the waist of B.</remarks>
internal static class TrialPlaces
{
    /// <summary>How many there are.</summary>
    public const int Count = 16;

    /// <summary>Places each ball is read at, at least.</summary>
    public const int Fewest = 8;

    /// <summary>Places each ball is read at: waists and tips.</summary>
    public static readonly IReadOnlyList<int> Needed = [1, 5, 9, 13];

    // Panels at places a quarter round: the waist of one panel, then that of the other.
    private const int Quarter = Count / 4;

    /// <summary>Seam parameter of a place on panel A, radians.</summary>
    public static double S(int place) => 2 * Math.PI * (place - 1) / Count;

    /// <summary>The panel on whose waist a place lies; null for a place beside the waists.</summary>
    public static char? WaistOf(int place) => (place - 1) % Quarter == 0 ? "AB"[(place - 1) / Quarter % 2] : null;

    /// <summary>Where a place lies, in words; empty between waists and tips.</summary>
    public static string Words(int place) => WaistOf(place) switch
    {
        'A' => "waist of A, tip of B",
        'B' => "tip of A, waist of B",
        _ => string.Empty,
    };

    /// <summary>Width across the waist of a ball, from the middle of the seam to the middle of the seam, over the felt's outer face,
    /// mm.</summary>
    public static double OuterWaistMm(BallSpec ball) =>
        SeamCurve.For(ball.Seam, ball.FittedRadiusMm).WaistAngle * ball.FinishedDiameterMm / 2;

    /// <summary>Length of the seam from place 1 to each place, on the unit sphere.</summary>
    public static IReadOnlyList<double> Lengths(SeamCurve seam)
    {
        // Steps between two places: the sum of middles is then exact to the digits shown.
        const int steps = 400;
        const double step = 2 * Math.PI / Count / steps;
        double[] lengths = new double[Count];
        for (int i = 1; i < Count; i++)
        {
            double from = S(i);
            lengths[i] = lengths[i - 1] + Enumerable.Range(0, steps).Sum(k => seam.At(from + ((k + 0.5) * step)).Speed * step);
        }

        return lengths;
    }
}
