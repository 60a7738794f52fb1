using FeltNest.Geometry;
using FeltNest.Layout;

namespace FeltNest.Yield;

/// <summary>Turns a layout into yield, felt per thousand balls and a closed account of the cloth.</summary>
internal static class YieldAccount
{
    /// <summary>The yield of a layout; bases are the full roll width and one repeat, before roll ends and faults.</summary>
    public static YieldFigures Of(RollLayout layout)
    {
        double good = 0;
        double panels = 0;
        double? massPerAreaGsm = layout.Parts.Select(p => p.MassPerAreaGsm).Distinct().Count() == 1 ? layout.Parts[0].MassPerAreaGsm : null;
        foreach (LayoutBand band in layout.Bands)
        {
            double perMetre = 1000 / band.Repeat.LengthMm;
            panels += band.Repeat.Panels.Count * perMetre;
            good += band.Repeat.Panels.Sum(p => layout.Parts[p.Part].AreaMm2) / (band.Repeat.LengthMm * layout.RollWidthMm) * 100;
        }

        // Classes run over the bands: a panel of one band pairs with one of another. Two panels of one class are a ball; over a roll none
        // is left over.
        double balls = Classes(layout).Sum(of => of.PanelsPerMetre / 2);
        double metres = 1000 / balls;
        double trim = 100 * layout.Trims.TotalMm / layout.RollWidthMm;
        double unused = 100 * (layout.UsableWidthMm - Extent(layout)) / layout.RollWidthMm;
        return new YieldFigures
        {
            PanelsPerMetre = panels,
            BallsPerMetre = balls,
            UtilisationPercent = good,
            WastePercent = 100 - good,
            PerThousandBalls = new FeltUsage
            {
                Metres = metres,
                SquareMetres = metres * layout.RollWidthMm / 1000,
                Kilograms = metres * layout.RollWidthMm / 1000 * massPerAreaGsm / 1000,
            },
            Account = new WasteAccount
            {
                GoodPanelsPercent = good,
                BetweenPanelsPercent = 100 - good - unused - trim,
                UnusedEdgePercent = unused,
                EdgeTrimPercent = trim,
            },
        };
    }

    /// <summary>Pairing classes of a layout with their panels per metre, in order of angle.</summary>
    public static IReadOnlyList<(PairingClass Class, double PanelsPerMetre)> Classes(RollLayout layout)
    {
        bool oneWay = layout.Rules.OneWay;
        List<(PairingClass Class, double PerMetre)> classes = [];
        foreach (LayoutBand band in layout.Bands)
        {
            foreach (PlacedPanel panel in band.Repeat.Panels)
            {
                double perMetre = 1000 / band.Repeat.LengthMm;
                int at = classes.FindIndex(c => c.Class.Holds(panel, oneWay));
                if (at < 0)
                {
                    classes.Add((PairingClass.Of(panel, oneWay), perMetre));
                }
                else
                {
                    classes[at] = (classes[at].Class, classes[at].PerMetre + perMetre);
                }
            }
        }

        return [.. classes.OrderBy(c => c.Class.Part).ThenBy(c => c.Class.AngleDeg)];
    }

    private static double Extent(RollLayout layout)
    {
        double low = double.PositiveInfinity;
        double high = double.NegativeInfinity;
        foreach (PlacedPanel panel in layout.Bands.SelectMany(b => b.Repeat.Panels))
        {
            Outline turned = layout.Parts[panel.Part].Outline.Turned(double.DegreesToRadians(panel.AngleDeg));
            low = Math.Min(low, panel.YMm + turned.MinY);
            high = Math.Max(high, panel.YMm + turned.MaxY);
        }

        return high - low;
    }
}
