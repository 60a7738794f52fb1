using FeltNest.Files.Outlines;
using FeltNest.Geometry;
using Xunit;

namespace FeltNest.Tests.Files;

public sealed class SvgOutlineTests : IDisposable
{
    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void A_triangle_keeps_its_corners_and_looks_as_on_the_screen()
    {
        ImportedOutline outline = Read("""<polygon points="0,0 4,0 0,3"/>""", size: """width="40mm" height="40mm" viewBox="0 0 40 40" """);

        // y runs down in SVG: the corner at y = 3 lies below the other two.
        Assert.Equal(
            [new Point2(0, -3), new Point2(4, 0), new Point2(0, 0)], outline.Raw.Points.OrderBy(p => p.Y).ThenByDescending(p => p.X));
        Assert.Null(outline.RawArcs);
        Assert.Contains("the outline is 4 x 3 mm", outline.Notes);
    }

    [Fact]
    public void Arcs_of_a_circle_stay_arcs_through_moves_turns_and_even_scaling()
    {
        ImportedOutline outline = Read(
            """<g transform="translate(50 50) rotate(30)"><path transform="scale(2)" d="M-20 0a20 20 0 1 1 40 0a20,20 0 11-40 0z"/></g>""");

        // Radius 20, doubled by the transform, halved by the viewBox: 20 mm.
        Assert.Equal(400 * Math.PI, outline.RawArcs!.Area, 8);
        Assert.Equal(40 * Math.PI, outline.RawArcs.Perimeter, 8);
        Assert.Equal(2, outline.RawArcs.Vertices.Count);
    }

    [Theory]
    [InlineData("M0 0H10V10h-5v5l-5-0z", 125)]
    [InlineData("m 1,1 10,0 0,10 -10,0 z", 100)]
    [InlineData("M0,0L10-0 10 1e1.0.1e2Z", 100)]
    [InlineData("M0 0A5 5 0 0 1 10 0L10 20 0 20Z", 200 + (12.5 * Math.PI))]
    [InlineData("M0 0A1 1 0 0 1 10 0L10 20 0 20Z", 200 + (12.5 * Math.PI))]
    // A quarter disc about (0, 5); and three quarters about (5, 0) with the square that fills them up to (0, 5).
    [InlineData("M0 0A5 5 0 0 1 5 5L0 5Z", 6.25 * Math.PI)]
    [InlineData("M0 0A5 5 0 1 1 5 5L0 5Z", (18.75 * Math.PI) + 25)]
    [InlineData("M0 0A5 5 0 0 0 10 0L10 20 0 20Z", 200 - (12.5 * Math.PI))]
    public void Lines_and_circles_of_a_path_enclose_their_area_exactly(string data, double area)
    {
        ImportedOutline outline = Read($"""<path d="{data}"/>""", Unit);

        Assert.Equal(area, outline.RawArcs?.Area ?? outline.Raw.Area, 8);
    }

    [Theory]
    // A parabola encloses two thirds of its box; a curve and its mirror image cancel; an ellipse has pi a b.
    [InlineData("M0 0Q10 20 20 0Z", 400.0 / 3)]
    [InlineData("M0 0C6.666666666667 13.333333333333 13.333333333333 13.333333333333 20 0Z", 400.0 / 3)]
    [InlineData("M0 0Q5 10 10 0T20 0L20-30 0-30z", 600)]
    [InlineData("M0 0c2 5 8 5 10 0s8-5 10 0v-30h-20z", 600)]
    [InlineData("M-20 0A20 10 0 0 1 20 0A20 10 0 0 1-20 0Z", 200 * Math.PI)]
    public void Other_curves_become_chords_within_the_stated_tolerance(string data, double area)
    {
        ImportedOutline outline = Read($"""<path d="{data}"/>""", Unit);

        Assert.Equal(area, outline.Raw.Area, 0.002 * outline.Raw.Perimeter);
        Assert.Contains("curves that are no circles became chords within 0.002 mm", outline.Notes);
    }

    [Theory]
    [InlineData("""<rect x="5" y="5" width="40" height="20"/>""", 800)]
    [InlineData("""<rect width="40" height="20" rx="10"/>""", 400 + (100 * Math.PI))]
    [InlineData("""<circle cx="3" cy="4" r="10"/>""", 100 * Math.PI)]
    [InlineData("""<line x1="0" y1="0" x2="10" y2="0"/><polyline points="10,0 10,10 0,10 0,0"/>""", 100)]
    public void Basic_shapes_are_outlines_too(string shapes, double area)
    {
        ImportedOutline outline = Read(shapes, Unit);

        Assert.Equal(area, outline.RawArcs?.Area ?? outline.Raw.Area, 8);
    }

    [Theory]
    [InlineData("""width="100mm" height="50mm" viewBox="0 0 200 100" """, 0.5)]
    [InlineData("""width="10cm" viewBox="0 0 100 100" """, 1)]
    [InlineData("""width="1in" viewBox="0 0 25.4 25.4" """, 1)]
    [InlineData("""width="96" height="96" viewBox="0 0 96 96" """, 25.4 / 96)]
    [InlineData("", 25.4 / 96)]
    public void Units_follow_width_height_and_view_box(string size, double scale)
    {
        ImportedOutline outline = Read("""<rect width="40" height="20"/>""", size);

        Assert.Equal(800 * scale * scale, outline.Raw.Area, 9);
    }

    [Fact]
    public void A_tiny_gap_is_healed_and_said()
    {
        ImportedOutline outline = Read("""<path d="M0 0L10 0L10 10L0 10L0 0.03"/>""", Unit);

        Assert.Equal(4, outline.Raw.Points.Count);
        Assert.Contains("closed 1 gap of at most 0.03 mm", outline.Notes);
    }

    [Theory]
    [InlineData("""<path d="M0 0L10 0L10 10L0 10L0 0.2"/>""", "is open: a line ends near (0, -0.2) mm")]
    [InlineData("""<circle r="5"/><circle r="9"/>""", "holds 2 closed loops")]
    [InlineData("""<path d="M0 0L10 x"/>""", "<path> d, character 9: 'x' where a number is wanted")]
    [InlineData("""<path id="p" d="L0 0"/>""", "<path> id 'p' d, character 1: 'L' comes first where M is wanted")]
    [InlineData("""<path d="M0 0A5 5 0 2 0 1 1z"/>""", "character 12: '2' where a flag 0 or 1 is wanted")]
    [InlineData("""<path transform="turn(3)" d="M0 0L1 0 1 1z"/>""", "'turn' with 1 numbers is no transform")]
    [InlineData("""<text>hello</text>""", "<text>: cannot be part of an outline")]
    [InlineData("""<script>alert(1)</script>""", "holds a script: scripts are refused")]
    [InlineData("""<circle r="5" onclick="x()"/>""", "holds a script: scripts are refused")]
    [InlineData("""<image href="http://example.invalid/a.png"/>""", "refers to something outside the file")]
    [InlineData("""<style>@import "a.css";</style><circle r="5"/>""", "refers to something outside the file")]
    [InlineData("""<circle r="5" fill="url(other.svg#a)"/>""", "refers to something outside the file")]
    [InlineData("""<path d="M0 0L10 10 10 0 0 10z"/>""", "crosses or touches itself")]
    [InlineData("", "holds no outline")]
    [InlineData("<g>", "is not sound XML at line")]
    public void What_is_not_one_sound_loop_is_refused_in_one_line(string inner, string problem)
    {
        InputException error = Assert.Throws<InputException>(() => Read(inner, Unit));

        Assert.Contains(problem, error.Message, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', error.Message);
    }

    [Fact]
    public void Document_types_and_entities_are_refused()
    {
        string path =
            folder.Write("o.svg", """<!DOCTYPE svg [<!ENTITY a "b">]><svg xmlns="http://www.w3.org/2000/svg"><circle r="5"/></svg>""");

        Assert.Contains(
            "document types and entities are refused", Assert.Throws<InputException>(() => OutlineReader.Read(path)).Message,
            StringComparison.Ordinal);
    }

    // One user unit is one millimetre.
    private const string Unit = """width="1in" height="1in" viewBox="0 0 25.4 25.4" """;

    private ImportedOutline Read(string inner, string size = """width="100mm" height="50mm" viewBox="0 0 200 100" """) =>
        OutlineReader.Read(folder.Write("o.svg", $"""<svg xmlns="http://www.w3.org/2000/svg" {size}>{inner}</svg>"""));
}
