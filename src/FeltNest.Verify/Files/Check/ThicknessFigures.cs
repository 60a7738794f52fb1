namespace FeltNest.Files.Check;

/// <summary>What a panel's file says of the felt's thickness, from the file alone.</summary>
internal static class ThicknessFigures
{
    // A panel solved to lie on a limit may pass it by so much, per cent.
    private const double Slack = 0.01;

    private static readonly string[] Names = ["glue-face", "middle", "nap-face"];

    /// <summary>Checks the figures.</summary>
    /// <param name="thickness">The figures.</param>
    /// <param name="sphere">The fitted sphere.</param>
    /// <param name="strain">Strain of the neutral layer.</param>
    public static void Check(StatedFields thickness, StatedFields sphere, StatedFields strain)
    {
        Layers(thickness, sphere.Number("radiusMm"), strain);

        double area = sphere.Number("panelAreaMm2");
        double bending = thickness.Number("bendingNPerMm");
        thickness.Same("bendingNmm", bending * area, Shares.Room(bending * area));
        double edge = thickness.Number("edgeStrainNPerMm");
        thickness.Same("edgeTackNPerMm", bending + edge, Shares.Room(bending + edge));
        thickness.Keep(bending >= 0 && edge >= 0, "edgeTackNPerMm", "is made of an energy below 0");
        double place = thickness.Number("edgeStrainS");
        thickness.Keep(place is >= 0 and < 2 * Math.PI, "edgeStrainS", "is no seam parameter from 0 to 2 pi");

        Puckers(thickness, strain.Number("maxCompressionPercent"));
    }

    // Lengths on spheres about one centre are as their radii.
    private static void Layers(StatedFields thickness, double radius, StatedFields strain)
    {
        IReadOnlyList<StatedFields> layers = thickness.Items("layers");
        thickness.Keep(layers.Select(layer => layer.Text("layer")).SequenceEqual(Names), "layers", $"are not {string.Join(", ", Names)}");
        if (layers.Count != Names.Length)
        {
            return;
        }

        double thick = thickness.Number("thicknessMm");
        double glue = layers[0].Number("fromNeutralMm");
        layers[1].Same("fromNeutralMm", glue + (thick / 2), Shares.Room(thick));
        layers[2].Same("fromNeutralMm", glue + thick, Shares.Room(thick));
        foreach (StatedFields layer in layers)
        {
            double here = radius + layer.Number("fromNeutralMm");
            double stretched = ((100 + strain.Number("maxStretchPercent")) * here / radius) - 100;
            double pushed = 100 - ((100 - strain.Number("maxCompressionPercent")) * here / radius);
            layer.Same("maxStretchPercent", stretched, Shares.Room(100));
            layer.Same("maxCompressionPercent", pushed, Shares.Room(100));
        }
    }

    private static void Puckers(StatedFields thickness, double compression)
    {
        double? limit = thickness.Optional("puckerLimitPercent");
        thickness.Same("puckerLimitKept", limit is null || compression <= limit + Slack);
        double share = thickness.Number("puckerSharePercent");
        thickness.Keep(share is >= 0 and <= 100, "puckerSharePercent", "is no share of the panel");
        thickness.Keep(share == 0 || compression > limit, "puckerSharePercent", "is above 0 though no place passes the limit");
    }
}
