using FeltNest.Ball;
using FeltNest.Geometry;
using FeltNest.Seam;

namespace FeltNest.Drawing.Parts;

/// <summary>A ball with its seam seen from the side: what lies in front drawn full, what lies behind thin and dashed.</summary>
internal static class BallView
{
    // Places of the seam: two degrees apart, which no print shows as corners.
    private const int Places = 360;

    private static readonly Pen Front = new(0.5, Colour.Of(0x5E7A22));
    private static readonly Pen Behind = new(0.2, Ink.Soft, 1, 1);

    // From where it is seen, in the panel's frame: a little off the pole, so that waist and tip both show.
    private static readonly SpherePoint Eye = Unit(new(0.35, -0.62, 0.7));
    private static readonly SpherePoint Across = Unit(new SpherePoint(0, 0, 1).Cross(Eye));
    private static readonly SpherePoint Up = Eye.Cross(Across);

    /// <summary>Draws a ball.</summary>
    /// <param name="ball">The ball.</param>
    /// <param name="centre">Its middle on the sheet, mm.</param>
    /// <param name="scale">mm of the sheet for a mm of the fitted sphere.</param>
    public static IEnumerable<Mark> Draw(BallSpec ball, Point2 centre, double scale)
    {
        double radius = scale * ball.FittedRadiusMm;
        SeamCurve seam = SeamCurve.For(ball.Seam, ball.FittedRadiusMm);
        SpherePoint[] places = [.. Enumerable.Range(0, Places).Select(i => seam.At(2 * Math.PI * i / Places).Point)];
        yield return new PathMark([Chain.Circle(centre, radius)], Ink.Narrow);
        yield return new PathMark([.. Runs(places, front: false).Select(Drawn)], Behind);
        yield return new PathMark([.. Runs(places, front: true).Select(Drawn)], Front);

        Chain Drawn(List<SpherePoint> run) =>
            Chain.Open([.. run.Select(p => new Point2(centre.X + (radius * p.Dot(Across)), centre.Y + (radius * p.Dot(Up))))]);
    }

    // Stretches of the seam that lie on one side of the ball's limb, each with the place after its last.
    private static IEnumerable<List<SpherePoint>> Runs(SpherePoint[] places, bool front)
    {
        int begin = Array.FindIndex(places, p => IsFront(p) != front);
        List<SpherePoint> run = [];
        for (int i = 0; i <= places.Length; i++)
        {
            SpherePoint p = places[(Math.Max(0, begin) + i) % places.Length];
            bool wanted = IsFront(p) == front;
            if (wanted || run.Count > 0)
            {
                run.Add(p);
            }

            if (!wanted && run.Count > 1)
            {
                yield return run;
                run = [];
            }
        }

        if (run.Count > 1)
        {
            yield return run;
        }
    }

    private static bool IsFront(SpherePoint p) => p.Dot(Eye) >= 0;

    private static SpherePoint Unit(SpherePoint p) => (1 / p.Length) * p;
}
