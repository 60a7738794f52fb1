using FeltNest.Ball.Passport;
using FeltNest.Drawing.Charts;
using FeltNest.Drawing.Lettering;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;
using static FeltNest.InvariantText;

namespace FeltNest.Drawing.Sheets.Felts;

/// <summary>The sheet of a measured felt: force against strain with the laws fitted, the figures, and what has to be told.</summary>
internal static class FeltSheet
{
    // A4 lying; margin, title, column of figures, block of words, mm.
    private const double Width = 297;
    private const double Height = 210;
    private const double Margin = 12;
    private const double TitleRoom = 20;
    private const double FigureRoom = 92;

    // Places of a law's line.
    private const int Steps = 60;

    private static readonly Dictionary<FeltDirection, Colour> Colours = new()
    {
        [FeltDirection.Warp] = Colour.Of(0x5E7A22),
        [FeltDirection.Weft] = Colour.Of(0x9C4A0B),
        [FeltDirection.Bias] = Colour.Of(0x2A66AE),
    };

    /// <summary>Draws the sheet.</summary>
    public static Sheet Draw(FeltPassport felt, FeltReadings readings)
    {
        const double high = Height - Margin - TitleRoom;
        double words = TextBlock.Height(felt.Remarks, Width - (2 * Margin));
        Box chart = new() { MinX = Margin, MinY = Margin + words + 4, MaxX = Width - Margin - FigureRoom, MaxY = high };
        return new Sheet
        {
            Title = $"Felt {felt.Felt}, lot {felt.Lot.Name}",
            Description = "force against strain with the laws fitted, and the figures of the lot",
            WidthMm = Width,
            HeightMm = Height,
            Symbols = [],
            Marks =
            [
                new GroupMark("title", [.. Title(felt)]),
                new GroupMark("curves", readings.Strips.Count == 0 ? [] : [.. Curves(felt, readings, chart)]),
                new GroupMark("figures",
                [
                    .. FigureTable.Draw(new Point2(Width - Margin - FigureRoom + 6, high - 2), FigureRoom - 6, [.. Figures(felt)]),
                ]),
                new GroupMark(
                    "remarks", [.. TextBlock.Draw(new Point2(Margin, Margin + words), Width - (2 * Margin), felt.Remarks)]),
            ],
        };
    }

    private static IEnumerable<Mark> Title(FeltPassport felt)
    {
        const double top = Height - Margin;
        yield return Words(
            StrokeFont.Fitted($"Felt: {felt.Felt}, lot {felt.Lot.Name}", Ink.Title, Width - (2 * Margin)),
            new Point2(Margin, top - Ink.Title), Ink.Title, Ink.Dark);
        yield return Words(
            Invariant(
                $"measured until {felt.Lot.Date}; laws fitted between {felt.Lot.FromPercent:0.##} and {felt.Lot.ToPercent:0.##} % of ")
                + "strain, bent where the curve bends; dots: readings; +-: 95 % interval",
            new Point2(Margin, top - 12), Ink.Note, Ink.Soft);
        yield return new PathMark([Chain.Open(new Point2(Margin, top - 15), new Point2(Width - Margin, top - 15))], Ink.Wide);
    }

    private static IEnumerable<(string Name, string Value)> Figures(FeltPassport felt)
    {
        yield return ("Figures of the lot", string.Empty);
        foreach ((FeltQuantity quantity, FeltValue value) in felt.Values.OrderBy(one => one.Key))
        {
            yield return (PassportWords.Title(quantity), PassportWords.Figure(value, FeltValues.RangeOf(quantity)));
        }

        yield return ("Bend b of the curves", string.Empty);
        foreach (FeltCurve curve in felt.Curves)
        {
            string verdict = curve.Bends ? "bends" : "straight";
            yield return (
                CurveFit.Words(curve.Direction, curve.InTension),
                Invariant($"{curve.Bend.Value:0.00} +- {curve.Bend.Interval:0.00}, {verdict}"));
        }

        if (felt.Edge is { } edge)
        {
            yield return ("Edge limit", string.Empty);
            yield return (Invariant($"flat, disc of {edge.Flat.DiscDiameterMm:0.#} mm"), Invariant($"{edge.FlatPercent:0.0} %"));
            yield return ("puckered", edge.PuckeredPercent is { } most ? Invariant($"{most:0.0} %") : "none");
        }
    }

    private static IEnumerable<Mark> Curves(FeltPassport felt, FeltReadings readings, Box frame)
    {
        double low = Math.Min(0, 100 * readings.Strips.Min(r => r.Strain));
        double high = Math.Max(0, 100 * readings.Strips.Max(r => r.Strain));
        double[] x = [.. Enumerable.Range(0, Steps + 1).Select(i => low + ((high - low) * i / Steps))];
        LineChart chart = new()
        {
            Title = "Force for a mm of width, N/mm",
            XTitle = "strain, %",
            X = x,
            Series = [.. felt.Curves.Select(curve => Law(curve, felt.Lot, readings, x))],
            MarkX = null,
        };
        ChartPlot plot = chart.Plot(frame, readings.Strips.Select(r => r.NPerMm).Append(0));
        Mark[] dots =
        [
            .. readings.Strips.Select(r => (Mark)new PathMark(
                [Chain.Circle(plot.Place(100 * r.Strain, r.NPerMm), 0.6)], null, Colours[r.Direction])),
        ];
        return [.. chart.Draw(frame, plot), .. dots];
    }

    // The law through the mean of its readings, within its range alone.
    private static ChartSeries Law(FeltCurve curve, Ball.FeltLot lot, FeltReadings readings, double[] x)
    {
        FitRange range = new() { FromPercent = lot.FromPercent, ToPercent = lot.ToPercent };
        StripReading[] fitted =
        [
            .. readings.Strips.Where(r => r.Direction == curve.Direction && r.ExtensionMm > 0 == curve.InTension && range.Holds(r.Strain)),
        ];
        double slope = curve.Bends ? curve.Initial.Value : curve.Straight.Value;
        double bow = curve.Bends ? curve.Initial.Value * curve.Bend.Value : 0;
        double shift = fitted.Average(r => r.NPerMm - (slope * r.Strain) - (bow * r.Strain * r.Strain));
        double[] values = [.. x.Select(percent => At(percent / 100))];
        return new ChartSeries(
            curve.InTension ? EnumWord.Of(curve.Direction) : "", values, new Pen(0.6, Colours[curve.Direction]), Level: true);

        double At(double strain) => range.Holds(strain) && strain > 0 == curve.InTension
            ? shift + (slope * strain) + (bow * strain * strain)
            : double.NaN;
    }

    private static TextMark Words(string text, Point2 at, double height, Colour colour) => new()
    {
        Text = text,
        At = at,
        HeightMm = height,
        Colour = colour,
    };
}
