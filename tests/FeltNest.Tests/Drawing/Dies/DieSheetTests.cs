using System.Diagnostics;
using FeltNest.Die;
using FeltNest.Die.Gang;
using FeltNest.Die.Proof;
using FeltNest.Drawing;
using FeltNest.Drawing.Lettering;
using FeltNest.Drawing.Sheets.Dies;
using FeltNest.Drawing.Writers;
using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Rolls;
using FeltNest.Tests.Die;
using FeltNest.Tests.Die.Proof;
using FeltNest.Tests.Files;
using Xunit;

namespace FeltNest.Tests.Drawing.Dies;

public sealed class DieSheetTests : IDisposable
{
    private static readonly System.Runtime.CompilerServices.ConditionalWeakTable<DieDesign, Dictionary<string, Sheet>> Drawn = [];

    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    public static TheoryData<string> Names => [.. Sheets(DieCases.Panels).Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void No_lettering_overlaps_another_or_leaves_the_sheet(string name)
    {
        foreach (DieDesign design in new[] { DieCases.Panels, Long, Plates, TwoParts, Bricks, Wide, Weak })
        {
            Sheet sheet = Sheets(design)[name];
            (TextMark Text, Box Box)[] boxes = [.. Texts(sheet.Marks).Select(t => (t, Extent(t)))];
            Assert.All(
                boxes,
                b => Assert.True(
                    b.Box.MinX >= 0 && b.Box.MinY >= 0 && b.Box.MaxX <= sheet.WidthMm && b.Box.MaxY <= sheet.HeightMm, b.Text.Text));
            for (int i = 0; i < boxes.Length; i++)
            {
                for (int k = i + 1; k < boxes.Length; k++)
                {
                    Box a = boxes[i].Box;
                    Box b = boxes[k].Box;
                    bool apart = a.MaxX <= b.MinX || b.MaxX <= a.MinX || a.MaxY <= b.MinY || b.MaxY <= a.MinY;
                    Assert.True(apart, $"{name}: '{boxes[i].Text.Text}' and '{boxes[k].Text.Text}' overlap");
                }
            }
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_sheet_says_its_cautions_and_no_letter_is_below_two_and_a_half_millimetres(string name)
    {
        foreach (DieDesign design in new[] { Long, Plates, TwoParts, Bricks, Wide })
        {
            Assert.All(Texts(Sheets(design)[name].Marks), t => Assert.True(t.HeightMm >= 2.5, t.Text));
        }

        Sheet sheet = Sheets(DieCases.Panels)[name];
        TextMark[] texts = [.. Texts(sheet.Marks)];

        Assert.All(texts, t => Assert.True(t.HeightMm >= 2.5, t.Text));
        string all = string.Join(' ', texts.Select(t => t.Text.Trim()));
        string wanted = name is "die"
            ? SafetyWords.Block[0]
            : name is "measured"
            ? "qualified people, local codes and the machine maker"
            : SafetyWords.Brief[0];
        Assert.Contains(wanted, all, StringComparison.Ordinal);
    }

    [Fact]
    public void A_force_that_nobody_measured_is_said_on_the_gang_sheet_and_passes_no_press()
    {
        string words = string.Join('\n', Texts(GangSheet.Draw(DieCases.Panels, 1, 5).Marks).Select(t => t.Text));
        Assert.Contains("FORCE NOT MEASURED: do not set the press from", words, StringComparison.Ordinal);
        Assert.Contains("not assessed", words, StringComparison.Ordinal);
        Assert.Null(DieCases.Panels.PressSharePercent);
    }

    [Fact]
    public void A_press_below_even_the_placeholder_is_warned_of_in_a_frame_across_both_sheets()
    {
        DieDesign weak = DieDesigner.Run(
            DieCases.Panels.Request with { Press = DieCases.Beam with { RatedForceKn = 50 } }, TestContext.Current.CancellationToken);
        Assert.NotNull(weak.DoNotRun);
        Assert.Contains("DO NOT RUN", weak.Notes[0].Text, StringComparison.Ordinal);
        foreach (Sheet sheet in new[] { GangSheet.Draw(weak, 1, 5), OrderSheet.Draw(weak, 5, 5) })
        {
            string large = string.Join(' ', Texts(sheet.Marks).Where(t => t.HeightMm >= 3.5).Select(t => t.Text.Trim()));
            Assert.Contains(weak.DoNotRun, large, StringComparison.Ordinal);
            Assert.Contains(sheet.Marks.OfType<PathMark>(), p => p.Pen?.WidthMm == 1);
        }

        // A press that holds the placeholder is not warned of, and a measured force was refused before.
        Assert.Null(
            DieDesigner.Run(
                DieCases.Panels.Request with { Press = DieCases.Beam with { RatedForceKn = 5000 } },
                TestContext.Current.CancellationToken).DoNotRun);
        Assert.Null((weak with { Request = weak.Request with { Order = DieCases.Measured(20) } }).DoNotRun);
    }

    [Fact]
    public void The_template_says_what_accepts_and_what_rejects()
    {
        string words = string.Join(' ', Texts(TemplateSheet.Draw(DieCases.Panels, 0, 4, 5).Marks).Select(t => t.Text.Trim()));

        Assert.Contains(
            "ACCEPT: all of its edge lies between the two full lines. REJECT: its edge passes the outer line or the inner line anywhere.",
            words, StringComparison.Ordinal);
        Assert.DoesNotContain("o-go", words, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void X_runs_to_the_right_in_arrow_table_and_drawing_alike(bool dieView)
    {
        DieDesign design = DieDesigner.Run(new GangRequest(
            DieCases.TwoParts, 0, DieCases.Order with { DieView = dieView, Nap = NapDirection.Forward }, null, null),
            TestContext.Current.CancellationToken);
        Sheet sheet = GangSheet.Draw(design, 1, 5);
        TextMark[] texts = [.. Texts(sheet.Marks)];

        // Cavity 1 on the drawing stands right of cavity 2 where its x in the table is larger.
        TextMark One(string name) => texts.First(t => t.Text == name && t.At.X < sheet.WidthMm - 200);
        double[] x =
        [
            .. new[] { 0, 1 }.Select(i => design.Gang.Cavities[i].Placed.XMm).Select(at => dieView ? design.Gang.BoardLengthMm - at : at),
        ];
        Assert.Contains(texts, t => t.Text == x[0].ToString("0.000", System.Globalization.CultureInfo.InvariantCulture));
        Assert.Equal(x[0] < x[1], One("1a").At.X < One("2b").At.X);

        // The heads of the arrows of x and of the feed: their tips lie right of their bases, or left.
        Assert.Equal(dieView ? [1, -1] : [1], Heads(sheet).Take(dieView ? 2 : 1));
        Assert.Contains(texts, t => t.Text == (dieView ? "toward -x, with the feed" : "toward +x, with the feed"));
        string dxf = System.Text.Encoding.ASCII.GetString(FeltNest.Files.Dies.DieDxf.Gang(design));
        Assert.Contains(
            $"x right, y up, from the board's lower left corner as drawn; feed and warp toward {(dieView ? '-' : '+')}x; nap: toward "
                + $"{(dieView ? '-' : '+')}x", dxf, StringComparison.Ordinal);
        Assert.DoesNotContain("runs to the left", dxf, StringComparison.Ordinal);

        // Arrows stand in one row, 31 mm above the sheet's space.
        static int[] Heads(Sheet sheet) => [.. sheet.Marks.OfType<PathMark>().Where(p => p.Fill is not null).SelectMany(p => p.Chains)
            .Where(c => c.Vertices.Count == 3 && Math.Abs(c.Vertices.Average(v => v.Y) - ArrowRow(sheet)) < 0.5)
            .OrderBy(c => c.Vertices[0].X).Select(c => Math.Sign(Tip(c).X - c.Vertices.Average(v => v.X)))];

        static double ArrowRow(Sheet sheet) =>
            Texts(sheet.Marks).First(t => t.Text.EndsWith("feed, warp", StringComparison.Ordinal)).At.Y + 1.2;

        static Point2 Tip(Chain head) => head.Vertices.Select(v => v.Point).MaxBy(p => Math.Abs(p.X - head.Vertices.Average(v => v.X)));
    }

    [Fact]
    public void The_same_sheets_give_the_same_bytes_and_the_svg_is_as_wide_as_the_drawing()
    {
        Sheet[] sheets = [.. Sheets(DieCases.Panels).Values];

        Assert.Equal(PdfWriter.Write(sheets), PdfWriter.Write(sheets));
        Assert.DoesNotContain("Date", System.Text.Encoding.Latin1.GetString(PdfWriter.Write(sheets)), StringComparison.Ordinal);
        Assert.All(
            sheets,
            s => Assert.Contains(
                FormattableString.Invariant($"width=\"{s.WidthMm}mm\""), System.Text.Encoding.UTF8.GetString(SvgWriter.Write(s)),
                StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("panels")]
    [InlineData("plates")]
    public void The_tolerance_of_the_edge_stands_in_a_frame_whose_leader_ends_on_the_edge(string name)
    {
        DieDesign design = name == "panels" ? DieCases.Panels : Plates;
        Sheet sheet = Sheets(design)["cavity"];
        PathMark[] paths = [.. sheet.Marks.OfType<PathMark>()];

        // The symbol is half a circle: an open arc of half a turn, drawn by every writer as a line.
        Chain symbol =
            Assert.Single(paths.SelectMany(p => p.Chains), c => c is { Closed: false, Vertices.Count: 2 } && c.Vertices[0].Turn == Math.PI);
        Point2 middle = (symbol.Vertices[0].Point + symbol.Vertices[1].Point) * 0.5;
        Point2 top = middle + new Point2(0, (symbol.Vertices[0].Point - middle).Length);
        Assert.True(top.Y > middle.Y);
        TextMark value = Assert.Single(Texts(sheet.Marks), t => t.Text == "0.5" && t.HeightMm >= 3.5);
        Assert.Equal(middle.Y, value.At.Y + (value.HeightMm / 2), 1.5);
        Assert.InRange(value.At.X - middle.X, 4, 15);

        // The leader: an open line of three places, its first on the outline, which is the one widely drawn closed line of arcs.
        Chain outline = Assert.Single(
            paths.Where(p => p.Pen?.WidthMm == 0.5 && p.Fill is null).SelectMany(p => p.Chains),
            c => c.Closed
                && c.Vertices.Count == design.Edges[0]!.Pieces.Count
                && c.Vertices.All(v => v.X < sheet.WidthMm - 200 && v.Y > 60));
        Point2 tip = Assert.Single(paths.SelectMany(p => p.Chains), c => c is { Closed: false, Vertices.Count: 3 }).Vertices[0].Point;
        IReadOnlyList<Point2> flat = outline.Flattened(1e-3);
        Assert.Equal(0, Enumerable.Range(0, flat.Count).Min(i => EdgePieceDistance(flat[i], flat[(i + 1) % flat.Count], tip)), 0.01);

        string svg = System.Text.Encoding.UTF8.GetString(SvgWriter.Write(sheet));
        Assert.DoesNotContain("\u2312", svg, StringComparison.Ordinal);
    }

    [Fact]
    public void Pitches_stand_on_the_gang_sheet_as_dimension_lines_true_to_scale()
    {
        // Two rows of plates, repeat 44, three repeats a feed; the same die with a single row; a lying and a standing board.
        Assert.Superset(
            new HashSet<string> { "44.000", "feed 132.000", "24.000" },
            Words(
                DieDesigner.Run(
                    new GangRequest(DieCases.Plates, 0, DieCases.Order, DieCases.Press(190, 200), null),
                    TestContext.Current.CancellationToken)));
        Assert.Contains(
            "feed = repeat 78.000",
            Words(
                DieDesigner.Run(new GangRequest(DieCases.TwoParts, 0, DieCases.Order, null, null), TestContext.Current.CancellationToken)));
        Assert.Contains("3 x 24.000 (= 72.000)", Words(Rows(25, 49, 73, 97)));
        Assert.Superset(
            new HashSet<string> { "24.000", "26.000", "(100.000)", "24.000, 26.000 mm in turn" }, Words(Rows(25, 49, 75, 99, 125)));
        Assert.Contains("24.000, 26.000, 27.000 mm", Words(Rows(25, 49, 75, 102)));
        Assert.Contains("4 unlike ones: see y below", Words(Rows(25, 49, 75, 102, 130)));

        // One plate of 40 x 20 a row, a repeat of 44, one strike of all of them.
        static DieDesign Rows(params double[] y)
        {
            RollLayout lay = DieCases.Of(44, [.. y.Select(at => new PlacedPanel { Part = 0, XMm = 22, YMm = at, AngleDeg = 0 })]);
            return DieDesigner.Run(new GangRequest(lay, 0, DieCases.Order, DieCases.Press(100, 300), y.Length));
        }

        static HashSet<string> Words(DieDesign design) => [.. Texts(GangSheet.Draw(design, 1, 5).Marks).Select(t => t.Text)];
    }

    [Theory]
    [InlineData("die")]
    [InlineData("cavity")]
    public void No_dimension_or_leader_runs_through_lettering(string name)
    {
        foreach (DieDesign design in new[] { DieCases.Panels, Long, Plates, TwoParts, Bricks, Wide, Weak })
        {
            Sheet sheet = Sheets(design)[name];
            (TextMark Text, Box Box)[] boxes = [.. Texts(sheet.Marks).Select(t => (t, Extent(t)))];
            foreach (Chain chain in sheet.Marks
                .OfType<PathMark>()
                .Where(p => p.Fill is null && p.Pen?.WidthMm == 0.25)
                .SelectMany(p => p.Chains)
                .Where(c => !c.Closed))
            {
                foreach ((ArcVertex a, ArcVertex b) in chain.Vertices.Zip(chain.Vertices.Skip(1)))
                {
                    Assert.All(
                        boxes,
                        t => Assert.False(
                            Crosses(a.Point, b.Point, t.Box),
                            FormattableString.Invariant(
                                $"{name}: a line at ({a.X:0.0}, {a.Y:0.0}) to ({b.X:0.0}, {b.Y:0.0}) runs through '{t.Text.Text}'")));
                }
            }
        }
    }

    // Whether a line passes through a box: looked at in small steps.
    private static bool Crosses(Point2 a, Point2 b, Box box) =>
        Math.Max(a.X, b.X) > box.MinX && Math.Min(a.X, b.X) < box.MaxX && Math.Max(a.Y, b.Y) > box.MinY && Math.Min(a.Y, b.Y) < box.MaxY
        && Enumerable.Range(0, 2001)
            .Select(k => a + ((b - a) * (k / 2000.0)))
            .Any(p => p.X > box.MinX && p.X < box.MaxX && p.Y > box.MinY && p.Y < box.MaxY);

    [Fact]
    public void The_nap_is_drawn_where_it_is_known_and_said_to_be_unknown_where_not()
    {
        DieDesign known = With(NapDirection.Forward);
        DieDesign against = With(NapDirection.Backward);
        DieDesign unknown = With(null);

        Assert.Contains(
            Texts(GangSheet.Draw(known, 1, 5).Marks),
            t => t.Text == "nap" && t.HeightMm >= 2.5 && t.Colour == FeltNest.Drawing.Parts.Ink.Dark);
        Assert.Contains(Texts(GangSheet.Draw(known, 1, 5).Marks), t => t.Text == "toward +x, with the feed");
        Assert.Contains(Texts(GangSheet.Draw(against, 1, 5).Marks), t => t.Text == "toward -x, against the feed");
        Assert.Contains(Texts(GangSheet.Draw(unknown, 1, 5).Marks), t => t.Text == "nap: not stated");
        Assert.DoesNotContain(
            Texts(GangSheet.Draw(unknown, 1, 5).Marks), t => t.Text == "nap" && t.Colour == FeltNest.Drawing.Parts.Ink.Dark);

        static DieDesign With(NapDirection? nap) =>
            DieCases.Panels with { Request = DieCases.Panels.Request with { Order = DieCases.Order with { Nap = nap } } };
    }

    private static double EdgePieceDistance(Point2 a, Point2 b, Point2 p) =>
        FeltNest.Die.Edge.EdgePiece.Of(new ArcVertex(a.X, a.Y, 0), b).DistanceTo(p);

    [Fact]
    public void The_check_bar_of_the_printed_page_measures_a_hundred_millimetres()
    {
        const int dpi = 508;
        Sheet sheet = CavitySheet.Draw(DieCases.Panels, 0, 2, 5);
        Box bar = sheet.Marks
            .OfType<PathMark>()
            .SelectMany(p => p.Chains)
            .Where(c => c.Vertices.Count == 4)
            .Select(c => new Box
            {
                MinX = c.Vertices.Min(v => v.X),
                MinY = c.Vertices.Min(v => v.Y),
                MaxX = c.Vertices.Max(v => v.X),
                MaxY = c.Vertices.Max(v => v.Y),
            })
            .Single(b => Math.Abs(b.Width - 100) < 1e-9);
        File.WriteAllBytes(folder.Path("sheet.pdf"), PdfWriter.Write([sheet]));
        try
        {
            using Process process =
                Process.Start(new ProcessStartInfo("pdftoppm", ["-r", $"{dpi}", "-gray", folder.Path("sheet.pdf"), folder.Path("page")]))!;
            process.WaitForExit();
            Assert.Equal(0, process.ExitCode);
        }
        catch (System.ComponentModel.Win32Exception)
        {
            Assert.Skip("pdftoppm (poppler-utils) is missing");
        }

        byte[] page = File.ReadAllBytes(Directory.GetFiles(folder.Root, "page*.pgm").Single());
        (int wide, int high, int start) = Header(page);
        Assert.Equal(sheet.WidthMm / 25.4 * dpi, wide, 1.0);
        int row = high - (int)Math.Round((bar.MinY + (bar.Height / 2)) / 25.4 * dpi);
        int from = (int)((bar.MinX - 3) / 25.4 * dpi);
        int to = (int)((bar.MaxX + 1.5) / 25.4 * dpi);
        int[] dark = [.. Enumerable.Range(from, to - from).Where(x => page[start + (row * wide) + x] < 128)];

        // The line round the bar is 0.25 mm wide: half of it stands outside at each end.
        Assert.Equal(100, ((dark[^1] - dark[0] + 1) * 25.4 / dpi) - 0.25, 0.1);
    }

    private static DieDesign Long { get; } = DieDesigner.Run(
        new GangRequest(
            DieCases.PanelLay, 0,
            DieCases.Order with { DieView = true, ThirdAngle = true, Name = "a die with a rather long name to print" },
            DieCases.Press(3000, 1000), 40));

    private static DieDesign Weak { get; } =
        DieDesigner.Run(DieCases.Panels.Request with { Press = DieCases.Beam with { RatedForceKn = 50 } });

    private static DieDesign TwoParts { get; } =
        DieDesigner.Run(new GangRequest(DieCases.TwoParts, 0, DieCases.Order, DieCases.Press(300, 200), null));

    private static DieDesign Bricks { get; } = DieCases.Common(DieCases.Bricks);

    // A board across three metres of felt, which stands on the sheet, seen from the die's side.
    private static DieDesign Wide { get; } = DieDesigner.Run(new GangRequest(
        DieCases.PanelLay, 0, DieCases.Order with { DieView = true, Nap = NapDirection.Backward }, DieCases.Press(400, 3200), null));

    private static DieDesign Plates { get; } =
        DieDesigner.Run(new GangRequest(DieCases.Plates, 0, DieCases.Measured(12), DieCases.Press(200, 70), null));

    private static Dictionary<string, Sheet> Sheets(DieDesign design) => Drawn.GetValue(design, Draw);

    private static Dictionary<string, Sheet> Draw(DieDesign design)
    {
        MeasuredPanel measured = PanelFitter.Fit(
            design.Request.Layout.Parts[0].Outline,
            [.. Enumerable.Range(0, 60).Select(k => At(design.Request.Layout.Parts[0].Outline, k / 60.0))],
            new ProfileRule { ToleranceMm = 1.2 });
        DieLife life = DieLife.Of(
            "D", "A", 1.2,
            [
                new()
                {
                    Date = "2026-01-02",
                    Strikes = 0,
                    Cavity = 1,
                    Ply = "top",
                    OffMm = 0.1,
                    WorstMm = 0.2,
                }, new()
                {
                    Date = "2026-02-02",
                    Strikes = 9000,
                    Cavity = 1,
                    Ply = "top",
                    OffMm = 0.1,
                    WorstMm = 0.3,
                },
                new()
                {
                    Date = "2026-02-02",
                    Strikes = 9000,
                    Cavity = 2,
                    Ply = "bottom",
                    OffMm = 0.1,
                    WorstMm = 0.7,
                },
            ], 60_000, "D revision B");
        int last = design.Parts[^1];
        return new()
        {
            ["die"] = GangSheet.Draw(design, 1, 5),
            ["cavity"] = CavitySheet.Draw(design, last, 2, 5),
            ["section"] = SectionSheet.Draw(design, 3, 5),
            ["template"] = TemplateSheet.Draw(design, last, 4, 5),
            ["order"] = OrderSheet.Draw(design, 5, 5),
            [
                "measured"] = MeasuredSheet.Draw(
                    "D", [.. design.Request.Layout.Parts[0].Outline.Points.Select(p => new ArcVertex(p.X, p.Y, 0))], measured),
            ["life"] = LifeSheet.Draw(life),
            ["made"] = MadeDieSheet.Draw(
                MadeDieJudge.Of(
                    MadeDieCases.Panels, MadeDieCases.Rings(MadeDieCases.Panels, (_, p) => p), new ProfileRule { ToleranceMm = 0.5 }, 0.4),
                MadeDieCases.Panels),
        };
    }

    private static Point2 At(Outline outline, double share)
    {
        double left = share * outline.Perimeter;
        int i = 0;
        Point2 Side(int k) => outline.Points[(k + 1) % outline.Points.Count] - outline.Points[k];
        for (; left > Side(i).Length; i++)
        {
            left -= Side(i).Length;
        }

        return outline.Points[i] + (Side(i) * (left / Side(i).Length));
    }

    private static IEnumerable<TextMark> Texts(IEnumerable<Mark> marks) => marks.SelectMany(m => m switch
    {
        TextMark { Text.Length: > 0 } text => [text],
        GroupMark group => Texts(group.Marks),
        _ => Enumerable.Empty<TextMark>(),
    });

    // Capitals from the base line up; upright lines of text are turned by a quarter.
    private static Box Extent(TextMark text)
    {
        double width = StrokeFont.Width(text.Text.Trim(), text.HeightMm);
        double start = text.Anchor switch { TextAnchor.Start => 0, TextAnchor.Middle => -width / 2, _ => -width };
        return text.Angle == 0
            ? new Box
            {
                MinX = text.At.X + start,
                MinY = text.At.Y,
                MaxX = text.At.X + start + width,
                MaxY = text.At.Y + text.HeightMm,
            }
            : new Box
            {
                MinX = text.At.X - text.HeightMm,
                MinY = text.At.Y + start,
                MaxX = text.At.X,
                MaxY = text.At.Y + start + width,
            };
    }

    // Width, height and the first byte of the pixels of a grey picture (netpbm's P5).
    private static (int Wide, int High, int Start) Header(byte[] page)
    {
        int at = 0;
        int[] numbers = new int[3];
        for (int n = -1; n < 3; at++)
        {
            int from = at;
            while (!char.IsWhiteSpace((char)page[at]))
            {
                at++;
            }

            if (n >= 0)
            {
                numbers[
                    n] = int.Parse(
                        System.Text.Encoding.ASCII.GetString(page, from, at - from), System.Globalization.CultureInfo.InvariantCulture);
            }

            n++;
        }

        return (numbers[0], numbers[1], at);
    }
}
