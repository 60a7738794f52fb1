namespace FeltNest.Files.Check;

/// <summary>Seams designed for least felt: limits, outlines, yields, and a front that falls.</summary>
internal static class SeamDesignFigures
{
    // A measured panel may pass a limit by rounding of the file alone, per cent or mm.
    private const double Slack = 1e-6;

    // Felt that may rise along a front by rounding, m2 for a thousand balls.
    private const double Rise = 1e-9;

    /// <summary>Checks the file.</summary>
    public static void Check(StatedFields top)
    {
        StatedFields limits = top.Needed("limits");
        double width = top.Needed("roll").Number("widthMm");
        Choice(top.Needed("given"), width);
        IReadOnlyList<StatedFields> marks = top.Items("marks");
        Dictionary<string, double> least = [];
        foreach (StatedFields mark in marks)
        {
            double stretch = mark.Number("stretchLimitPercent");
            StatedFields plane = mark.Needed("plane");
            StatedFields roll = mark.Needed("roll");
            foreach (StatedFields choice in new[] { plane, roll })
            {
                Choice(choice, width);
                Limits(limits, stretch, choice);
            }

            string curve = mark.Text("curve") ?? string.Empty;
            double felt = plane.Number("planeSquareMetres");
            plane.Keep(felt <= least.GetValueOrDefault(curve, double.PositiveInfinity) + Rise, "planeSquareMetres", "rises with the limit");
            least[curve] = felt;
        }

        RollYield.OneMass([top.Needed("given"), .. marks.SelectMany(mark => new[] { mark.Needed("plane"), mark.Needed("roll") })]);
    }

    private static void Choice(StatedFields choice, double width)
    {
        FlatShape shape = FlatShape.Of(choice.Rows("outline", 2));
        choice.Same("panelAreaMm2", shape.AreaMm2, shape.AreaRoom);
        RollYield.Check(choice, width, choice.Number("panelAreaMm2"));

        // A lattice cannot be denser than its panels.
        choice.Keep(
            choice.Number("planeSquareMetres") > 2e-3 * choice.Number("panelAreaMm2"), "planeSquareMetres",
            "is less than the panels' area");
    }

    private static void Limits(StatedFields limits, double stretch, StatedFields choice)
    {
        AtMost(choice, "maxStretchPercent", stretch);
        AtMost(choice, "maxCompressionPercent", limits.Optional("maxCompressionPercent"));
        AtMost(choice, "largestGapMm", limits.Optional("mostGapMm"));
        AtLeast(choice, "leastRadiusMm", limits.Optional("leastRadiusMm"));
        AtLeast(choice, "leastRunMm", limits.Optional("leastRunMm"));
    }

    private static void AtMost(StatedFields choice, string field, double? limit)
    {
        if (limit is { } most && choice.Optional(field) is { } value)
        {
            choice.Keep(value <= most + Slack, field, "is above its limit");
        }
    }

    private static void AtLeast(StatedFields choice, string field, double? limit)
    {
        if (limit is { } least)
        {
            choice.Keep(choice.Number(field) >= least - Slack, field, "is below its limit");
        }
    }
}
