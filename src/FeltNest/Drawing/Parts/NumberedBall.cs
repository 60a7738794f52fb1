using System.Globalization;
using FeltNest.Geometry;
using FeltNest.Panel.Trial;
using FeltNest.Seam;

namespace FeltNest.Drawing.Parts;

/// <summary>A ball seen from one side, with the seam in front drawn full, that behind dashed, and the numbered places in front.</summary>
internal sealed class NumberedBall
{
    // Places of the seam between two numbered ones: no print shows corners.
    private const int Between = 24;

    private static readonly Pen Front = new(0.5, Colour.Of(0x5E7A22));
    private static readonly Pen Behind = new(0.18, Ink.Soft, 1, 1);

    private readonly SpherePoint toViewer;
    private readonly SpherePoint right;
    private readonly SpherePoint up;

    /// <summary>A view.</summary>
    /// <param name="toViewer">Direction to the viewer; need not have length 1.</param>
    /// <param name="right">Direction that points to the right, at right angles to it.</param>
    public NumberedBall(SpherePoint toViewer, SpherePoint right)
    {
        this.toViewer = 1 / toViewer.Length * toViewer;
        this.right = 1 / right.Length * right;
        up = this.toViewer.Cross(this.right);
    }

    /// <summary>The marks of the view.</summary>
    /// <param name="seam">The seam.</param>
    /// <param name="at">Centre on the sheet.</param>
    /// <param name="radius">Radius on the sheet, mm.</param>
    public IEnumerable<Mark> Draw(SeamCurve seam, Point2 at, double radius)
    {
        // A dot, and how far its number stands from it towards the middle of the ball or away from it, mm.
        const double dot = 0.8;
        const double off = 3;
        yield return new PathMark([Chain.Circle(at, radius)], Ink.Narrow);
        foreach (bool front in new[] { false, true })
        {
            yield return new PathMark([.. Pieces(seam, front).Select(piece => Chain.Open([.. piece.Select(On)]))], front ? Front : Behind);
        }

        for (int place = 1; place <= TrialPlaces.Count; place++)
        {
            SeamJet jet = seam.At(TrialPlaces.S(place));
            if (jet.Point.Dot(toViewer) < 0)
            {
                continue;
            }

            Point2 here = On(jet.Point);
            Point2 side = Side(jet, here - at) * off;
            yield return new PathMark([Chain.Circle(here, dot)], null, Ink.Dark);
            yield return new TextMark
            {
                Text = place.ToString(CultureInfo.InvariantCulture),
                At = here + side - new Point2(0, Ink.Note / 2),
                HeightMm = Ink.Note,
                Colour = Ink.Dark,
                Anchor = TextAnchor.Middle,
            };
        }

        Point2 On(SpherePoint p) => at + (new Point2(p.Dot(right), p.Dot(up)) * radius);
    }

    // Where a place's number stands: beside the seam, and outside the ball for a place near its limb.
    private Point2 Side(SeamJet jet, Point2 fromCentre)
    {
        const double nearLimb = 0.35;
        Point2 along = new(jet.First.Dot(right), jet.First.Dot(up));
        Point2 wanted = jet.Point.Dot(toViewer) < nearLimb ? fromCentre : along.Left * -1;
        return wanted * (1 / wanted.Length);
    }

    // Short pieces of the seam that lie on one side of the limb.
    private IEnumerable<SpherePoint[]> Pieces(SeamCurve seam, bool front)
    {
        const int steps = TrialPlaces.Count * Between;
        SpherePoint[] places = [.. Enumerable.Range(0, steps + 1).Select(i => seam.At(2 * Math.PI * i / steps).Point)];
        List<SpherePoint> run = [];
        foreach (SpherePoint place in places)
        {
            if (place.Dot(toViewer) >= 0 == front)
            {
                run.Add(place);
                continue;
            }

            if (run.Count > 1)
            {
                yield return [.. run];
            }

            run.Clear();
        }

        if (run.Count > 1)
        {
            yield return [.. run];
        }
    }
}
