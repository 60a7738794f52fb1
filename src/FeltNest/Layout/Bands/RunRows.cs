using FeltNest.Layout.Limits;
using FeltNest.Layout.Polish;
using FeltNest.Layout.Rows;
using FeltNest.Layout.Rows.Tables;

namespace FeltNest.Layout.Bands;

/// <summary>Parallel rows of one tilt and one pitch over several runs of felt with forbidden stripes between: one repeat, one
/// die.</summary>
internal static class RunRows
{
    // Parameters of every run: shift and step from row to row, and where its first row starts, along and across.
    private const int PerRun = 4;

    /// <summary>The most promising starts, best first.</summary>
    /// <param name="request">The whole roll.</param>
    /// <param name="runs">Its runs, lowest first.</param>
    /// <param name="tables">Tables of any run: they do not depend on the width.</param>
    /// <param name="tilts">Tilts allowed.</param>
    /// <param name="most">How many starts.</param>
    internal static IReadOnlyList<LayStart> Starts(
        LayoutRequest request, IReadOnlyList<(double Low, double High)> runs, RowTables tables, TiltRange tilts, int most)
    {
        List<(double Density, PitchCurve Curve, double Pitch, int[] Rows)> found = [];
        foreach (PitchCurve curve in BandWidths.Curves(tables))
        {
            (int Rows, double Pitch)[][] fits = [.. runs.Select(run => curve.Fits(run.High - run.Low).ToArray())];
            (double Density, double Pitch, int[] Rows) best = (0, 0, []);
            foreach (double pitch in fits.SelectMany(f => f).Select(f => f.Pitch))
            {
                int[] rows = [.. fits.Select(f => f.Where(fit => fit.Pitch <= pitch).Select(fit => fit.Rows).DefaultIfEmpty(0).Max())];
                double density = rows.Sum() / pitch;
                best = density > best.Density ? (density, pitch, rows) : best;
            }

            if (best.Density > 0)
            {
                found.Add((best.Density, curve, best.Pitch, best.Rows));
            }
        }

        return
        [
            .. found
                .OrderByDescending(f => f.Density)
                .ThenBy(f => f.Curve.Tilt)
                .Take(most)
                .Select(f => Start(request, runs, f.Curve, f.Pitch, f.Rows, tilts)),
        ];
    }

    private static LayStart Start(
        LayoutRequest request, IReadOnlyList<(double Low, double High)> runs, PitchCurve curve, double pitch, int[] rows, TiltRange tilts)
    {
        List<double> at = [pitch, curve.Tilt];
        List<PanelPose> panels = [];
        double bottom = -request.Part.Outline.Turned(curve.Tilt).MinY;
        for (int r = 0; r < runs.Count; r++)
        {
            if (rows[r] == 0)
            {
                continue;
            }

            int first = at.Count;
            double step = rows[r] == 1 ? 0 : (runs[r].High - runs[r].Low - curve.Height) / (rows[r] - 1);
            at.AddRange([curve.Lattice(rows[r], runs[r].High - runs[r].Low)?.Shift ?? 0, step, 0, runs[r].Low + bottom]);
            panels.AddRange(Enumerable.Range(0, rows[r]).Select(j => new PanelPose
            {
                X = new AffineForm(0, (first + 2, 1), (first, j)),
                Y = new AffineForm(0, (first + 3, 1), (first + 1, j)),
                Angle = AffineForm.Of(1),
                Within = runs[r],
            }));
        }

        int used = (at.Count - 2) / PerRun;
        PoseModel model = Model(request, at, panels, tilts);
        string words =
            used == 1 ? "parallel rows in one run of felt, polished" : $"parallel rows in {used} runs of felt on one repeat, polished";
        return new LayStart(words, panels.Count / pitch, model, end => RowModels.Repeat(model, end));
    }

    // Parameters: pitch and tilt, then four of each run.
    private static PoseModel Model(LayoutRequest request, List<double> at, List<PanelPose> panels, TiltRange tilts)
    {
        int count = at.Count;
        double[] least = new double[count];
        double[] most = new double[count];
        Array.Fill(least, double.NegativeInfinity);
        Array.Fill(most, double.PositiveInfinity);
        (least[0], least[1], most[1]) = (0, tilts.Least, tilts.Most);
        return new PoseModel
        {
            Part = request.Part.Outline,
            Gap = request.GapMm,
            Lower = request.Usable.Low,
            Upper = request.Usable.High,
            Panels = panels,
            Periods = [(AffineForm.Of(0), new AffineForm(0))],
            Parameters = [.. at],
            IsAngle = [false, true, .. Enumerable.Repeat(false, count - 2)],
            Least = least,
            Most = most,
        };
    }
}
