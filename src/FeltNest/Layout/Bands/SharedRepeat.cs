using FeltNest.Layout.Limits;
using FeltNest.Layout.Polish;
using FeltNest.Layout.Rows;
using FeltNest.Layout.Rows.Tables;

namespace FeltNest.Layout.Bands;

/// <summary>Bands whose pitches nearly share a repeat, brought to it and laid into each other: one repeat, one die, and no straight gap
/// between the bands.</summary>
/// <remarks>The shorter repeat is stretched to the longer; then pitch, tilts, steps, phases and the place of every band are polished
/// together, so that the rows at the interface may move into each other's openings.</remarks>
internal static class SharedRepeat
{
    // A band's rows stand at most this often in a repeat, and the repeats may differ by this share at most: more stretch than interlocking
    // can win back.
    private const int MostCopies = 9;
    private const double MostStretch = 0.02;

    // Panels in a repeat: beyond this a die is no longer one that a shop would make.
    private const int MostPanels = 120;

    // Phases of the second band tried, evenly over its own pitch.
    private const int Phases = 3;

    private const int PerBand = 5;

    /// <summary>Starts from two bands laid a straight gap apart.</summary>
    /// <param name="request">The run as the usable width.</param>
    /// <param name="lower">Rows of the lower band.</param>
    /// <param name="upper">Rows of the upper band.</param>
    /// <param name="tilts">Tilts allowed.</param>
    internal static IEnumerable<LayStart> Starts(LayoutRequest request, RowLattice lower, RowLattice upper, TiltRange tilts)
    {
        foreach ((int m, int n) in from m in Enumerable.Range(1, MostCopies) from n in Enumerable.Range(1, MostCopies) select (m, n))
        {
            double a = m * lower.Pitch;
            double b = n * upper.Pitch;
            double repeat = Math.Max(a, b);
            if (Coprime(m, n) && repeat <= (1 + MostStretch) * Math.Min(a, b) && (m * lower.Rows) + (n * upper.Rows) <= MostPanels)
            {
                foreach (int phase in Enumerable.Range(0, Phases))
                {
                    double shift = phase * repeat / n / Phases;
                    PoseModel model = Model(request, repeat, lower, m, upper, n, shift, tilts);
                    yield return new LayStart(
                        "bands laid into each other on one repeat, polished", model.Panels.Count / repeat, model,
                        at => RowModels.Repeat(model, at));
                }
            }
        }
    }

    // Parameters: repeat; then of each band tilt, shift and step from row to row, and where its first row starts, along and across.
    private static PoseModel Model(
        LayoutRequest request, double repeat, RowLattice lower, int m, RowLattice upper, int n, double shift, TiltRange tilts)
    {
        double low = request.Usable.Low - request.Part.Outline.Turned(lower.Tilt).MinY;
        double high = request.Usable.High - request.Part.Outline.Turned(upper.Tilt).MaxY - ((upper.Rows - 1) * upper.Step);
        return new PoseModel
        {
            Part = request.Part.Outline,
            Gap = request.GapMm,
            Lower = request.Usable.Low,
            Upper = request.Usable.High,
            Panels = [.. Panels(lower, m, 1), .. Panels(upper, n, 1 + PerBand)],
            Periods = [(AffineForm.Of(0), new AffineForm(0))],
            Parameters = [repeat, lower.Tilt, lower.Shift, lower.Step, 0, low, upper.Tilt, upper.Shift, upper.Step, shift, high],
            IsAngle = [false, true, false, false, false, false, true, false, false, false, false],
            Least = [
                0, tilts.Least, .. Enumerable.Repeat(double.NegativeInfinity, PerBand - 1), tilts.Least,
                .. Enumerable.Repeat(double.NegativeInfinity, PerBand - 1),
            ],
            Most = [
                double.PositiveInfinity, tilts.Most, .. Enumerable.Repeat(double.PositiveInfinity, PerBand - 1), tilts.Most,
                .. Enumerable.Repeat(double.PositiveInfinity, PerBand - 1),
            ],
        };
    }

    private static IEnumerable<PanelPose> Panels(RowLattice rows, int copies, int first) =>
        from j in Enumerable.Range(0, rows.Rows)
        from c in Enumerable.Range(0, copies)
        select new PanelPose
        {
            X = new AffineForm(0, (first + 3, 1), (first + 1, j), (0, (double)c / copies)),
            Y = new AffineForm(0, (first + 4, 1), (first + 2, j)),
            Angle = AffineForm.Of(first),
        };

    private static bool Coprime(int m, int n)
    {
        while (n != 0)
        {
            (m, n) = (n, m % n);
        }

        return m == 1;
    }
}
