using FeltNest.Geometry;
using FeltNest.Panel;

namespace FeltNest.Files.Check;

/// <summary>A flat panel from its file alone: outline against arcs, own area and edge length, allowances that add up, mass
/// budget.</summary>
internal static class PanelFigures
{
    // The polygon contains the arcs and lies at most so far outside them, mm.
    private const double OutlineMm = 0.01;

    // Sums of short chords and the true curve differ by less, mm and as a share.
    private const double ChordMm = 1e-3;
    private const double ChordShare = 1e-5;

    /// <summary>Checks the file.</summary>
    public static void Check(StatedFields top)
    {
        IReadOnlyList<double[]> outline = top.Rows("outline", 2);
        ArcVertex[] arcs = [.. top.Items("arcs").Select(v =>
            new ArcVertex(v.Number("x"), v.Number("y"), double.DegreesToRadians(v.Number("turnDeg"))))];
        EdgePoint[] edge = [.. top.Rows("edgeMap", 3).Select(p => new EdgePoint { U = p[0], V = p[1], S = p[2], StretchPercent = 0 })];
        top.Keep(outline.Count > 2, "outline", "has fewer than 3 corners");
        top.Keep(arcs.Length > 2, "arcs", "has fewer than 3 arcs");
        top.Keep(edge.Length > 3, "edgeMap", "has fewer than 4 places");
        if (outline.Count < 3 || arcs.Length < 3 || edge.Length < 4)
        {
            return;
        }

        Shape(top, FlatPanelCheck.OfShape(arcs, [.. outline.Select(p => new Point2(p[0], p[1]))]));
        FlatShape.Of(outline).CheckSize(top);
        Edge(top, edge);
        Sphere(top.Needed("sphere"));
        if (top.Inner("thickness") is { } thickness)
        {
            ThicknessFigures.Check(thickness, top.Needed("sphere"), top.Needed("strain"));
        }

        Budget(top, top.Needed("ballCheck"));
    }

    private static void Shape(StatedFields top, FlatShapeFindings found)
    {
        top.Keep(
            found.OutlineInsideMm <= ChordMm, "outline",
            FormattableString.Invariant($"cuts {found.OutlineInsideMm:0.####} mm into the arcs"));
        top.Keep(
            found.OutlineOutsideMm <= OutlineMm + ChordMm, "outline",
            FormattableString.Invariant($"stands {found.OutlineOutsideMm:0.####} mm outside the arcs, at most {OutlineMm} is promised"));
        top.Keep(
            found.HalfTurnMm <= 2 * OutlineMm, "arcs",
            FormattableString.Invariant($"are {found.HalfTurnMm:0.####} mm off themselves after a half-turn"));
        top.Same("areaMm2", found.AreaMm2, ChordShare * found.AreaMm2);
        top.Same("perimeterMm", found.PerimeterMm, ChordShare * found.PerimeterMm);
    }

    // Allowances lead from the edge before them to the panel as cut.
    private static void Edge(StatedFields top, EdgePoint[] edge)
    {
        for (int i = 0; i < edge.Length; i++)
        {
            top.Keep(Math.Abs(edge[i].S - (2 * Math.PI * i / edge.Length)) <= 1e-6, "edgeMap", $"has place {i} at another seam parameter");
        }

        FlatShape before = FlatShape.Of([.. edge.Select(p => new[] { p.U, p.V })]);
        IReadOnlyList<StatedFields> allowances = top.Items("allowances");
        before.CheckGrown(top, allowances);
        foreach ((StatedFields step, int number) in allowances.Select((s, i) => (s, i + 1)))
        {
            step.Same("step", number, 0);
        }

        if (top.Text("edge") == "mated" && top.Text("flattening") == "elastic")
        {
            // Pieces of edge that meet have one length: what is sewn together leaves no gap.
            double mismatch = FlatPanelCheck.Mismatch(edge);
            top.Needed("strain").Same("edgeMismatchPercent", mismatch, 0.01);
        }
    }

    private static void Sphere(StatedFields sphere)
    {
        double radius = sphere.Number("radiusMm");
        double around = 2 * Math.PI * radius;
        sphere.Same("panelAreaMm2", around * radius, Shares.Room(around * radius));
        sphere.Same("lengthMm", around - sphere.Number("waistMm"), Shares.Room(around));
    }

    private static void Budget(StatedFields top, StatedFields budget)
    {
        double felt = 2 * top.Number("areaMm2") * top.Number("massPerAreaGsm") / 1e6;
        budget.Same("feltG", felt, Shares.Room(felt));
        double total = budget.Number("coreG") + budget.Number("cementG") + budget.Number("feltG");
        budget.Same("totalG", total, Shares.Room(total));
        foreach (StatedFields finding in budget.Items("findings"))
        {
            Finding(budget, finding);
        }

        foreach (StatedFields spread in budget.Items("tolerances"))
        {
            double worst = spread.Number("worstCase");
            spread.Keep(spread.Number("rootSumSquare") <= worst + Shares.Room(worst), "rootSumSquare", "is above the worst case");
        }
    }

    // A figure with two limits is judged by them; others have a verdict that says why not.
    private static void Finding(StatedFields budget, StatedFields finding)
    {
        double? value = finding.Optional("value");
        if (finding.Text("quantity") == "finished diameter")
        {
            finding.Same("value", budget.Number("finishedDiameterMm"), Shares.Room(100));
        }

        bool within = value >= finding.Optional("low") && value <= finding.Optional("high");
        bool judged = finding.Text("verdict") is "within" or "outside" && finding.Optional("low") is not null;
        finding.Keep(!judged || within == (finding.Text("verdict") == "within"), "verdict", "does not follow from value and limits");
    }
}
