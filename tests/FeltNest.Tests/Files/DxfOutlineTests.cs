using FeltNest.Files.Outlines;
using Xunit;

namespace FeltNest.Tests.Files;

public sealed class DxfOutlineTests : IDisposable
{
    private const string Slot = "0 LWPOLYLINE 90 4 70 1 10 0 20 0 10 40 20 0 42 1 10 40 20 20 10 0 20 20 42 1";

    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void A_closed_polyline_keeps_its_bulges_as_arcs()
    {
        ImportedOutline outline = Read(Slot, "9 $INSUNITS 70 4");

        // A slot 40 between centres, 20 wide: a rectangle and two half discs.
        Assert.Equal(800 + (100 * Math.PI), outline.RawArcs!.Area, 9);
        Assert.Equal(4, outline.RawArcs.Vertices.Count);
        Assert.Equal(["lengths are in millimetres", "the outline is 60 x 20 mm"], outline.Notes);
    }

    [Fact]
    public void An_old_polyline_with_vertices_reads_the_same()
    {
        ImportedOutline outline = Read(
            "0 POLYLINE 66 1 70 1 0 VERTEX 10 0 20 0 0 VERTEX 10 40 20 0 42 1 0 VERTEX 10 40 20 20 0 VERTEX 10 0 20 20 42 1 0 SEQEND",
            "9 $INSUNITS 70 4");

        Assert.Equal(800 + (100 * Math.PI), outline.RawArcs!.Area, 9);
    }

    [Fact]
    public void Lines_and_arcs_in_any_order_and_direction_are_joined()
    {
        ImportedOutline outline = Read(
            "0 LINE 10 40 20 0 11 0 21 0 0 ARC 10 0 20 10 40 10 50 90 51 270 0 LINE 10 0 20 20 11 40 21 20.01 0 ARC 10 40 20 10 40 10 "
                + "50 270 51 90", "9 $INSUNITS 70 4");

        Assert.Equal(800 + (100 * Math.PI), outline.RawArcs!.Area, 0.6);
        Assert.Contains("closed 1 gap of at most 0.01 mm", outline.Notes);
    }

    [Theory]
    [InlineData("", 1, "millimetres, assumed: the drawing states no unit")]
    [InlineData("9 $INSUNITS 70 0", 1, "millimetres, assumed: the drawing states no unit")]
    [InlineData("9 $INSUNITS 70 5", 10, "centimetres")]
    [InlineData("9 $INSUNITS 70 1", 25.4, "inches")]
    public void Units_are_respected_and_said(string header, double scale, string name)
    {
        ImportedOutline outline = Read("0 CIRCLE 10 3 20 4 40 2", header);

        Assert.Equal(4 * Math.PI * scale * scale, outline.RawArcs!.Area, 8);
        Assert.Contains($"lengths are in {name}", outline.Notes);
    }

    [Fact]
    public void A_spline_is_read_as_points_on_it()
    {
        // A circle of radius 20 as a rational quadratic spline: L. Piegl, W. Tiller, The NURBS Book, 2nd ed. 1997, section 7.5.
        (double X, double Y, double Weight)[] controls =
        [
            (20, 0, 1), (20, 20, Math.Sqrt(0.5)), (0, 20, 1), (-20, 20, Math.Sqrt(0.5)), (-20, 0, 1), (-20, -20, Math.Sqrt(0.5)),
            (0, -20, 1),
            (20, -20, Math.Sqrt(0.5)), (20, 0, 1),
        ];
        string knots = string.Concat(new[] { 0, 0, 0, 1, 1, 2, 2, 3, 3, 4, 4, 4 }.Select(knot => $" 40 {knot}"));
        string points = string.Concat(controls.Select(c => FormattableString.Invariant($" 10 {c.X} 20 {c.Y} 30 0")));
        string weights = string.Concat(controls.Select(c => FormattableString.Invariant($" 41 {c.Weight:R}")));

        ImportedOutline outline = Read($"0 SPLINE 70 13 71 2{knots}{weights}{points}", "9 $INSUNITS 70 4");

        Assert.Equal(400 * Math.PI, outline.Raw.Area, 0.1);
        Assert.All(outline.Raw.Points, p => Assert.Equal(20, p.Length, 1e-9));
    }

    [Theory]
    [InlineData("0 SPLINE 70 8 71 3 11 0 21 0 11 9 21 0 11 9 21 9", "has no control points")]
    [InlineData("0 SPLINE 71 2 40 0 40 0 40 0 40 1 40 1 10 0 20 0 10 9 20 0 10 9 20 9", "has 5 knots")]
    [InlineData("0 SPLINE 71 2 40 0 40 0 40 2 40 1 40 1 40 1 10 0 20 0 10 9 20 0 10 9 20 9", "rising knots")]
    [InlineData("0 SPLINE 71 99 40 0 10 0 20 0", "has degree 99")]
    public void An_unsound_spline_is_refused(string entity, string told) => Assert.Contains(
        told, Assert.Throws<InputException>(() => Read(entity, "9 $INSUNITS 70 4")).Problem, StringComparison.Ordinal);

    [Fact]
    public void A_frame_beside_or_round_the_part_is_left_aside_and_said()
    {
        const string frame = " 0 LWPOLYLINE 90 4 70 1 10 -100 20 -100 10 200 20 -100 10 200 20 100 10 -100 20 100";

        ImportedOutline outline = Read(Slot + frame, "9 $INSUNITS 70 4");

        Assert.Equal(800 + (100 * Math.PI), outline.RawArcs!.Area, 9);
        Assert.Contains("of 2 closed loops the one of 40 x 20 mm is taken; left aside: frames of 300 x 200 mm", outline.Notes);
        Assert.Throws<InputException>(() => Read(Slot + " 0 CIRCLE 10 20 20 10 40 2", "9 $INSUNITS 70 4"));
    }

    [Fact]
    public void A_polyline_drawn_from_behind_is_turned_over()
    {
        ImportedOutline outline = Read("0 LWPOLYLINE 70 1 10 0 20 0 10 4 20 0 10 0 20 3 230 -1", string.Empty);

        Assert.Equal(-4, outline.Raw.MinX, 12);
        Assert.Equal(0, outline.Raw.MaxX, 12);
    }

    [Fact]
    public void Lettering_beside_the_outline_is_left_aside_and_said() =>
        Assert.Contains("left aside: 1 POINT, 2 TEXT", Read(Slot + " 0 TEXT 1 a 0 POINT 10 1 20 1 0 TEXT 1 b", string.Empty).Notes);

    [Theory]
    [InlineData("0 CIRCLE 10 0 20 0 40 5 0 CIRCLE 10 0 20 0 40 9", "holds 2 closed loops")]
    [InlineData("0 LINE 10 0 20 0 11 9 21 0", "is open: a line ends near (9, 0) mm")]
    [InlineData(
        "0 LINE 10 9 20 0 11 20 21 0 0 LINE 10 0 20 0 11 9 21 0 0 LINE 10 9 20 0 11 9 21 9 0 LINE 10 9 20 9 11 0 21 0",
        "more than two lines meet near")]
    [InlineData("0 ELLIPSE 40 1", "line 12, ELLIPSE: cannot be read as an outline")]
    [InlineData("0 INSERT 2 PART", "INSERT: cannot be read as an outline")]
    [InlineData("0 LWPOLYLINE 70 1 10 0 20 0 42 1e6 10 1 20 0", "has a bulge of 1000000 at vertex 1")]
    [InlineData("0 LWPOLYLINE 70 1 10 0 20 x 10 1 20 0", "'x' under group 20 is not a number")]
    [InlineData("0 CIRCLE 10 0 20 0 40 -5", "has a radius of -5")]
    [InlineData("0 LINE 10 0 20 0 30 5 11 9 21 0", "lies at another height")]
    [InlineData("0 ARC 10 0 20 0 40 5 50 0 51 90 210 1 230 0", "is drawn on a plane that leans")]
    [InlineData("0 POLYLINE 70 9 0 VERTEX 10 0 20 0", "is a mesh, a 3-D line or a fitted curve")]
    [InlineData("", "holds no outline")]
    public void What_is_not_one_sound_loop_is_refused_in_one_line(string entities, string problem)
    {
        InputException error = Assert.Throws<InputException>(() => Read(entities, string.Empty));

        Assert.Contains(problem, error.Message, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', error.Message);
    }

    [Theory]
    [InlineData("hello\nworld\n", "line 1: 'hello' where a DXF group code, a whole number, is wanted")]
    [InlineData("0\nSECTION\n2\nHEADER\n0\nEOF\n", "has no ENTITIES section")]
    [InlineData("0\0", "is a binary file")]
    public void A_file_that_is_no_text_drawing_is_refused(string text, string problem) =>
        Assert.Contains(
            problem, Assert.Throws<InputException>(() => OutlineReader.Read(folder.Write("o.dxf", text))).Message,
            StringComparison.Ordinal);

    // Words of a drawing, each to a line of its own.
    private ImportedOutline Read(string entities, string header)
    {
        string words = $"0 SECTION 2 HEADER {header} 0 ENDSEC 0 SECTION 2 ENTITIES {entities} 0 ENDSEC 0 EOF";
        return OutlineReader.Read(folder.Write("o.dxf", string.Join('\n', words.Split(' ', StringSplitOptions.RemoveEmptyEntries)) + "\n"));
    }
}
