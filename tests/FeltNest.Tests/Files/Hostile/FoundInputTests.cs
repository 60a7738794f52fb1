using System.Diagnostics;
using System.Text;
using System.Text.Json.Nodes;
using FeltNest.Files;
using FeltNest.Files.Layouts;
using FeltNest.Files.Offers;
using FeltNest.Files.Outlines;
using FeltNest.Files.Presses;
using FeltNest.Layout.Limits;
using FeltNest.Tests.Cli;
using FeltNest.Yield;
using Xunit;

namespace FeltNest.Tests.Files.Hostile;

/// <summary>Inputs that once broke a reader, and those that break readers of the same kinds elsewhere. Each is told in one line.</summary>
public sealed class FoundInputTests : IDisposable
{
    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Theory]
    [InlineData("""{ "schema": "feltnest/press/1", "\ud800": 1 }""")]
    [InlineData("""{ "schema": "feltnest/press/1", "name": "\udc00" }""")]
    [InlineData("""{ "schema": "\ud83d" }""")]
    public void Half_a_character_in_json_is_told(string text) =>
        Assert.EndsWith(
            "line 1: holds a text that is not sound Unicode: save the file as UTF-8, and write \\u only for whole characters",
            Told(() => PressReader.Read(folder.Write("a.json", text))), StringComparison.Ordinal);

    [Fact]
    public void Bytes_that_are_not_utf8_in_json_are_told_with_their_line()
    {
        File.WriteAllBytes(folder.Path("a.json"), [.. "{ \"schema\": \"feltnest/press/1\",\n \"na"u8, 0xFF, .. "me\": 1 }"u8]);

        Assert.Contains(
            "line 2: holds a text that is not sound Unicode", Told(() => PressReader.Read(folder.Path("a.json"))),
            StringComparison.Ordinal);
    }

    [Fact]
    public void A_message_never_moves_the_cursor_or_turns_the_writing_round()
    {
        Assert.Equal("a b c d e", PlainLine.Of("a\u001bb\u2028c\u202Ed\ne"));
        Assert.Equal("\uFFFD", PlainLine.Of("\ud800"));
        Assert.Equal("fl\u00E4che \uD83D\uDE00 \u0130", PlainLine.Of("fl\u00E4che \uD83D\uDE00 \u0130"));
    }

    [Fact]
    public void A_control_character_of_an_attribute_is_not_shown()
    {
        string message =
            Told(() => OutlineReader.Read(folder.Write("a.svg", """<svg xmlns="http://www.w3.org/2000/svg"><path d="&#x85;"/></svg>""")));

        Assert.DoesNotContain(message, char.IsControl);
    }

    [Theory]
    [InlineData("<!DOCTYPE svg [<!ENTITY a \"b\">]><svg>&a;</svg>", "document types and entities are refused")]
    [InlineData("<!DOCTYPE svg SYSTEM \"file:///etc/hostname\"><svg/>", "document types and entities are refused")]
    [InlineData("<svg>&a;</svg>", "is not sound XML")]
    public void Entities_are_never_expanded(string text, string told) =>
        Assert.Contains(told, Told(() => OutlineReader.Read(folder.Write("a.svg", text))), StringComparison.Ordinal);

    [Fact]
    public void Deep_nesting_is_told_in_json_and_in_drawings()
    {
        Told(() => PartReader.Read(folder.Write("a.json", new string('[', 1_000_000))));
        Told(() => PartReader.Read(folder.Write("b.json", string.Concat(Enumerable.Repeat("{\"a\":", 1_000_000)))));
        Told(() =>
            OutlineReader.Read(
                folder.Write(
                    "c.svg",
                    $"<svg>{string.Concat(Enumerable.Repeat("<g>", 200_000))}{string.Concat(Enumerable.Repeat("</g>", 200_000))}</svg>")));
        Told(() =>
            OutlineReader.Read(
                folder.Write(
                    "d.svg",
                    $"<svg><defs>{string.Concat(Enumerable.Repeat("<g>", 200_000))}"
                        + $"{string.Concat(Enumerable.Repeat("</g>", 200_000))}</defs></svg>")));
    }

    [Fact]
    public void Curves_without_end_are_refused_before_they_fill_the_memory()
    {
        string curves = string.Concat(Enumerable.Repeat("C 9e9 0 0 9e9 0 0 ", 20_000));
        string shapes = string.Concat(Enumerable.Repeat("<path d=\"M 0 0 C 9e9 0 0 9e9 5 0 z\"/>", 20_000));
        long before = GC.GetAllocatedBytesForCurrentThread();

        Assert.Contains(
            "more than 500000 chords", Told(() => OutlineReader.Read(folder.Write("a.svg", $"<svg><path d=\"M 0 0 {curves}\"/></svg>"))),
            StringComparison.Ordinal);
        Assert.Contains(
            "more than 500000 chords", Told(() => OutlineReader.Read(folder.Write("b.svg", $"<svg>{shapes}</svg>"))),
            StringComparison.Ordinal);
        Assert.True(GC.GetAllocatedBytesForCurrentThread() - before < 1L << 30);
    }

    [Fact]
    public void A_line_of_a_million_points_is_refused()
    {
        string points = string.Concat(Enumerable.Range(0, 1_000_000).Select(i => $"{i % 1000},{i / 1000} "));

        Assert.Contains(
            "more than 10000 points", Told(() => OutlineReader.Read(folder.Write("a.svg", $"<svg><polyline points=\"{points}\"/></svg>"))),
            StringComparison.Ordinal);
    }

    // A drawing program that joins a straight line to an arc writes such bulges.
    [Theory]
    [InlineData("1e-320")]
    [InlineData("1e-17")]
    [InlineData("-3e-16")]
    [InlineData("1e-12")]
    public void An_arc_too_flat_to_be_one_is_a_straight_piece(string bulge)
    {
        ImportedOutline read = OutlineReader.Read(
            folder.Write(
                "a.dxf",
                $"0\nSECTION\n2\nENTITIES\n0\nLWPOLYLINE\n70\n1\n10\n0\n20\n0\n42\n"
                    + $"{bulge}\n10\n30\n20\n0\n42\n1\n10\n30\n20\n20\n10\n0\n20\n20\n0\nENDSEC\n0\nEOF\n"));

        // A rectangle of 30 by 20 with a half disc of radius 10 at its end.
        Assert.Equal(600 + (50 * Math.PI), read.RawArcs!.Area, 1e-6);
    }

    [Fact]
    public void Arcs_that_would_be_millions_of_corners_are_refused()
    {
        string text = """{ "schema": "feltnest/outline/1", "name": "a","""
            + """ "arcs": [{ "x": 0, "y": 0, "turnDeg": 359.9999999 }, { "x": 100, "y": 0, "turnDeg": 0 }] }""";

        Assert.Contains(
            "outline has more than 10000 points where its arcs are divided", Told(() => OutlineReader.Read(folder.Write("a.json", text))),
            StringComparison.Ordinal);
    }

    // Two hundred metres struck every 350 mm: all the copies of its thousands of corners were laid at once.
    [Fact]
    public void A_cavity_far_longer_than_its_feed_is_refused_in_little_memory()
    {
        string path = folder.Write("a.svg", """
            <svg xmlns="http://www.w3.org/2000/svg" width="120mm" height="60mm" viewBox="0 0 120 60">
            <path d="M 35.516 5.248 L 98.25 14.159 A 100000.1 16 0 0 1 98.25 45.841 L 35.516 54.752 A 25 0.3 0 1 1 35.516 5.248 Z"/></svg>
            """);
        long before = GC.GetAllocatedBytesForCurrentThread();

        Assert.Contains(
            "do not clear each other when struck again after 350 mm",
            Told(() => DrawnDie.Read(path, 350, new EdgeTrims { LowerMm = 15, UpperMm = 15 }, [])),
            StringComparison.Ordinal);
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 100L << 20);
    }

    // Some thousand loops in one place: every pair of them was measured and told of.
    [Fact]
    public void A_thousand_cavities_in_one_place_are_refused_without_measuring_every_pair()
    {
        string circles = string.Concat(Enumerable.Repeat("0\nCIRCLE\n10\n5\n20\n5\n40\n5\n", 1000));
        string path = folder.Write("a.dxf", $"0\nSECTION\n2\nENTITIES\n{circles}0\nENDSEC\n0\nEOF\n");
        long before = GC.GetAllocatedBytesForCurrentThread();

        Assert.Contains(
            "its 1000 cavities do not clear each other",
            Told(() => DrawnDie.Read(path, 350, new EdgeTrims { LowerMm = 15, UpperMm = 15 }, [])),
            StringComparison.Ordinal);
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 1L << 30);
    }

    [Theory]
    [InlineData("xMm", "1e300", "xMm: 1E+300 is outside -10000000 to 10000000")]
    [InlineData("yMm", "-1e6", "yMm: -1000000 is outside -100000 to 100000")]
    public void A_panel_laid_beyond_any_roll_is_told(string field, string value, string told)
    {
        JsonNode layout = JsonNode.Parse(LayoutWriter.Write(SampleLayout.OneRepeat, YieldAccount.Of(SampleLayout.OneRepeat)))!;
        layout["repeat"]!["panels"]![0]![field] = JsonNode.Parse(value);

        Assert.Contains(told, Told(() => LayoutReader.Read(folder.Write("layout.json", layout.ToJsonString()))), StringComparison.Ordinal);
    }

    [Fact]
    public void A_long_cell_with_many_quotes_takes_no_longer_than_its_length()
    {
        Stopwatch watch = Stopwatch.StartNew();
        string head = string.Concat(Enumerable.Repeat("a\"", 1_000_000));

        Assert.Contains("is not known", Told(() => OffersReader.Read(folder.Write("a.csv", head + "\n1\n"))), StringComparison.Ordinal);
        Assert.True(watch.Elapsed < TimeSpan.FromSeconds(20), "a quote read everything before it again");
    }

    [Fact]
    public void A_file_that_never_ends_is_read_no_further_than_the_limit()
    {
        Assert.SkipUnless(File.Exists("/dev/zero"), "no /dev/zero");

        Assert.EndsWith(
            "is longer than 20971520 bytes, which is the most that is read", Told(() => PressReader.Read("/dev/zero")),
            StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("cost", "1e29", "cost: 1E+29 is outside ")]
    [InlineData("orders", "dup", "'O00' stands in the list twice")]
    [InlineData("purchases", "many", "is outside 0 to 10000")]
    [InlineData("presses", "number", "holds the number 7 where names of dies are wanted")]
    public async Task A_plan_of_orders_with_an_absurd_entry_is_told(string field, string value, string told)
    {
        JsonNode plan = JsonNode.Parse(HostileReaders.OrderPlan())!;
        switch (value)
        {
            case "dup":
                JsonNode entry = JsonNode.Parse("""{ "order": "O00", "balls": 1, "reserveBalls": 0, "reason": "r" }""")!;
                plan["shortfalls"] = new JsonArray(entry, entry.DeepClone());
                break;
            case "many":
                JsonNode offer = plan["stock"]![0]!.DeepClone();
                offer["minimumM"] = 0;
                plan["offers"] = new JsonArray(offer);
                plan[
                    "purchases"] = new JsonArray(
                        JsonNode.Parse(
                            $$"""{ "offer": {{offer["roll"]!.ToJsonString()}}, "rolls": 2000000000, "metres": 1, "price": 1 }"""));
                break;
            case "number":
                plan[field]![0]!["dies"] = new JsonArray(7);
                break;
            default:
                plan[field] = JsonNode.Parse(value);
                break;
        }

        CommandRun run = await CommandRun.Of("check", folder.Write("plan.json", plan.ToJsonString()));

        Assert.Equal(2, run.Code);
        Assert.Contains(told, Assert.Single(run.Messages), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("rules", "remnantValuePercent", "1e308", "is outside 0 to 100")]
    [InlineData("rules", "hoursPerDay", "1e-9", "is outside 0.1 to 24")]
    [InlineData("assignments", "endHour", "1e29", "is outside 0 to 100000")]
    [InlineData("stock", "lengthM", "1e300", "is outside 0 to 100000")]
    [InlineData("assignments", "strikes", "2147483647", "strikes: 2147483647 is outside 0 to 1000000000")]
    [InlineData("assignments", "goodBalls", "2147483647", "goodBalls: 2147483647 is outside 0 to 1000000000")]
    [InlineData("orders", "balls", "-2147483648", "balls: -2147483648 is outside 0 to 1000000000")]
    [InlineData("rules", "rejectPercent", "-1e308", "rejectPercent: -1E+308 is outside 0 to 100")]
    [InlineData("rack", "reRules", "2147483647", "reRules: 2147483647 is outside 0 to 1000")]
    public async Task A_plan_of_orders_beyond_all_days_and_money_is_told(string holder, string field, string value, string told)
    {
        JsonNode plan = JsonNode.Parse(HostileReaders.OrderPlan())!;
        JsonNode place = plan[holder] is JsonArray list ? list[0]! : plan[holder]!;
        place[field] = JsonNode.Parse(value);
        CommandRun run = await CommandRun.Of("check", folder.Write("plan.json", plan.ToJsonString()));

        Assert.Equal(2, run.Code);
        Assert.Contains(told, Assert.Single(run.Messages), StringComparison.Ordinal);
    }

    // Rules were counted one by one, past the largest whole number and round again; strikes of several lines were added past it.
    [Fact]
    public async Task A_plan_of_orders_with_all_the_strikes_there_can_be_is_worked_out()
    {
        JsonNode plan = JsonNode.Parse(HostileReaders.OrderPlan())!;
        JsonArray work = plan["assignments"]!.AsArray();
        work[0]!["strikes"] = 1_000_000_000;
        work[0]!["goodBalls"] = 1_000_000_000;
        plan["rack"]!.AsArray().First(die => (string)die!["die"]! == (string)work[0]!["die"]!)!["lifeStrikes"] = 1;
        for (int i = 0; i < 3; i++)
        {
            work.Add(work[0]!.DeepClone());
        }

        CommandRun run = await CommandRun.Of("check", folder.Write("plan.json", plan.ToJsonString()));

        Assert.Equal(4, run.Code);
        Assert.Contains("4000000000 strikes, of", run.Out, StringComparison.Ordinal);
    }

    // The sine of an angle so large is no number.
    [Fact]
    public async Task A_panel_turned_by_more_than_there_are_digits_for_is_told()
    {
        JsonNode plan = JsonNode.Parse(HostileReaders.RollPlan())!;
        plan["pattern"]!["panels"]![0]!["angleDeg"] = -1e308;
        CommandRun run = await CommandRun.Of("check", folder.Write("plan.json", plan.ToJsonString()));

        Assert.Contains("angleDeg: -1E+308 is outside -360 to 360", Assert.Single(run.Messages), StringComparison.Ordinal);
    }

    // The copies of a strike within reach of another were millions of millions, and strikes in line from so far before the roll came to no
    // end.
    [Theory]
    [InlineData("pattern", "feedMm", 1e-9, "feedMm: 1E-09 mm is outside 0.1 to 100000 mm")]
    [InlineData("pattern", "feedMm", 0.1, "feedMm: 0.1 puts more than 16000 strikes on a roll of 100000 mm")]
    [InlineData(null, "fromMm", -1e308, "fromMm: -1E+308 is outside 0 to 100000")]
    [InlineData(null, "guidePlayMm", 1e308, "guidePlayMm: 1E+308 is outside 0 to 200")]
    public async Task A_roll_plan_of_strikes_without_number_is_told(string? holder, string field, double value, string told)
    {
        JsonNode plan = JsonNode.Parse(HostileReaders.RollPlan())!;
        JsonNode place = holder is null ? plan : plan[holder]!;
        place[field] = value;
        plan["roll"]!["lengthM"] = 100;
        CommandRun run = await CommandRun.Of("check", folder.Write("plan.json", plan.ToJsonString()));

        Assert.Contains(told, Assert.Single(run.Messages), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_strike_without_a_panel_is_told()
    {
        JsonNode plan = JsonNode.Parse(HostileReaders.RollPlan())!;
        plan["pattern"]!["panels"] = new JsonArray();
        CommandRun run = await CommandRun.Of("check", folder.Write("plan.json", plan.ToJsonString()));

        Assert.Contains(
            "pattern.panels: is empty: a strike cuts at least one panel", Assert.Single(run.Messages), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_command_line_with_control_characters_is_told_without_them()
    {
        CommandRun run = await CommandRun.Of("check", "a\u001b[31m\nb.json");

        Assert.Equal(2, run.Code);
        Assert.DoesNotContain('\u001b', Assert.Single(run.Messages));
    }

    private static string Told(Action read)
    {
        string message = Assert.ThrowsAny<FeltNestException>(read).Message;
        Assert.DoesNotContain('\n', message);
        Assert.True(Encoding.UTF8.GetByteCount(message) < 4000);
        return message;
    }
}
