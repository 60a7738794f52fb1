using System.Globalization;
using System.Xml.Linq;
using FeltNest.Ball;
using FeltNest.Ball.Rules;
using FeltNest.Ball.Tolerance;
using FeltNest.Drawing;
using FeltNest.Drawing.Lettering;
using FeltNest.Drawing.Sheets;
using FeltNest.Drawing.Writers;
using FeltNest.Tests.Files;
using Xunit;

namespace FeltNest.Tests.Drawing;

public sealed class SheetTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    [Fact]
    public void The_panel_sheet_carries_what_the_parts_may_be_off_and_the_verdict_on_it()
    {
        // 60 + 2 (0.1 + 3) = 66.2 mm is within 65.4 to 68.6; 1.5 mm off the core leads down to 64.7.
        BallSpec loose = SamplePanel.Ball with
        {
            RuleType = RuleType.Type2,
            Core = new CoreSpec { OuterDiameterMm = 60, MassG = 45 },
            Tolerances = new ToleranceSpec
            {
                CoreDiameterMm = 1.5,
                CoreMassG = 0,
                CementThicknessMm = 0,
                CementMassPerAreaGsm = 0,
                FeltFinishedThicknessMm = 0,
                FeltMassPerAreaGsm = 0,
            },
        };
        RuleVerdict worst =
            ToleranceCheck.Of(loose, MassBudget.Of(loose, SamplePanel.Panel.AreaMm2), SamplePanel.Panel.AreaMm2)[0].WorstCaseVerdict;
        string[] texts = Texts(Written(PanelSheet.Draw(loose, SamplePanel.Panel)));

        Assert.True(worst is RuleVerdict.Outside or RuleVerdict.OutsideFromMemory);
        int at = Array.FindIndex(texts, text => text.TrimStart() == "\u00B1 1.50 mm, worst case");
        Assert.True(at > 0);
        Assert.StartsWith("outside", texts[at + 1], StringComparison.Ordinal);
        at = Array.IndexOf(texts, "finished diameter 66.2 mm, nominal");
        Assert.StartsWith("within", texts[at + 1], StringComparison.Ordinal);
    }

    [Fact]
    public void The_panel_is_drawn_true_to_size()
    {
        XElement root = Written(PanelSheet.Draw(SamplePanel.Ball, SamplePanel.Panel));

        Assert.EndsWith("mm", root.Attribute("width")!.Value, StringComparison.Ordinal);
        Assert.Equal(
            $"0 0 {root.Attribute("width")!.Value[..^2]} {root.Attribute("height")!.Value[..^2]}", root.Attribute("viewBox")!.Value);
        // The cut outline is two straight sides of 30 mm and two half-circles of radius 5 mm: x reaches 30 between vertices, y 10.
        double[] numbers = Numbers(Group(root, "outline").Element(Svg + "path")!);
        Assert.Contains("A5 5 0 0 0", Group(root, "outline").Element(Svg + "path")!.Attribute("d")!.Value, StringComparison.Ordinal);
        Assert.Equal(30, numbers[2] - numbers[0], 9);
    }

    [Fact]
    public void Panel_sheets_are_at_least_as_wide_as_an_upright_a4()
    {
        Sheet small = PanelSheet.Draw(SamplePanel.Ball, SamplePanel.Panel);

        Assert.Equal(210, small.WidthMm);
    }

    [Fact]
    public void The_parts_of_the_panel_sheet_stand_below_each_other()
    {
        string[] parts = ["title", "greater-strain", "lesser-strain", "strain-bar", "risk", "layers", "ball", "figures", "trial"];
        GroupMark[] groups = [.. PanelSheet.Draw(SamplePanel.Ball, SamplePanel.Held).Marks.OfType<GroupMark>()];
        GroupMark[] inOrder = [.. parts.Select(part => groups.Single(group => group.Id == part))];
        double[][] heights = [.. inOrder.Select(group => All([group]).OfType<TextMark>().Select(text => text.At.Y).ToArray())];

        Assert.All(heights.Zip(heights.Skip(1)), pair => Assert.True(pair.First.Min() > pair.Second.Max() + 2.5));
    }

    [Fact]
    public void The_maps_of_the_panel_sheet_name_the_layer_they_show()
    {
        // Core 20, cement 0.1, felt 3: the sample says 11.6 mm for the neutral layer, half-way. From +1 to +5 % there, the nap face is
        // stretched by the factor 1 + 1.5/11.6, the glue face by 1 - 1.5/11.6.
        string[] texts = Texts(Written(PanelSheet.Draw(SamplePanel.Ball, SamplePanel.Panel)));

        Assert.Contains("glue face: -12.1 to -8.6 %", texts);
        Assert.Contains("middle: +1.0 to +5.0 %", texts);
        Assert.Contains("nap face: +14.1 to +18.6 %", texts);
    }

    [Fact]
    public void The_risk_of_puckers_is_drawn_where_the_limit_is_passed()
    {
        BallSpec strict = SamplePanel.Ball with { Felt = SamplePanel.Ball.Felt with { MaxCompressionPercent = 5 } };
        BallSpec free = SamplePanel.Ball with { Felt = SamplePanel.Ball.Felt with { MaxEdgeCompressionPercent = 100 } };
        XElement over = Group(Written(PanelSheet.Draw(strict, SamplePanel.Panel)), "risk");
        XElement kept = Group(Written(PanelSheet.Draw(SamplePanel.Ball, SamplePanel.Panel)), "risk");
        XElement none = Group(Written(PanelSheet.Draw(free, SamplePanel.Panel)), "risk");

        // The sample reaches 7 % on its edge: above 5, below half of 15. The key has four boxes; the edge is a line, the worst place a
        // square.
        Assert.Equal(4 + 2 + 4, Drawn(over));
        Assert.Equal(1 + 2 + 4, Drawn(kept));
        Assert.Equal(0, Drawn(none));
        Assert.Contains("Risk of puckers: compression of the neutral layer against 5 %; most at the square", Texts(over));
        Assert.Contains("Risk of puckers: the ball file gives no limit of compression", Texts(none));
    }

    [Fact]
    public void The_panel_sheet_says_its_dimensions_strains_and_how_well_the_rules_are_known()
    {
        string[] texts = Texts(Written(PanelSheet.Draw(SamplePanel.Ball, SamplePanel.Panel)));

        Assert.Contains("40.00", texts);
        Assert.Contains("10.00", texts);
        Assert.Contains("Flat panel: Tiny <ball> & co", texts);
        Assert.Contains("warp; panel laid at 30\u00B0 to it", texts);
        Assert.Contains("Greater principal strain of the neutral layer: +1.0 % (square) to +5.0 % (ring)", texts);
        Assert.Contains("Lesser principal strain of the neutral layer, across the greater one: -7.0 % (square) to +2.0 % (ring)", texts);
        Assert.Contains("outside (from memory)", texts);
        Assert.Contains("check the current rule book", texts);
        Assert.Contains("100 mm", texts);
    }

    [Fact]
    public void The_layout_sheet_shows_one_repeat_in_colour_and_its_copies_pale()
    {
        XElement panels = Group(Written(LayoutSheet.Draw(SampleLayout.OneRepeat, SampleLayout.Yields)), "panels");
        string[] uses = [.. panels.Elements(Svg + "use").Select(use => use.Attribute("href")!.Value)];

        Assert.Equal(2, uses.Count(href => href == "#panel-0-0"));
        Assert.True(uses.Count(href => href == "#copy-0") >= 4);
        // The repeat is drawn over its copies.
        Assert.Equal(["#panel-0-0", "#panel-0-0"], uses[^2..]);
    }

    [Fact]
    public void Panels_stand_a_whole_repeat_apart_and_the_gap_is_drawn_to_scale()
    {
        XElement panels = Group(Written(LayoutSheet.Draw(SampleLayout.OneRepeat, SampleLayout.Yields)), "panels");
        (double X, double Y, bool Turned)[] places =
        [
            .. panels.Elements(Svg + "use").Select(use => Place(use.Attribute("transform")!.Value)),
        ];

        double[] lower = [.. places.Where(p => !p.Turned).Select(p => p.X).Order()];
        Assert.All(lower.Zip(lower.Skip(1)), pair => Assert.Equal(50, pair.Second - pair.First, 2));
        // Rows 15 mm apart at scale 1:1; y points down in SVG, so the upper row has the smaller y.
        Assert.Equal(15, places.First(p => !p.Turned).Y - places.First(p => p.Turned).Y, 3);
    }

    [Fact]
    public void Pairing_groups_get_colours_of_their_own()
    {
        XElement root = Written(LayoutSheet.Draw(SampleLayout.TwoBands, SampleLayout.Yields));
        string[] uses = [.. Group(root, "panels").Elements(Svg + "use").Select(use => use.Attribute("href")!.Value)];

        Assert.Equal(1, uses.Count(href => href == "#panel-0-0"));
        Assert.Equal(1, uses.Count(href => href == "#panel-0-1"));
        Assert.Contains("tilt of pairing group 2 (red-brown)", Texts(root));
    }

    [Fact]
    public void The_layout_sheet_accounts_for_all_the_felt()
    {
        string[] texts = Texts(Written(LayoutSheet.Draw(SampleLayout.OneRepeat, SampleLayout.Yields)));

        foreach (string wanted in new[]
        {
            "25.24 %",
            "16.43 %",
            "8.33 %",
            "50.00 %",
            "74.76 %",
            "40.00",
            "20.00",
            "50.00 m",
            "3.00 m\u00B2",
            "2.4 kg",
            "repeat 50",
            "60",
            "30",
            "15",
            "warp, feed",
        })
        {
            Assert.Contains(wanted, texts);
        }
    }

    [Theory]
    [InlineData(60, "SCALE 1:1 ")]
    [InlineData(700, "SCALE 1:2 ")]
    [InlineData(1500, "SCALE 1:5 ")]
    [InlineData(3000, "SCALE 1:10 ")]
    public void Any_width_from_a_ribbon_to_a_wide_roll_gets_a_sheet_of_bearable_size(double width, string scale)
    {
        Sheet sheet = LayoutSheet.Draw(SampleLayout.OneRepeat with { RollWidthMm = width }, SampleLayout.Yields);

        Assert.InRange(sheet.WidthMm, 150, 650);
        Assert.InRange(sheet.HeightMm, 150, 480);
        Assert.Contains(Texts(Written(sheet)), text => text.Contains(scale, StringComparison.Ordinal));
    }

    [Fact]
    public void Every_text_stands_on_its_sheet()
    {
        foreach (Sheet sheet in new[]
        {
            PanelSheet.Draw(
                SamplePanel.Ball,
                SamplePanel.Panel), LayoutSheet.Draw(
                    SampleLayout.OneRepeat, SampleLayout.Yields), LayoutSheet.Draw(SampleLayout.TwoBands, SampleLayout.Yields),
        })
        {
            foreach (TextMark text in All(sheet.Marks).OfType<TextMark>())
            {
                bool inside = StrokeFont.Strokes(text)
                    .SelectMany(stroke => stroke.Vertices)
                    .All(v => v.X >= 0 && v.X <= sheet.WidthMm && v.Y >= 0 && v.Y <= sheet.HeightMm);
                Assert.True(inside, $"'{text.Text}' leaves the sheet '{sheet.Title}'");
            }
        }
    }

    [Fact]
    public void The_same_layout_gives_the_same_bytes()
    {
        Assert.Equal(
            SvgWriter.Write(LayoutSheet.Draw(SampleLayout.TwoBands, SampleLayout.Yields)),
            SvgWriter.Write(LayoutSheet.Draw(SampleLayout.TwoBands, SampleLayout.Yields)));
    }

    private static IEnumerable<Mark> All(IEnumerable<Mark> marks) =>
        marks.SelectMany(mark => mark is GroupMark group ? All(group.Marks) : [mark]);

    private static XElement Written(Sheet sheet) => XDocument.Load(new MemoryStream(SvgWriter.Write(sheet))).Root!;

    private static XElement Group(XElement root, string id) => root.Elements(Svg + "g").Single(g => g.Attribute("id")?.Value == id);

    // Paths that are no letters.
    private static int Drawn(XElement group) => group.Elements(Svg + "path").Count(path => path.Element(Svg + "title") is null);

    private static string[] Texts(XElement root) =>
        [.. root.Descendants(Svg + "path").Elements(Svg + "title").Select(title => title.Value)];

    private static double[] Numbers(XElement path) =>
        [.. path.Attribute("d")!.Value.Split([' ', 'M', 'L', 'A', 'Z'], StringSplitOptions.RemoveEmptyEntries)
        .Select(word => double.Parse(word, CultureInfo.InvariantCulture))];

    private static (double X, double Y, bool Turned) Place(string transform)
    {
        string[] words = transform.Split(['(', ')', ' '], StringSplitOptions.RemoveEmptyEntries);
        return (double.Parse(
            words[1], CultureInfo.InvariantCulture), double.Parse(words[2], CultureInfo.InvariantCulture), words.Length > 3);
    }
}
