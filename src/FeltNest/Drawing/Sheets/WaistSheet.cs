using System.Globalization;
using FeltNest.Design;
using FeltNest.Drawing.Charts;
using FeltNest.Drawing.Lettering;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;
using FeltNest.Layout;

namespace FeltNest.Drawing.Sheets;

/// <summary>The sheet of a study of waists: strains, felt, panel area and seam length over the waist, the least felt within the limits
/// marked.</summary>
internal static class WaistSheet
{
    // A4 lying; margin, title, foot with the rule, and the room between charts, mm.
    private const double Width = 297;
    private const double Height = 210;
    private const double Margin = 12;
    private const double TitleRoom = 20;
    private const double FootRoom = 14;
    private const double Room = 8;

    private static readonly Colour Brown = Colour.Of(0x9C4A0B);
    private static readonly Colour Blue = Colour.Of(0x2A66AE);
    private static readonly Colour Slate = Colour.Of(0x41606F);
    private static readonly Colour Green = Colour.Of(0x5E7A22);

    // Long because it names the four charts of the sheet and places them.
    /// <summary>Draws the sheet.</summary>
    public static Sheet Draw(WaistTradeOff study)
    {
        double[] waists = [.. study.Points.Select(p => p.WaistMm)];
        double middle = Width / 2;
        double low = Margin + FootRoom;
        double high = Height - Margin - TitleRoom;
        double half = (low + high) / 2;
        LineChart Chart(string title, params ChartSeries[] series) =>
            new()
            {
                Title = title,
                XTitle = "waist on the fitted sphere, mm",
                X = waists,
                Series = series,
                MarkX = study.Best?.WaistMm,
            };
        ChartSeries Line(string name, Colour colour, Func<WaistPoint, double> pick) =>
            new(name, [.. study.Points.Select(pick)], new Pen(0.5, colour));
        ChartSeries Limit(string name, Colour colour, double value) =>
            new(name, [.. waists.Select(_ => value)], new Pen(0.3, colour, 1.5, 1), Level: true);

        LineChart strain = Chart(
            "Strain of the felt, %",
            Line("greatest stretch", Brown, p => p.Strain.MaxStretchPercent),
            Limit("stretch limit", Brown, study.Ball.Felt.MaxStretchPercent),
            Line("compression", Slate, p => p.Strain.MaxCompressionPercent),
            Line("edge compression", Blue, p => p.Strain.EdgeMaxCompressionPercent),
            Limit("edge limit", Blue, study.Ball.Felt.MaxEdgeCompressionPercent));
        LineChart felt = Chart(
            "Felt per thousand balls before losses, m\u00B2 of full roll width",
            Line(string.Empty, Green, p => p.Yield.PerThousandBalls.SquareMetres));
        LineChart area = Chart("Area of the cut panel, cm\u00B2", Line(string.Empty, Slate, p => p.PanelAreaMm2 / 100));
        LineChart seam = Chart("Length of the seam, mm", Line(string.Empty, Slate, p => p.SeamLengthMm));
        Mark[] marks =
        [
            new GroupMark("title", [.. Title(study)]),
            new GroupMark(
                "strain", [.. strain.Draw(new Box { MinX = Margin, MinY = half + (Room / 2), MaxX = middle - (Room / 2), MaxY = high })]),
            new GroupMark(
                "felt",
                [.. felt.Draw(new Box { MinX = middle + (Room / 2), MinY = half + (Room / 2), MaxX = Width - Margin, MaxY = high })]),
            new GroupMark(
                "area", [.. area.Draw(new Box { MinX = Margin, MinY = low, MaxX = middle - (Room / 2), MaxY = half - (Room / 2) })]),
            new GroupMark(
                "seam",
                [.. seam.Draw(new Box { MinX = middle + (Room / 2), MinY = low, MaxX = Width - Margin, MaxY = half - (Room / 2) })]),
            new GroupMark("finding", [.. Finding(study)]),
        ];
        return new Sheet
        {
            Title = $"Waist of {study.Ball.Name}",
            Description = study.Finding,
            WidthMm = Width,
            HeightMm = Height,
            Symbols = [],
            Marks = marks,
        };
    }

    private static IEnumerable<Mark> Title(WaistTradeOff study)
    {
        LayoutRequest roll = study.Roll;
        const double top = Height - Margin;
        yield return new TextMark
        {
            Text = StrokeFont.Fitted($"Choosing the waist: {study.Ball.Name}", Ink.Title, Width - (2 * Margin)),
            At = new Point2(Margin, top - Ink.Title),
            HeightMm = Ink.Title,
            Colour = Ink.Dark,
        };
        string words = string.Create(
            CultureInfo.InvariantCulture,
            $"roll {roll.RollWidthMm:0.##} mm, edge {roll.Trims.LowerMm:0.##} mm, gap {roll.GapMm:0.##} mm, rows "
                + $"{EnumWord.Of(roll.Rules.Rows)}   {EnumWord.Of(study.Ball.Panel.Flattening)}, edge "
                + $"{EnumWord.Of(study.Ball.Panel.Edge)}{(study.CutShort ? "   cut short" : string.Empty)}");
        yield return new TextMark
        {
            Text = StrokeFont.Fitted(words, Ink.Note, Width - (2 * Margin)),
            At = new Point2(Margin, top - 12),
            HeightMm = Ink.Note,
            Colour = Ink.Soft,
        };
        yield return new PathMark([Chain.Open(new Point2(Margin, top - 15), new Point2(Width - Margin, top - 15))], Ink.Wide);
    }

    private static IEnumerable<Mark> Finding(WaistTradeOff study)
    {
        string head = study.Best is null
            ? study.Finding
            : string.Create(
                CultureInfo.InvariantCulture, $"Dashed: waist {study.Best.WaistMm:0.###} mm, least felt within limits{FlatWords(study)}:");
        yield return new TextMark
        {
            Text = StrokeFont.Fitted(head, Ink.Note, Width - (2 * Margin)),
            At = new Point2(Margin, Margin + 5),
            HeightMm = Ink.Note,
            Colour = Ink.Dark,
        };
        if (study.Best is not null)
        {
            yield return new TextMark
            {
                Text = StrokeFont.Fitted(study.Rule, Ink.Note, Width - (2 * Margin)),
                At = new Point2(Margin, Margin),
                HeightMm = Ink.Note,
                Colour = Ink.Dark,
            };
        }
    }

    private static string FlatWords(WaistTradeOff study) => study.Flat is var (from, to) && from < to
        ? FormattableString.Invariant($"; practically the same from {from:0.###} to {to:0.###} mm") : string.Empty;
}
