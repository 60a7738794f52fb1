using System.Globalization;
using FeltNest.Die;
using FeltNest.Die.Order;
using FeltNest.Drawing.Frames;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;

namespace FeltNest.Drawing.Sheets.Dies;

/// <summary>The order on A4: what a toolmaker would phone about. What the shop left open stands there as a blank.</summary>
internal static class OrderSheet
{
    private const string Blank = "______________________________";

    private static readonly PaperSize Size = PaperSize.Of("A4");

    /// <summary>Draws the sheet as number <paramref name="number"/> of <paramref name="count"/>.</summary>
    public static Sheet Draw(DieDesign design, int number, int count)
    {
        DieOrder order = design.Request.Order;
        List<Mark> marks = DieParts.Base(Size, order, new SheetPlace { Number = number, Count = count, Scale = "-", Part = "Order" });
        double left = Size.Space.MinX + 3;
        double width = Size.Space.Width - 6;
        double top = Size.Space.MaxY - 3;
        marks.Add(new TextMark
        {
            Text = $"Order for {DieParts.Named(design)}",
            At = new Point2(left, top - 7),
            HeightMm = Ink.Title,
            Colour = Ink.Dark,
        });
        double below = top - 10;
        if (design.DoNotRun is { } words)
        {
            (_, double high) = DieParts.Warning(default, width, words, Ink.Label);
            marks.AddRange(DieParts.Warning(new Point2(left, below - high), width, words, Ink.Label).Marks);
            below -= high + 3;
        }

        marks.AddRange(FigureTable.Draw(new Point2(left, below), width, Lines(design)));
        (IEnumerable<Mark> safety, _) = DieParts.BriefSafety(new Point2(left, DieParts.TitleTop(Size) + 3), width);
        marks.AddRange(safety);
        return new Sheet
        {
            Title = $"{order.Name}: order",
            Description = "What the toolmaker is to make, field by field.",
            WidthMm = Size.WidthMm,
            HeightMm = Size.HeightMm,
            Symbols = [],
            Marks = marks,
        };
    }

    // Long because it is the list of the sheet, line by line.
    private static List<(string, string)> Lines(DieDesign design)
    {
        DieOrder order = design.Request.Order;
        string f(double v, string format = "0.##") => v.ToString(format, CultureInfo.InvariantCulture);
        return
        [
            ("The die", string.Empty), ("quantity", f(order.Wishes.Quantity, "0")), ("replaces", order.Wishes.Replaces ?? "nothing named"),
            ("revision of the panel", order.Title.Revision ?? Blank),
            (
                "cavities, length of rule",
                $"{design.Gang.Cavities.Count}, {f(design.RuleLengthMm / 1000, "0.000")} m by the middle of its body"),
                ("length of cutting edge", $"{f(design.EdgeLengthMm / 1000, "0.000")} m"),
            ("rule of one cavity, middle of its body; its edge", Rings(design)),
            ("die mass, board and rule, about", $"{f(design.MassKg, "0.0")} kg"),
            ("files, all 1:1 in mm", $"{Cavities(design)} (edge), die.dxf (gang), board.dxf, die.pdf"),
            ("drawn as", order.DieView ? "die view" : "panel view, nap side: mirror for the die's side"),
            ("Rule", string.Empty),
            ("point, thickness, height", $"{f(order.Rule.Points)} pt, {f(order.Rule.ThicknessMm)} mm, {f(order.Rule.HeightMm)} mm"),
            ("bevel and its side", DieParts.Bevel(order.Rule.Bevel)), ("hardness", order.Rule.Hardness),
            ("least inside bend taken", $"{f(order.Rule.LeastBendMm)} mm; least radius drawn {f(design.LeastRadiusMm)} mm"),
            ("rule joints", "one to a cavity, where the ring stands"),
            (
                "profile of the edge",
                $"{f(order.Tolerances.EdgeProfileMm)} mm (plus-minus {f(order.Tolerances.EdgeProfileMm / 2, "0.###")})"),
            ("position of each cavity", $"in a circle of {f(order.Tolerances.PositionMm)} mm round its place"),
            ("Board and ejection", string.Empty),
            (
                "board",
                $"{order.Board.Material}, {f(order.Board.ThicknessMm)} mm, {f(design.Gang.BoardLengthMm)} x "
                    + $"{f(design.Gang.BoardWidthMm)} mm"), (
                    "bridges", $"{f(order.Board.BridgeMm)} mm long, one every {f(order.Board.BridgeEveryMm)} mm of edge"),
            ("ejection", order.Ejection.Material), ("air holes", order.Wishes.AirHoles ?? Blank),
            ("cavity marks", order.Wishes.CavityMarks ?? Blank),
            ("Work", string.Empty), ("nap under the die", DieParts.Nap(order)),
            ("felt", $"{order.FeltMaterial ?? Blank}, {f(order.FeltThicknessMm)} mm"),
            ("plies, stack height", $"{order.Plies}, {f(order.StackMm)} mm"), ("gap between cuts", $"{DieParts.Mm(design.LeastGapMm)} mm"),
            ("press", design.Request.Press is { } press
                ? $"{press.Name}, {f(press.RatedForceKn)} kN, bed {f(press.Bed.LengthMm)} x {f(press.Bed.WidthMm)} mm"
                : Blank), ("mounting", order.Wishes.Mounting ?? Blank), ("registration to the press", order.Wishes.Registration ?? Blank),
            ("first panel accepted by", order.Wishes.JudgedBy ?? Blank), ("delivery, price", Blank),
        ];
    }

    private static string Rings(DieDesign design) => string.Join("; ", design.Parts.Take(3).Select(part => string.Create(
        CultureInfo.InvariantCulture,
        $"{(design.Letter(part) is { Length: > 0 } letter ? letter + ' ' : string.Empty)}{design.RingMm(part):0.00}, "
            + $"{design.Edges[part]!.Arcs.Perimeter:0.00} mm")))
        + (design.Parts.Count > 3 ? "; more on their sheets" : string.Empty);

    private static string Cavities(DieDesign design)
    {
        string[] names = [.. design.Parts.Select(part => $"{CutParts.Named("cavity", design.Letter(part))}.dxf")];
        return names.Length <= 2 ? string.Join(", ", names) : $"{names[0]} to {names[^1]}";
    }
}
