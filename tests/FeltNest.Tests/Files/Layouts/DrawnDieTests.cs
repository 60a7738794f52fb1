using FeltNest.Files.Layouts;
using FeltNest.Layout;
using FeltNest.Layout.Limits;
using FeltNest.Layout.Scan;
using Xunit;

namespace FeltNest.Tests.Files.Layouts;

public sealed class DrawnDieTests : IDisposable
{
    // Two rows of two squares of 50, 55 apart along the roll and 60 across.
    private const string Squares = """
        <svg xmlns="http://www.w3.org/2000/svg" width="200mm" height="200mm" viewBox="0 0 200 200">
          <rect x="10" y="20" width="50" height="50"/><rect x="65" y="20" width="50" height="50"/>
          <rect x="20" y="80" width="50" height="50"/><rect x="75" y="80" width="50" height="50"/>
        </svg>
        """;

    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void A_drawn_die_is_the_layout_it_cuts()
    {
        List<string> notes = [];
        RollLayout die = DrawnDie.Read(folder.Write("today.svg", Squares), 110, new EdgeTrims { LowerMm = 15, UpperMm = 10 }, notes);

        Assert.Equal((135, 4, 110), (die.RollWidthMm, die.Bands[0].Repeat.Panels.Count, die.Bands[0].Repeat.LengthMm));
        Assert.Equal(4 / 0.110, die.PanelsPerMetre, 1e-9);
        Assert.All(die.Parts, part => Assert.Equal(2500, part.AreaMm2, 1e-9));
        Assert.Contains(
            notes,
            note => note.Contains("4 cavities of 2500.0 mm2 on average, 110.00 mm across, struck every 110 mm", StringComparison.Ordinal));

        // One row of it needs 50 mm and its trims, both 110.
        Assert.Equal([(1, 75.0), (2, 135.0)], KeptDie.Widths(die, 200).Take(2).Select(d => (d.Rows, Math.Round(d.LeastWidthMm, 9))));
        Assert.Equal(2 / 0.110, KeptDie.PanelsPerMetreAt(die, 134.9), 1e-9);
    }

    [Fact]
    public void Cavities_that_overlap_at_the_feed_are_refused()
    {
        string path = folder.Write("today.svg", Squares);
        string message = Assert.Throws<InputException>(() => DrawnDie.Read(path, 100, EdgeTrims.Both(15), [])).Message;

        Assert.Contains(
            "today.svg: its 4 cavities do not clear each other when struck again after 100 mm", message, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', message);
    }

    [Fact]
    public void A_drawing_of_closed_polylines_in_inches_is_read_in_mm()
    {
        string path = folder.Write("today.dxf", Dxf(1, (0, 0), (3, 0)));
        RollLayout die = DrawnDie.Read(path, 152.4, EdgeTrims.Both(0.0), []);

        Assert.Equal(2, die.Parts.Count);
        Assert.Equal(50.8, die.RollWidthMm, 1e-9);
        Assert.All(die.Parts, part => Assert.Equal(50.8 * 50.8, part.AreaMm2, 1e-6));
    }

    [Fact]
    public void A_loop_that_stays_open_is_refused_with_its_place()
    {
        string path = folder.Write(
            "today.svg",
            Squares.Replace(
                """<rect x="75" y="80" width="50" height="50"/>""", """<polyline points="75,80 125,80 125,130"/>""",
                StringComparison.Ordinal));
        Assert.Contains(
            "is open: a line ends near", Assert.Throws<InputException>(() => DrawnDie.Read(path, 110, EdgeTrims.Both(15), [])).Message,
            StringComparison.Ordinal);
    }

    // Squares of two units, lower left corners given.
    private static string Dxf(int unit, params (double X, double Y)[] corners) =>
        $"0\nSECTION\n2\nHEADER\n9\n$INSUNITS\n70\n{unit}\n0\nENDSEC\n0\nSECTION\n2\nENTITIES\n"
        + string.Concat(corners.Select(c =>
            $"0\nLWPOLYLINE\n8\n0\n90\n4\n70\n1\n10\n{c.X}\n20\n{c.Y}\n10\n{c.X + 2}\n20\n{c.Y}\n"
                + $"10\n{c.X + 2}\n20\n{c.Y + 2}\n10\n{c.X}\n20\n{c.Y + 2}\n"))
        + "0\nENDSEC\n0\nEOF\n";
}
