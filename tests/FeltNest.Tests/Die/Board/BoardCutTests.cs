using System.Text;
using FeltNest.Die;
using FeltNest.Die.Board;
using FeltNest.Die.Check;
using FeltNest.Die.Gang;
using FeltNest.Die.Order;
using FeltNest.Drawing.Boards;
using FeltNest.Drawing.Writers;
using FeltNest.Files;
using FeltNest.Files.Dies;
using FeltNest.Geometry;
using FeltNest.Layout;
using Xunit;

namespace FeltNest.Tests.Die.Board;

/// <summary>Boards for a laser, read back from their drawing. Widths and lengths of slots are plain geometry of plates and
/// circles.</summary>
public sealed class BoardCutTests
{
    // A slot of 0.7 less a kerf of 0.2 is drawn 0.5 wide. Of a band area and girth tell the width.
    [Fact]
    public void Slots_are_drawn_at_their_width_less_the_kerf_with_their_arcs()
    {
        BoardCut cut = Design(DieCases.PanelLay, Laser).Cut!;
        BoardLine[] slots = [.. cut.Lines.Where(l => l.Layer == BoardCut.Slot)];

        Assert.All(slots, s =>
        {
            ArcOutline band = ArcOutline.From(s.Line);
            Assert.Contains(s.Line, v => v.Turn != 0);
            Assert.Equal(0.5, Width(band), 2e-3);
        });
        Assert.Equal(4 * Design(DieCases.PanelLay, Laser).Gang.Cavities.Count, slots.Length);
    }

    // Plates of 40 x 20, rule of 0.71 outside: the middle line is 40.71 x 20.71, less two bridges of 6 a ring; the beam burns 0.1 more off
    // each bridge than is drawn, so the bands are 0.2 shorter a slot.
    [Fact]
    public void Corners_are_cut_through_and_bridges_are_left()
    {
        DieDesign design = Design(DieCases.Plates, Laser);
        ArcOutline[] bands = [.. design.Cut!.Lines.Where(l => l.Layer == BoardCut.Slot).Select(l => ArcOutline.From(l.Line))];

        Assert.Equal(4, bands.Length);
        Assert.Equal(2 * (122.84 - 12 - 0.4), bands.Sum(b => b.Area) / 0.5, 1e-3);
    }

    [Fact]
    public void A_board_of_panels_passes_and_says_what_is_wrong_with_it_when_it_was_changed()
    {
        DieDesign design = Design(DieCases.PanelLay, Laser);
        string drawn = Drawn(design);

        Assert.Empty(Violations(design, drawn));
        Assert.Contains(Violations(design, drawn, l => l with { KerfMm = 0.3 }), v => v.Contains("mm wide, 0.4 is wanted"));
        Assert.Contains(Violations(design, drawn, l => l with { Mirrored = true }), v => v.Contains("off every cutting edge"));
        Assert.Contains(
            Violations(design, OntoSlot(drawn, "CIRCLE", "AIR")), v => v.StartsWith("AIR at") && v.Contains("from a slot or hole"));
        Assert.Contains(Violations(design, OntoSlot(drawn, "VERTEX", "ENGRAVE")), v => v.StartsWith("engraving near"));
        Assert.Contains(Violations(design, drawn.Replace("$EXTMAX\r\n 10\r\n", "$EXTMAX\r\n 10\r\n-")), v => v.Contains("extents"));
        Assert.Contains(Violations(design, Without(drawn, "SLOT")), v => v.Contains("rule less bridges"));
    }

    [Fact]
    public void Plates_two_parts_and_die_views_pass_too()
    {
        foreach (DieDesign design in new[]
        {
            Design(DieCases.Plates, Laser), Design(DieCases.TwoParts, Laser, true), Design(DieCases.PanelLay, Laser, true),
        })
        {
            Assert.Empty(Violations(design, Drawn(design)));
        }
    }

    // A board longer than a bed of 200 x 200: pieces that each go on the bed, two dowels across a split, each drawn in both pieces.
    [Fact]
    public void A_board_longer_than_the_bed_is_split_with_dowels_across()
    {
        DieDesign design = Design(DieCases.PanelLay, Laser with { BedLengthMm = 200, BedWidthMm = 200, DowelMm = 3 });
        BoardCut cut = design.Cut!;
        double longer = Math.Max(design.Gang.BoardLengthMm, design.Gang.BoardWidthMm);

        Assert.True(longer > 200);
        Assert.NotEmpty(cut.Splits);
        double[] ends = [0, .. cut.Splits, longer];
        Assert.All(ends.Zip(ends.Skip(1)), p => Assert.InRange(p.Second - p.First, 1, 200));
        Assert.Equal(cut.Splits.Count + 1, cut.Lines.Count(l => l.Layer == BoardCut.Outside));
        Assert.Equal(4 * cut.Splits.Count, cut.Lines.Count(l => l.Layer == BoardCut.Dowel));
        Assert.Empty(Violations(design, Drawn(design)));
    }

    [Fact]
    public void Holes_and_words_stand_on_layers_of_their_own()
    {
        DieDesign design = Design(DieCases.PanelLay, Laser);
        BoardCut cut = BoardEngraving.Of(design.Cut!);
        int cavities = design.Gang.Cavities.Count;

        Assert.Equal(3 * cavities, cut.Holes.Count(h => h.Layer == BoardCut.Air));
        Assert.Equal(2, cut.Holes.Count(h => h.Layer == BoardCut.Pin));
        Assert.True(design.Gang.BoardWidthMm > design.Gang.BoardLengthMm);
        Assert.All(cut.Holes.Where(h => h.Layer == BoardCut.Pin), h => Assert.Equal(design.Gang.BoardLengthMm / 2, h.At.X, 1e-9));
        Assert.All(cut.Holes.Where(h => h.Layer == BoardCut.Air), h => Assert.Equal(4 - 0.2, h.DiameterMm, 1e-9));
        Assert.Equal(
            Enumerable.Range(1, cavities).Select(n => $"{n}").Append("FEED +X  NAP +X").Append("gang die A REV A 2026-12-01").Order(),
            cut.Labels.Select(l => l.Text).Order());
        Assert.True(cut.Lines.Count(l => l.Layer == BoardCut.Engrave) > cavities);
    }

    // The page is the board and its rim, in points of 1/72 inch.
    [Fact]
    public void The_pages_are_as_large_as_the_board()
    {
        DieDesign design = Design(DieCases.PanelLay, Laser);
        FeltNest.Drawing.Sheet sheet = BoardCutSheet.Draw(design, BoardEngraving.Of(design.Cut!));
        string pdf = Encoding.Latin1.GetString(PdfWriter.Write([sheet]));

        Assert.Equal(Math.Max(220, design.Gang.BoardLengthMm + 20), sheet.WidthMm, 1e-9);
        Assert.Contains(
            InvariantText.Invariant(
                $"/MediaBox [0 0 {Math.Round(sheet.WidthMm * 72 / 25.4, 3)} {Math.Round(sheet.HeightMm * 72 / 25.4, 3)}]"), pdf);
    }

    // Foam of the pieces' own area, on sheets they go on, no piece on another.
    [Fact]
    public void Ejection_is_nested_on_its_sheets()
    {
        DieDesign design = Design(DieCases.PanelLay, Laser);
        IReadOnlyList<(int Sheet, IReadOnlyList<IReadOnlyList<Point2>> Rings)> nest = EjectionNest.Of(design, 300, 200);
        double placed = nest.Sum(p => p.Rings.Sum(Area));

        Assert.Equal(design.Ejection.Rings.Sum(Area), placed, 1e-6 * placed);
        Assert.All(
            nest,
            p => Assert.All(p.Rings[0], q => Assert.True(q.X >= 3 - 1e-6 && q.Y >= 3 - 1e-6 && q.X <= 297 + 1e-6 && q.Y <= 197 + 1e-6)));
        foreach (((int Sheet, IReadOnlyList<IReadOnlyList<Point2>> Rings) a, int i) in nest.Select((p, i) => (p, i)))
        {
            Assert.DoesNotContain(nest.Skip(i + 1), b => b.Sheet == a.Sheet && Boxes(a.Rings[0], b.Rings[0]));
        }
    }

    [Theory]
    [InlineData("\"kerfMm\": 0.8", "is no narrower than a slot")]
    [InlineData("\"kerfMm\": 0.2, \"bedLengthMm\": 500", "are given together")]
    public void A_laser_that_cannot_be_is_refused(string laser, string told)
    {
        string order = File.ReadAllText(FeltNest.Tests.Files.RepositoryFile.PathOf("shapes", "demo", "dies", "gang-die.json"));
        int at = order.IndexOf("\"laser\": {", StringComparison.Ordinal);
        string changed = order[..at] + $"\"laser\": {{ {laser} " + order[order.IndexOf('}', at)..];

        Assert.Contains(
            told,
            Assert.Throws<InputException>(() => DieOrderReader.Read(InputText.Of("order.json", Encoding.UTF8.GetBytes(changed)))).Message);
    }

    private static BoardLaser Laser => new()
    {
        KerfMm = 0.2,
        SlotMm = 0.7,
        PinMm = 8,
        ScrewMm = 5,
        AirHoleMm = 4,
        AirHoles = 3,
        DowelMm = 6,
        LettersMm = 4,
    };

    private static DieDesign Design(RollLayout layout, BoardLaser laser, bool dieView = false) => DieDesigner.Run(
        new GangRequest(
            layout, 0,
            DieCases.Order with
            {
                DieView = dieView,
                Rule = DieCases.Order.Rule with { Bevel = RuleBevel.SideWaste },
                Board = DieCases.Order.Board with { Laser = laser },
                Title = DieCases.Order.Title with { DateOfIssue = "2026-12-01" },
            },
            null, null),
        TestContext.Current.CancellationToken);

    private static string Drawn(DieDesign design) => Encoding.ASCII.GetString(BoardCutDxf.Board(design, BoardEngraving.Of(design.Cut!)));

    private static List<string> Violations(DieDesign design, string drawn, Func<StatedLaser, StatedLaser>? change = null)
    {
        StatedDie die = DieReader.Read(InputText.Of("die.json", DieWriter.Write(design))).Die;
        List<string> violations = [];
        BoardCutCheck.Run(
            die with { Laser = change is null ? die.Laser : change(die.Laser!) },
            BoardCutReader.Read(InputText.Of("board-cut.dxf", Encoding.ASCII.GetBytes(drawn))), violations);
        return violations;
    }

    // The first thing on a layer moved to the first corner of a slot.
    private static string OntoSlot(string drawn, string kind, string layer)
    {
        (int from, int to) = Place(drawn, "VERTEX", "SLOT");
        (int at, int end) = Place(drawn, kind, layer);
        return drawn[..at] + drawn[from..to] + drawn[end..];
    }

    // Where the groups 10 and 20 of the first thing on a layer stand.
    private static (int From, int To) Place(string drawn, string kind, string layer)
    {
        int at = drawn.IndexOf($"  0\r\n{kind}\r\n  8\r\n{layer}\r\n", StringComparison.Ordinal);
        int from = drawn.IndexOf(" 10\r\n", at, StringComparison.Ordinal);
        return (from, drawn.IndexOf(" 30\r\n", from, StringComparison.Ordinal));
    }

    // The first polyline of a layer left out.
    private static string Without(string drawn, string layer)
    {
        int at = drawn.IndexOf($"  0\r\nPOLYLINE\r\n  8\r\n{layer}", StringComparison.Ordinal);
        int end = drawn.IndexOf("  0\r\nPOLYLINE", at + 5, StringComparison.Ordinal);
        return drawn[..at] + drawn[end..];
    }

    private static double Width(ArcOutline band) => (band.Perimeter - Math.Sqrt((band.Perimeter * band.Perimeter) - (16 * band.Area))) / 4;

    private static double Area(IReadOnlyList<Point2> ring) =>
        Enumerable.Range(0, ring.Count).Sum(i => ring[i].Cross(ring[(i + 1) % ring.Count])) / 2;

    private static bool Boxes(IReadOnlyList<Point2> a, IReadOnlyList<Point2> b) =>
        a.Min(p => p.X) < b.Max(p => p.X) - 1e-6
        && b.Min(p => p.X) < a.Max(p => p.X) - 1e-6
        && a.Min(p => p.Y) < b.Max(p => p.Y) - 1e-6
        && b.Min(p => p.Y) < a.Max(p => p.Y) - 1e-6;
}
