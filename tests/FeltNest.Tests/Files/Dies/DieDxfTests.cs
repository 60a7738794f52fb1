using System.Diagnostics;
using System.Text;
using System.Text.Json;
using FeltNest.Die;
using FeltNest.Die.Make;
using FeltNest.Files;
using FeltNest.Files.Dies;
using FeltNest.Files.Dxf;
using FeltNest.Files.Layouts;
using FeltNest.Files.Outlines;
using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Layout.Limits;
using FeltNest.Tests.Die;
using Xunit;

namespace FeltNest.Tests.Files.Dies;

public sealed class DieDxfTests : IDisposable
{
    // Reads a drawing with a reader that is not ours: counts by layer and kind, area inside the closed polylines of the edge by their
    // bulges, faults of its audit.
    private const string Reader = """
        import sys, json, math, collections
        import ezdxf
        doc = ezdxf.readfile(sys.argv[1])
        audit = doc.audit()
        counts = collections.Counter(e.dxf.layer + " " + e.dxftype() for e in doc.modelspace())
        area = 0.0; closed = True; starts = []
        for e in doc.modelspace().query('POLYLINE[layer=="EDGE"]'):
            closed = closed and e.is_closed
            v = [(p.dxf.location.x, p.dxf.location.y, p.dxf.get("bulge", 0.0)) for p in e.vertices]
            starts.append(v[0][:2])
            for (x, y, b), (u, w, _) in zip(v, v[1:] + v[:1]):
                area += (x * w - u * y) / 2
                if b:
                    t = 4 * math.atan(b); r = math.hypot(u - x, w - y) / 2 / math.sin(abs(t) / 2)
                    area += math.copysign(r * r * (abs(t) - math.sin(abs(t))) / 2, t)
        print(json.dumps({"version": doc.dxfversion, "unit": doc.header["$INSUNITS"], "errors": len(audit.errors),
             "counts": counts, "area": area, "closed": closed, "starts": len(set(starts))}))
        """;

    // Takes the cutting layer apart into lines and arcs with a reader that is not ours: pieces that lie on each other, ends that meet
    // nothing, and the areas of the loops that the pieces close.
    private const string Loops = """
        import sys, json, math
        import ezdxf
        pieces = []; kinds = set()
        for e in ezdxf.readfile(sys.argv[1]).modelspace().query('*[layer=="EDGE"]'):
            kinds.add(e.dxftype())
            v = [(p.dxf.location.x, p.dxf.location.y, p.dxf.get("bulge", 0.0)) for p in e.vertices]
            ends = v[1:] + v[:1] if e.is_closed else v[1:]
            pieces += [((x, y), (u, w), 4 * math.atan(b)) for (x, y, b), (u, w, _) in zip(v, ends)]
        def at(p, s):
            (x, y), (u, w), t = p
            if t == 0: return (x + s * (u - x), y + s * (w - y))
            half = t / 2; k = math.sin(t * s / 2) / math.sin(half); a = (s - 1) * half
            dx, dy = (u - x) * k, (w - y) * k
            return (x + dx * math.cos(a) - dy * math.sin(a), y + dx * math.sin(a) + dy * math.cos(a))
        def off(p, q):
            (x, y), (u, w), t = p
            if t == 0:
                l = (u - x) ** 2 + (w - y) ** 2; s = max(0, min(1, ((q[0] - x) * (u - x) + (q[1] - y) * (w - y)) / l))
                return math.dist(q, (x + s * (u - x), y + s * (w - y)))
            h = math.dist((x, y), (u, w)) / 2 / math.tan(t / 2); d = math.dist((x, y), (u, w))
            c = ((x + u) / 2 - h * (w - y) / d, (y + w) / 2 + h * (u - x) / d); r = math.dist(c, (x, y)); m = at(p, 0.5)
            turn = abs(math.remainder(math.atan2(q[1] - c[1], q[0] - c[0]) - math.atan2(m[1] - c[1], m[0] - c[0]), 2 * math.pi))
            return abs(math.dist(c, q) - r) if turn <= abs(t) / 2 else min(math.dist(q, p[0]), math.dist(q, p[1]))
        overlaps = 0
        for i, p in enumerate(pieces):
            for k, q in enumerate(pieces):
                if i != k and sum(off(q, at(p, (j + 0.5) / 60)) < 1e-5 for j in range(60)) > 1: overlaps += 1
        nodes = []
        def node(p):
            for i, n in enumerate(nodes):
                if math.dist(n, p) <= 1e-6: return i
            nodes.append(p); return len(nodes) - 1
        halves = []
        for p in pieces:
            a, b = node(p[0]), node(p[1])
            halves.append((a, b, math.atan2(p[1][1] - p[0][1], p[1][0] - p[0][0]) - p[2] / 2, p))
            halves.append((b, a, math.atan2(p[0][1] - p[1][1], p[0][0] - p[1][0]) + p[2] / 2, (p[1], p[0], -p[2])))
        out = {}
        for i, h in enumerate(halves): out.setdefault(h[0], []).append(i)
        for n in out: out[n].sort(key=lambda i: math.remainder(halves[i][2], 2 * math.pi))
        dangling = sum(len(v) < 2 for v in out.values())
        done = set(); areas = []
        for i in range(len(halves)):
            if i in done: continue
            area = 0.0; k = i
            while k not in done:
                done.add(k); a, b, _, ((x, y), (u, w), t) = halves[k]
                area += (x * w - u * y) / 2
                if t: r = math.dist((x, y), (u, w)) / 2 / math.sin(abs(t) / 2); area += \
                    math.copysign(r * r * (abs(t) - math.sin(abs(t))) / 2, t)
                ring = out[b]; k = ring[ring.index(k ^ 1) - 1]
            areas.append(area)
        print(json.dumps({"kinds": sorted(kinds), "overlaps": overlaps, "dangling": dangling,
             "areas": sorted(a for a in areas if a > 0), "pieces": len(pieces)}))
        """;

    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void The_extent_of_a_drawing_holds_its_arcs()
    {
        string[] lines = Encoding.ASCII.GetString(DieDxf.Cavity(DieCases.Panels, 0)).Split("\r\n");
        double At(string name, int group) =>
            double.Parse(lines[Array.IndexOf(lines, name) + (group / 10 * 2)], System.Globalization.CultureInfo.InvariantCulture);
        Point2[] flat = [.. DieCases.Panels.Edges[0]!.Pieces.SelectMany(p => Enumerable.Range(0, 2001).Select(k => p.At(k / 2000.0)))];

        // Notes reach below and to the right, so left and top are the edge's.
        Assert.Equal(flat.Min(p => p.X), At("$EXTMIN", 10), 1e-5);
        Assert.Equal(flat.Max(p => p.Y), At("$EXTMAX", 20), 1e-5);
    }

    [Fact]
    public void Notes_of_the_slots_call_them_the_middle_of_the_rule_and_nothing_else()
    {
        string board = Encoding.ASCII.GetString(DieDxf.Board(DieCases.Panels));
        string gang = Encoding.ASCII.GetString(DieDxf.Gang(DieCases.Panels));

        Assert.Contains("SLOT, BRIDGE = middle line of the rule's body", board, StringComparison.Ordinal);
        Assert.Contains("mm outside the cutting edge", board, StringComparison.Ordinal);
        Assert.DoesNotContain("line = cutting edge", board, StringComparison.Ordinal);
        Assert.Contains("line = cutting edge", gang, StringComparison.Ordinal);
        Assert.DoesNotContain("middle line", gang, StringComparison.Ordinal);
    }

    [Fact]
    public void The_cavity_comes_back_through_our_own_reader_to_a_thousandth_of_a_micrometre()
    {
        DieDesign design = DieCases.Panels;
        string path = folder.Path("cavity.dxf");
        File.WriteAllBytes(path, DieDxf.Cavity(design, 0));
        ImportedOutline read = PartReader.Read(path).Outline!;
        ArcOutline edge = design.Edges[0]!.Arcs;

        Assert.Equal(edge.Area, read.CentredArcs!.Area, 1e-6 * edge.Area);
        Assert.Equal(edge.Perimeter, read.CentredArcs.Perimeter, 1e-6);
        Assert.Equal(edge.Vertices.Count, read.CentredArcs.Vertices.Count);
        Assert.Equal(design.Request.Layout.Parts[0].AreaMm2, read.CentredArcs.Area, 1e-4 * edge.Area);
    }

    // Published DXF reference: a bulge is the tangent of a quarter of the included angle.
    [Theory]
    [InlineData(90, 0.41421)]
    [InlineData(60, 0.26795)]
    [InlineData(180, 1)]
    [InlineData(-90, -0.41421)]
    [InlineData(0, 0)]
    public void A_bulge_is_the_tangent_of_a_quarter_of_the_angle(double degrees, double bulge) =>
        Assert.Equal(bulge, DxfText.Bulge(double.DegreesToRadians(degrees)), 5e-6);

    [Fact]
    public void The_gang_has_one_closed_polyline_a_cavity_on_the_edge_layer_and_nothing_else_there()
    {
        DieDesign design = DieCases.Panels;
        string path = folder.Path("die.dxf");
        File.WriteAllBytes(path, DieDxf.Gang(design));
        DxfDrawing drawing = DxfDrawing.Read(InputText.OfFile(path));
        DxfEntity[] edge = [.. drawing.Entities.Where(e => e.Groups.Any(g => g is { Code: 8, Text: "EDGE" }))];

        Assert.Equal(4, drawing.Unit);
        Assert.Equal(design.Gang.Cavities.Count, edge.Count(e => e.Kind == "POLYLINE"));
        Assert.All(edge.Where(e => e.Kind == "POLYLINE"), e => Assert.Equal(1, e.Flags(70)));
        Assert.All(edge, e => Assert.Contains(e.Kind, new[] { "POLYLINE", "VERTEX", "SEQEND" }));
        string text = Encoding.ASCII.GetString(DieDxf.Gang(design));
        Assert.Contains("Lock out before a hand goes under the head", text, StringComparison.Ordinal);
        Assert.Contains("PANEL VIEW", text, StringComparison.Ordinal);
        Assert.DoesNotContain("LWPOLYLINE", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_drawn_die_is_read_back_as_its_cavities_without_the_board()
    {
        DieDesign design = DieCases.Panels;
        string path = folder.Path("die.dxf");
        File.WriteAllBytes(path, DieDxf.Gang(design));
        RollLayout read = DrawnDie.Read(path, design.Gang.FeedMm, new EdgeTrims { LowerMm = 15, UpperMm = 15 }, []);

        Assert.Equal(design.Gang.Cavities.Count, read.Bands[0].Repeat.Panels.Count);
        // At either side the edge may stand a hundredth outside the layout, and the polygon that is read back a hundredth outside the edge.
        Assert.Equal(design.Gang.EdgeWidthMm, read.UsableWidthMm, 0.04);
    }

    [Fact]
    public void From_the_dies_side_arcs_turn_the_other_way_and_the_area_stays()
    {
        DieDesign design =
            DieCases.Panels with { Request = DieCases.Panels.Request with { Order = DieCases.Order with { DieView = true } } };
        string path = folder.Path("cavity.dxf");
        File.WriteAllBytes(path, DieDxf.Cavity(design, 0));

        Assert.Contains("DIE VIEW", File.ReadAllText(path), StringComparison.Ordinal);
        Assert.Equal(design.Edges[0]!.Arcs.Area, PartReader.Read(path).Outline!.CentredArcs!.Area, 1e-6);
    }

    [Fact]
    public void Slots_stop_at_bridges_and_add_up_to_the_length_of_rule()
    {
        DieDesign design = DieCases.Panels;
        string path = folder.Path("board.dxf");
        File.WriteAllBytes(path, DieDxf.Board(design));
        IReadOnlyList<DxfEntity> entities = DxfDrawing.Read(InputText.OfFile(path)).Entities;
        int bridges = design.Places[0]!.Bridges.Count * design.Gang.Cavities.Count;

        Assert.Equal(bridges, entities.Count(e => e.Kind == "POLYLINE" && e.Groups.Any(g => g is { Code: 8, Text: "BRIDGE" })));
        Assert.Equal(bridges, entities.Count(e => e.Kind == "POLYLINE" && e.Groups.Any(g => g is { Code: 8, Text: "SLOT" })));

        // The middle of a side bevel's body runs half a rule outside the edge: longer by half a rule times a full turn.
        double drawn = SlotRuns.Of(design.Edges[0]!, design.Places[0]!, design.Request.Order.Board, 0.355, null).Sum(r => Length(r.Run));
        Assert.Equal(design.Edges[0]!.Arcs.Perimeter + (0.355 * 2 * Math.PI), drawn, 1e-6);
    }

    [Fact]
    public void An_independent_reader_finds_every_file_sound_and_the_area_right()
    {
        const string python = "/usr/bin/python3";
        Assert.SkipUnless(File.Exists(python) && Run(python, "-c", "import ezdxf").Code == 0, "python3-ezdxf is missing");
        DieDesign design = DieCases.Panels;
        double area = design.Gang.Cavities.Count * design.Request.Layout.Parts[0].AreaMm2;
        foreach ((string name, byte[] content, int cavities) in new[]
        {
            ("cavity", DieDxf.Cavity(design, 0), 1),
            ("die", DieDxf.Gang(design), design.Gang.Cavities.Count),
            ("board", DieDxf.Board(design), 0),
        })
        {
            string path = folder.Path($"{name}.dxf");
            File.WriteAllBytes(path, content);
            (int code, string output) = Run(python, "-c", Reader, path);
            Assert.True(code == 0, output);
            JsonElement found = JsonDocument.Parse(output).RootElement;
            Assert.Equal(
                ("AC1009", 4, 0),
                (found.GetProperty("version").GetString(), found.GetProperty("unit").GetInt32(), found.GetProperty("errors").GetInt32()));
            Assert.True(found.GetProperty("closed").GetBoolean());
            if (cavities > 0)
            {
                Assert.Equal(cavities, found.GetProperty("counts").GetProperty("EDGE POLYLINE").GetInt32());
                Assert.Equal(cavities, found.GetProperty("starts").GetInt32());
                Assert.Equal(area * cavities / design.Gang.Cavities.Count, found.GetProperty("area").GetDouble(), 1e-4 * area);
            }
        }
    }

    [Theory, Trait("tier", "long")]
    [InlineData("bricks", false)]
    [InlineData("bricks", true)]
    [InlineData("round ends", false)]
    [InlineData("panels", false)]
    public void An_independent_reader_finds_no_cut_twice_and_every_cavity_closed_by_its_pieces(string name, bool dieView)
    {
        const string python = "/usr/bin/python3";
        Assert.SkipUnless(File.Exists(python) && Run(python, "-c", "import ezdxf").Code == 0, "python3-ezdxf is missing");
        DieDesign design =
            name == "panels" ? DieCases.Panels : DieCases.Common(name == "bricks" ? DieCases.Bricks : DieCases.RoundEnds, dieView);
        string path = folder.Path("die.dxf");
        File.WriteAllBytes(path, DieDxf.Gang(design));
        (int code, string output) = Run(python, "-c", Loops, path);
        Assert.True(code == 0, output);
        JsonElement found = JsonDocument.Parse(output).RootElement;
        double[] areas = [.. found.GetProperty("areas").EnumerateArray().Select(a => a.GetDouble())];

        Assert.Equal((0, 0), (found.GetProperty("overlaps").GetInt32(), found.GetProperty("dangling").GetInt32()));
        Assert.Equal(["POLYLINE"], found.GetProperty("kinds").EnumerateArray().Select(k => k.GetString()));
        Assert.Equal(design.Gang.Cavities.Count, areas.Length);
        Assert.All(areas, a => Assert.Equal(design.Edges[0]!.Arcs.Area, a, 1e-6 * a));
    }

    [Fact]
    public void Slots_of_a_common_cut_are_drawn_once_and_add_up_to_the_rule()
    {
        // A centre bevel's slot has the edge as its middle line, so slots and bridges are as long as the rule.
        DieDesign design = DieCases.Common(DieCases.Bricks);
        string path = folder.Path("board.dxf");
        File.WriteAllBytes(path, DieDxf.Board(design));
        double drawn = DxfDrawing.Read(InputText.OfFile(path)).Entities.Where(e => e.Kind == "POLYLINE").Count();
        double length = design.Gang.Cavities.Select((c, i) => SlotRuns.Of(
            design.Edges[0]!, design.Places[0]!, design.Request.Order.Board, 0,
            [.. design.Gang.Common.Runs.Where(r => r.Cavity == i).Select(r => (r.FromMm, r.ToMm))]).Sum(
                r => Length(r.Run))).Sum();

        Assert.True(drawn > design.Gang.Cavities.Count);
        Assert.Equal(design.RuleLengthMm, length, 1e-6);
    }

    private static double Length(IReadOnlyList<ArcVertex> run) => run.Zip(run.Skip(1)).Sum(pair =>
    {
        double chord = (pair.Second.Point - pair.First.Point).Length;
        double half = Math.Abs(pair.First.Turn) / 2;
        return half == 0 ? chord : chord * half / Math.Sin(half);
    });

    private static (int Code, string Output) Run(string program, params string[] args)
    {
        ProcessStartInfo start = new(program, args) { RedirectStandardOutput = true, RedirectStandardError = true };
        using Process process = Process.Start(start)!;
        Task<string> errors = process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, process.ExitCode == 0 ? output : errors.GetAwaiter().GetResult());
    }
}
