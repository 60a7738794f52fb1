using System.Globalization;
using FeltNest.Ball;

namespace FeltNest.Seam;

/// <summary>A seam through given points: the smoothest curve of a few harmonics near them that has the symmetries of a ball of two equal
/// panels.</summary>
/// <remarks>The points' frame: the centre of the ball at 0, z through a panel's pole, x through one of its tips. The curve halves the
/// sphere exactly, as the second panel is the first one half-turned; how far the points lie from it is <see cref="Deviation"/>.</remarks>
internal sealed class PointSeam : SeamCurve
{
    /// <summary>How far points may lie from the curve, radians rms: 1 % of the radius, 0.3 mm on a ball, about what a seam can be read off
    /// with. One point may lie as far, or four times the rms: farther it is a slip.</summary>
    public const double Tolerance = 0.01;

    /// <summary>Least waist, radians (20 degrees), for the reasons of the other families.</summary>
    public const double LeastWaistAngle = 20 * Math.PI / 180;

    /// <summary>Greatest waist, radians (90 degrees), for the reasons of the other families.</summary>
    public const double GreatestWaistAngle = 90 * Math.PI / 180;

    // Mirrors are taken as meant where the points lie no farther than this many times from the mirrored curve than from one that has only
    // the half-turns, or within this distance, radians.
    private const double Meant = 2;

    // A point this many times as far off as all of them, rms, is a slip and no noise.
    private const double Slip = 4;
    private const double MeantWithin = 1e-6;

    private readonly SeamSeries series;

    private PointSeam(SeamSeries series, double deviation, bool mirrors)
    {
        this.series = series;
        Deviation = deviation;
        IsMirrorSymmetric = mirrors;
        WaistAngle = 2 * Math.Asin(Math.Abs(series.At(Waist()).Point.Y));
        SeamMeasure measure = SeamMeasure.Of(At);
        (Length, WidthAngle, GreatestCurvature) = (measure.Length, measure.WidthAngle, measure.GreatestCurvature);
    }

    /// <summary>Greatest distance of a given point from the curve, radians.</summary>
    public double Deviation { get; }

    /// <summary>How far the curve nearest to the points without mirrors lies from this one, radians, where mirrors were taken as meant; 0
    /// where they were not.</summary>
    public double MirrorsMoved { get; private init; }

    /// <summary>Whether mirrors were taken as meant although the points do not quite have them: farther off than their digits.</summary>
    public bool NearlyHadMirrors => MirrorsMoved > MeantWithin;

    /// <inheritdoc/>
    public override SeamFamily Family => SeamFamily.Points;

    /// <inheritdoc/>
    public override double Length { get; }

    /// <inheritdoc/>
    public override double WaistAngle { get; }

    /// <inheritdoc/>
    public override double WidthAngle { get; }

    /// <inheritdoc/>
    public override double GreatestCurvature { get; }

    /// <inheritdoc/>
    public override bool IsMirrorSymmetric { get; }

    /// <summary>The seam near the points.</summary>
    /// <param name="points">Points in their order along the seam, either way round; the last may repeat the first.</param>
    /// <exception cref="InputException">Too few or scattered points, or no curve of two equal panels lies near them.</exception>
    public static PointSeam Through(IReadOnlyList<SeamPoint> points)
    {
        PointPath path = PointPath.Of(points);
        PointFit skew = PointFit.To(path, false);
        PointFit mirrored = PointFit.To(path, true);
        if (!(skew.Rms <= Tolerance && skew.Deviation <= Math.Max(Tolerance, Slip * skew.Rms)))
        {
            double most = Math.Max(Tolerance, Slip * Math.Min(skew.Rms, Tolerance));
            throw Refusal(string.Create(
                CultureInfo.InvariantCulture,
                $"point {skew.Worst} lies {skew.Deviation * 180 / Math.PI:0.##} degrees off the nearest seam of two equal panels (kept "
                    + $"by half-turns about z and about (1, -1, 0)); at most {most * 180 / Math.PI:0.##} are allowed"));
        }

        bool mirrors = mirrored.Deviation <= Math.Max(MeantWithin, Meant * skew.Deviation);
        PointSeam seam = mirrors
            ? new(mirrored.Series, mirrored.Deviation, true) { MirrorsMoved = Apart(mirrored.Series, skew.Series) }
            : new(skew.Series, skew.Deviation, false);
        return seam.WaistAngle is >= LeastWaistAngle and <= GreatestWaistAngle ? seam
            : throw Refusal(
                FormattableString.Invariant($"the waist is {seam.WaistAngle * 180 / Math.PI:0.##} degrees of arc; 20 to 90 are allowed"));
    }

    /// <inheritdoc/>
    public override SeamJet At(double s) => series.At(s);

    internal static InputException Refusal(string problem) => new(null, "seam.points", problem);

    // Places of a series between which another is looked at.
    private static double Apart(SeamSeries a, SeamSeries b)
    {
        const int places = 180;
        return Enumerable.Range(0, places).Max(i => (a.At(2 * Math.PI * i / places).Point - b.At(2 * Math.PI * i / places).Point).Length);
    }

    // Where the curve crosses x = 0 near s = 0.
    private double Waist()
    {
        // Newton's steps: without mirrors the crossing is a few degrees off, and each step doubles the digits.
        double s = 0;
        for (int i = 0; i < 8; i++)
        {
            SeamJet jet = series.At(s);
            s -= jet.Point.X / jet.First.X;
        }

        return s;
    }
}
