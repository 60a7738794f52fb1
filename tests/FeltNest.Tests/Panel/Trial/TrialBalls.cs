using FeltNest.Ball;
using FeltNest.Panel.Trial;
using FeltNest.Seam;

namespace FeltNest.Tests.Panel.Trial;

/// <summary>Trial balls made up: two edges on the sphere with known errors, panel A placed by an exact rotation, and the gap between them
/// measured in the plane normal to the seam. Nothing here is linear and no wave of the study is used.</summary>
internal sealed class TrialBalls
{
    // Corners of an edge: half a degree apart, chords off the curve by less than 0.001 mm.
    private const int Corners = 1440;

    private readonly BallSpec ball;
    private readonly SeamCurve seam;

    public TrialBalls(BallSpec ball)
    {
        this.ball = ball;
        seam = SeamCurve.For(ball.Seam, ball.FittedRadiusMm);
    }

    /// <summary>How far panel A's edge stands outwards of where it should, mm, by its own seam parameter.</summary>
    public Func<double, double> ErrorA { get; init; } = _ => 0;

    /// <summary>Likewise of panel B, by its own.</summary>
    public Func<double, double> ErrorB { get; init; } = _ => 0;

    /// <summary>Turn of panel A about x, y and z of its own frame, mm at the fitted radius: y moves it along, x across.</summary>
    public SpherePoint MovedMm { get; init; }

    /// <summary>Gaps at the places given, without noise.</summary>
    public Dictionary<int, double> Gaps(IEnumerable<int> places)
    {
        SpherePoint[] a = [.. Edge(ErrorA).Select(Placed)];
        SpherePoint[] b = [.. Edge(ErrorB).Select(p => new SpherePoint(-p.Y, -p.X, -p.Z))];
        return places.ToDictionary(place => place, place => ball.FittedRadiusMm * (Off(b, place) - Off(a, place)));
    }

    /// <summary>Readings with normal noise.</summary>
    public static TrialReading[] Read(Dictionary<int, double> gaps, int balls, double noiseMm, int seed, Func<int, double?>? waist = null)
    {
        Random random = new(seed);
        return [.. Enumerable.Range(1, balls).SelectMany(ball => gaps.Select(gap => new TrialReading
        {
            Ball = $"{ball}",
            Place = gap.Key,
            GapMm = gap.Value + (noiseMm * Normal(random)),
            WaistMm = waist?.Invoke(gap.Key) + (noiseMm * Normal(random)),
        }))];
    }

    // Box and Muller.
    private static double Normal(Random random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());

    private IEnumerable<SpherePoint> Edge(Func<double, double> error) => Enumerable.Range(0, Corners).Select(i =>
    {
        double s = 2 * Math.PI * i / Corners;
        (SpherePoint place, _, SpherePoint outward) = Frame(s);
        (double sin, double cos) = Math.SinCos((error(s) - (ball.Seam.SeamGapMm / 2)) / ball.FittedRadiusMm);
        return (cos * place) + (sin * outward);
    });

    private (SpherePoint Place, SpherePoint Along, SpherePoint Outward) Frame(double s)
    {
        SeamJet jet = seam.At(s);
        SpherePoint along = 1 / jet.Speed * jet.First;
        return (jet.Point, along, along.Cross(jet.Point));
    }

    private SpherePoint Placed(SpherePoint p)
    {
        double angle = MovedMm.Length / ball.FittedRadiusMm;
        if (angle == 0)
        {
            return p;
        }

        SpherePoint axis = 1 / MovedMm.Length * MovedMm;
        (double sin, double cos) = Math.SinCos(angle);
        return (cos * p) + (sin * axis.Cross(p)) + ((1 - cos) * axis.Dot(p) * axis);
    }

    // Angle from the seam outwards of A to an edge, in the plane normal to the seam.
    private double Off(SpherePoint[] edge, int place)
    {
        (SpherePoint here, SpherePoint along, SpherePoint outward) = Frame(TrialPlaces.S(place));
        double best = double.PositiveInfinity;
        for (int i = 0; i < edge.Length; i++)
        {
            SpherePoint next = edge[(i + 1) % edge.Length];
            double from = edge[i].Dot(along);
            double to = next.Dot(along);
            if (from < 0 != to < 0)
            {
                SpherePoint met = edge[i] + (from / (from - to) * (next - edge[i]));
                double angle = Math.Atan2(met.Dot(outward), met.Dot(here));
                best = Math.Abs(angle) < Math.Abs(best) ? angle : best;
            }
        }

        return best;
    }
}
