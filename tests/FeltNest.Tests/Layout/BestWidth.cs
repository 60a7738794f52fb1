using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Layout.Limits;
using FeltNest.Layout.Polish;
using FeltNest.Layout.Rows;
using FeltNest.Layout.Rows.Tables;

namespace FeltNest.Tests.Layout;

/// <summary>Looks for the strip width that a count of parallel rows uses best: a coarse look over steps and tilts, then a golden-section
/// search on polished rows.</summary>
internal static class BestWidth
{
    internal static double Utilisation(Outline part, int rows)
    {
        double extent = part.MaxX - part.MinX;
        List<(double Utilisation, double Width, RowLattice Rows)> starts = [];
        for (int i = 0; i < 180; i++)
        {
            TiltRows tilt = new(TurnedPart.Make(part, Math.PI * i / 180, extent / 300, 0));
            (double Utilisation, double Width, RowLattice? Rows) best = default;
            for (double step = extent / 5; step < (rows == 1 ? (extent / 5) + 0.1 : extent); step += extent / 100)
            {
                double width = tilt.Height + ((rows - 1) * step);
                if (tilt.Fit(rows, width) is { } fit && rows * part.Area / (fit.Pitch * width) > best.Utilisation)
                {
                    best = (rows * part.Area / (fit.Pitch * width), width, fit);
                }
            }

            starts.Add((best.Utilisation, best.Width, best.Rows!));
        }

        return starts.OrderByDescending(s => s.Utilisation).Take(12).Max(s => Refined(part, s.Width, s.Rows));
    }

    private static double Refined(Outline part, double width, RowLattice start)
    {
        int rows = start.Rows;
        double low = width * (1 - (0.03 / rows));
        double high = width * (1 + (0.03 / rows));
        double ratio = (Math.Sqrt(5) - 1) / 2;
        double most = 0;
        double a = high - (ratio * (high - low));
        double b = low + (ratio * (high - low));
        double atA = Polished(a);
        double atB = Polished(b);
        for (int i = 0; i < 14; i++)
        {
            (low, high, a, b, atA, atB) =
                atA > atB ? (low, b, b - (ratio * (b - low)), a, double.NaN, atA) : (a, high, b, a + (ratio * (high - a)), atB, double.NaN);
            atA = double.IsNaN(atA) ? Polished(a) : atA;
            atB = double.IsNaN(atB) ? Polished(b) : atB;
        }

        return most;

        double Polished(double tried)
        {
            LayoutRequest request = Shapes.Request(part, tried);
            LayStart model = LayStart.Of(
                request, start with { Step = start.Step + ((tried - width) / Math.Max(1, rows - 1)) }, TiltRange.Of(request.Rules));
            double found = LayoutPolisher.Polish(model.Model, 60, 1) is { } end ? rows * part.Area / (end[0] * tried) : 0;
            most = Math.Max(most, found);
            return found;
        }
    }
}
