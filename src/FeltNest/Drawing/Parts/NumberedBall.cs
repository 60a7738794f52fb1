using System.Globalization;
using FeltNest.Geometry;
using FeltNest.Panel.Trial;
using FeltNest.Seam;

namespace FeltNest.Drawing.Parts;

/// <summary>A ball seen from one side, with the seam in front drawn full, that behind dashed, and the numbered places in front.</summary>
internal static class NumberedBall
{
    /// <summary>The marks of the view.</summary>
    /// <param name="seam">The seam.</param>
    /// <param name="view">From where it is seen.</param>
    /// <param name="at">Centre on the sheet.</param>
    /// <param name="radius">Radius on the sheet, mm.</param>
    public static IEnumerable<Mark> Draw(SeamCurve seam, BallSide view, Point2 at, double radius)
    {
        // A dot, and how far its number stands from it towards the middle of the ball or away from it, mm.
        const double dot = 0.8;
        const double off = 3;
        foreach (Mark mark in SeamOnBall.Draw(seam, view, at, radius))
        {
            yield return mark;
        }

        for (int place = 1; place <= TrialPlaces.Count; place++)
        {
            SeamJet jet = seam.At(TrialPlaces.S(place));
            (double right, double up, double depth) = view.Seen(jet.Point);
            if (depth < 0)
            {
                continue;
            }

            Point2 here = at + (new Point2(right, up) * radius);
            Point2 side = Side(view.Seen(jet.First), depth, here - at) * off;
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
    }

    // Where a place's number stands: beside the seam, and outside the ball for a place near its limb.
    private static Point2 Side((double Right, double Up, double Depth) along, double depth, Point2 fromCentre)
    {
        const double nearLimb = 0.35;
        Point2 wanted = depth < nearLimb ? fromCentre : new Point2(along.Right, along.Up).Left * -1;
        return wanted * (1 / wanted.Length);
    }
}
