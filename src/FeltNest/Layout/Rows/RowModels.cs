using FeltNest.Geometry;
using FeltNest.Layout.Limits;
using FeltNest.Layout.Polish;
using FeltNest.Layout.Rows.Mixed;
using FeltNest.Layout.Rows.Tables;

namespace FeltNest.Layout.Rows;

/// <summary>Turns row layouts into models for the polisher, and polished parameters into repeats.</summary>
internal static class RowModels
{
    /// <summary>Place of the tilt among the parameters of parallel rows.</summary>
    internal const int Tilt = 1;

    /// <summary>Parallel rows that move as one. Parameters: pitch, tilt, shift, step, place of the first row across.</summary>
    internal static PoseModel Of(LayoutRequest request, RowLattice rows, TiltRange tilts) => Of(request, rows, tilts, 0);

    private static PoseModel Of(LayoutRequest request, RowLattice rows, TiltRange tilts, double spread)
    {
        // Rows further apart than two panels' reach never meet, and what rows i and i + n ask of the parameters they all ask: a few rows
        // and the last stand for all.
        double reach = (2.5 * request.Part.Outline.Points.Max(p => p.Length)) + request.GapMm + spread;
        int near = rows.Step * rows.Rows <= reach ? rows.Rows : Math.Min(rows.Rows, 2 + (int)Math.Ceiling(reach / rows.Step));
        IEnumerable<int> kept = Enumerable.Range(0, near).Append(rows.Rows - 1).Distinct();
        PanelPose[] panels =
        [
            .. kept.Select(j => new PanelPose
            {
                X = new AffineForm(0, (2, j)),
                Y = new AffineForm(0, (4, 1), (3, j)),
                Angle = AffineForm.Of(1),
            }),
        ];
        double low = request.Usable.Low;
        double start = low - request.Part.Outline.Turned(rows.Tilt).MinY;
        return new PoseModel
        {
            Part = request.Part.Outline,
            Gap = request.GapMm,
            Lower = low,
            Upper = request.Usable.High,
            Panels = panels,
            Periods = [(AffineForm.Of(0), new AffineForm(0))],
            Parameters = [rows.Pitch, rows.Tilt, rows.Shift, rows.Step, start],
            IsAngle = [false, true, false, false, false],
            Least = [0, tilts.Least, double.NegativeInfinity, 0, double.NegativeInfinity],
            Most = [double.PositiveInfinity, tilts.Most, double.PositiveInfinity, double.PositiveInfinity, double.PositiveInfinity],
        };
    }

    /// <summary>Parallel rows of pairs that move as one. Parameters: pitch, tilt, shift, step, place of the first row across, place of the
    /// second part.</summary>
    internal static PoseModel Paired(LayoutRequest request, RowLattice rows, Point2 offset, double turn, TiltRange tilts)
    {
        PoseModel single = Of(request, rows, tilts, offset.Length);
        Point2 second = offset.Turned(rows.Tilt);
        double lowest =
            Math.Min(request.Part.Outline.Turned(rows.Tilt).MinY, second.Y + request.Part.Outline.Turned(rows.Tilt + turn).MinY);
        double[] start = [.. single.Parameters, second.X, second.Y];
        start[4] = request.Usable.Low - lowest;
        return single with
        {
            Panels = [.. single.Panels, .. single.Panels.Select(Second)],
            Parameters = start,
            IsAngle = [.. single.IsAngle, false, false],
            Least = [.. single.Least, double.NegativeInfinity, double.NegativeInfinity],
            Most = [.. single.Most, double.PositiveInfinity, double.PositiveInfinity],
        };

        PanelPose Second(PanelPose panel) => new()
        {
            X = new AffineForm(0, [.. panel.X.Terms, (5, 1)]),
            Y = new AffineForm(0, [.. panel.Y.Terms, (6, 1)]),
            Angle = new AffineForm(turn, (1, 1)),
        };
    }

    /// <summary>The repeat of polished rows of pairs.</summary>
    internal static LayoutRepeat PairedRepeat(int rows, double turn, double[] at) => Repeat(
        at[0],
        Enumerable.Range(0, rows).SelectMany(j => new[]
        {
            (j * at[2], at[4] + (j * at[3]), at[1]),
            ((j * at[2]) + at[5], at[4] + (j * at[3]) + at[6], at[1] + turn),
        }));

    /// <summary>The repeat of polished parallel rows.</summary>
    internal static LayoutRepeat Repeat(int rows, double[] at) =>
        Repeat(at[0], Enumerable.Range(0, rows).Select(j => (j * at[2], at[4] + (j * at[3]), at[1])));

    /// <summary>The repeat of any polished model, every panel written.</summary>
    internal static LayoutRepeat Repeat(PoseModel model, double[] at) =>
        Repeat(model.Periods[0].X.At(at), model.Panels.Select(p => (p.X.At(at), p.Y.At(at), p.Angle.At(at))));

    /// <summary>The endless plane: one panel a cell, cell sides (pitch, 0) and (shift, step). Parameters: pitch, tilt, shift,
    /// step.</summary>
    internal static PoseModel Plane(LayoutRequest request, RowLattice rows) => new()
    {
        Part = request.Part.Outline,
        Gap = request.GapMm,
        Lower = null,
        Upper = null,
        Panels = [new PanelPose { X = new AffineForm(0), Y = new AffineForm(0), Angle = AffineForm.Of(1) }],
        Periods = [(AffineForm.Of(0), new AffineForm(0)), (AffineForm.Of(2), AffineForm.Of(3))],
        Parameters = [rows.Pitch, rows.Tilt, rows.Shift, rows.Step],
        IsAngle = [false, true, false, false],
        Least = [0, double.NegativeInfinity, double.NegativeInfinity, 0],
        Most = [double.PositiveInfinity, double.PositiveInfinity, double.PositiveInfinity, double.PositiveInfinity],
    };

    /// <summary>The endless plane with a part and its turned self in each cell. Parameters: pitch, tilt, shift, step, place of the turned
    /// part.</summary>
    internal static PoseModel PlanePaired(LayoutRequest request, RowLattice rows, Point2 offset)
    {
        PoseModel single = Plane(request, rows);
        Point2 turned = offset.Turned(rows.Tilt);
        return single with
        {
            Panels = [.. single.Panels, new PanelPose
            {
                X = AffineForm.Of(4),
                Y = AffineForm.Of(5),
                Angle = new AffineForm(Math.PI, (1, 1)),
            }],
            Parameters = [.. single.Parameters, turned.X, turned.Y],
            IsAngle = [.. single.IsAngle, false, false],
            Least = [.. single.Least, double.NegativeInfinity, double.NegativeInfinity],
            Most = [.. single.Most, double.PositiveInfinity, double.PositiveInfinity],
        };
    }

    /// <summary>Rows of single panels that move on their own; rows of one kind share their tilt. Parameters: pitch, tilts, then x and y of
    /// each row.</summary>
    /// <param name="request">Part and roll.</param>
    /// <param name="pitch">Pitch, mm.</param>
    /// <param name="tilts">Tilt parameters with their ranges.</param>
    /// <param name="rows">The rows, lowest first.</param>
    internal static PoseModel Mixed(
        LayoutRequest request, double pitch, IReadOnlyList<(double Tilt, double Least, double Most)> tilts, IReadOnlyList<MixedRow> rows)
    {
        int first = 1 + tilts.Count;
        PanelPose[] panels = [.. rows.SelectMany((r, j) => Enumerable.Range(0, r.Copies).Select(c => new PanelPose
        {
            X = c == 0 ? AffineForm.Of(first + (2 * j)) : new AffineForm(0, (first + (2 * j), 1), (0, (double)c / r.Copies)),
            Y = AffineForm.Of(first + (2 * j) + 1),
            Angle = new AffineForm(r.Turn, (1 + r.Tilt, r.Factor)),
        }))];
        int n = first + (2 * rows.Count);
        double[] least = new double[n];
        double[] most = new double[n];
        Array.Fill(least, double.NegativeInfinity);
        Array.Fill(most, double.PositiveInfinity);
        for (int i = 0; i < tilts.Count; i++)
        {
            (least[1 + i], most[1 + i]) = (tilts[i].Least, tilts[i].Most);
        }

        return new PoseModel
        {
            Part = request.Part.Outline,
            Gap = request.GapMm,
            Lower = request.Usable.Low,
            Upper = request.Usable.High,
            Panels = panels,
            Periods = [(AffineForm.Of(0), new AffineForm(0))],
            Parameters = [pitch, .. tilts.Select(t => t.Tilt), .. rows.SelectMany(r => new[] { r.At.X, r.At.Y })],
            IsAngle = [false, .. tilts.Select(_ => true), .. Enumerable.Repeat(false, 2 * rows.Count)],
            Least = least,
            Most = most,
        };
    }

    // Panels are written within one repeat along the roll, row by row, with angles from 0 to 360 degrees.
    private static LayoutRepeat Repeat(double length, IEnumerable<(double X, double Y, double Angle)> panels) => new(
        length,
        [
            .. panels
                .Select(p => new PlacedPanel
                {
                    Part = 0,
                    XMm = p.X - (Math.Floor(p.X / length) * length),
                    YMm = p.Y,
                    AngleDeg = Degrees(p.Angle),
                })
                .OrderBy(p => p.YMm)
                .ThenBy(p => p.XMm),
        ]);

    /// <summary>An angle of the search, radians, as it is written: degrees from 0 to 360.</summary>
    internal static double Degrees(double angle)
    {
        double degrees = double.RadiansToDegrees(angle);

        // Whole thousandths of a millionth: angles that were asked for come back as asked for.
        double rounded = Math.Round(degrees, 9);
        degrees = Math.Abs(rounded - degrees) < 1e-11 ? rounded : degrees;
        return degrees - (Math.Floor(degrees / 360) * 360);
    }
}
