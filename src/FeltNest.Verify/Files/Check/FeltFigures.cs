namespace FeltNest.Files.Check;

/// <summary>A measured felt: spreads of its figures, the shear modulus from strips at 0, 45 and 90 degrees, the bends, and the edge limit
/// from its discs.</summary>
internal static class FeltFigures
{
    // Above this chance a bend is taken for noise.
    private const double Level = 0.05;

    // Chance left to puckering at the size of discs that all lay flat.
    private const double Doubt = 0.05;

    // What the shear modulus follows from, beside strips at 45 degrees.
    private static string[] Parts => ["warpModulusNPerMm", "weftModulusNPerMm", "poisson"];

    // Figures with a spread.
    private static readonly string[] Figures =
    [
        "thicknessMm", "massPerAreaGsm", "neutralLayer", "cureShrinkWarpPercent", "cureShrinkWeftPercent", "shearModulusNPerMm",
        "maxEdgeCompressionPercent", .. Parts,
    ];

    /// <summary>Checks the file.</summary>
    public static void Check(StatedFields top)
    {
        StatedFields lot = top.Needed("lot");
        lot.Keep(lot.Number("fromPercent") < lot.Number("toPercent"), "toPercent", "is not above fromPercent");
        StatedFields values = top.Needed("values");
        foreach (StatedFields figure in Figures.Select(values.Inner).OfType<StatedFields>())
        {
            Spread(figure);
        }

        IReadOnlyList<StatedFields> curves = top.Items("curves");
        bool bends = false;
        double? bias = null;
        foreach (StatedFields curve in curves)
        {
            bends |= Curve(curve);
            (string way, double straight) = (curve.Text("direction") ?? string.Empty, curve.Needed("straightNPerMm").Number("value"));
            bool tension = curve.Flag("inTension");
            bias = tension && way == "bias" ? straight : bias;
            Taken(values, tension ? way : string.Empty, straight);
        }

        lot.Same("curveBends", bends);
        Shear(top, values, bias);
        Edge(top, values);
    }

    // What the ball takes along warp and weft is the straight law of the strips that were pulled there.
    private static void Taken(StatedFields values, string way, double straight)
    {
        if (way is "warp" or "weft" && values.Inner($"{way}ModulusNPerMm") is { } taken)
        {
            taken.Same("value", straight, Shares.Room(straight));
        }
    }

    private static void Shear(StatedFields top, StatedFields values, double? bias)
    {
        StatedFields? shear = values.Inner("shearModulusNPerMm");
        bool parts = Array.TrueForAll(Parts, name => values.Inner(name) is not null);
        if (!parts || bias is not { } slant)
        {
            top.Keep(shear is null, "values.shearModulusNPerMm", "follows from strips and a narrowing that are not there");
            top.Same("shearGain", null, 0);
            return;
        }

        double warp = values.Needed("warpModulusNPerMm").Number("value");
        double weft = values.Needed("weftModulusNPerMm").Number("value");
        double poisson = values.Needed("poisson").Number("value");
        double other = poisson * weft / warp;
        double found = 1 / ((4 / slant) - ((1 - poisson) / warp) - ((1 - other) / weft));
        shear?.Same("value", found, Shares.Room(found));
        top.Same("shearGain", 4 / slant * found, Shares.Room(found));
    }

    private static bool Curve(StatedFields curve)
    {
        StatedFields straight = curve.Needed("straightNPerMm");
        foreach (StatedFields figure in (StatedFields[])[straight, curve.Needed("initialNPerMm"), curve.Needed("bend")])
        {
            Spread(figure);
        }

        double strips = straight.Number("specimens");
        double chance = curve.Number("chance");
        curve.Keep(chance is >= 0 and <= 1, "chance", "is outside 0 to 1");
        curve.Same("freedom", curve.Number("points") - (2 * strips) - 1, 0);
        Ratio(curve);
        bool bends = curve.Flag("bends");
        curve.Keep(!bends || chance < Level, "bends", "says true, and noise alone may give as much");
        return bends;
    }

    // F of the bend from the squares that both laws leave; readings without noise have none.
    private static void Ratio(StatedFields curve)
    {
        double straight = curve.Number("straightRmsNPerMm");
        double bent = curve.Number("bentRmsNPerMm");
        double ratio = curve.Number("ratio");
        curve.Keep(bent >= 0 && bent <= straight + Shares.Room(straight), "bentRmsNPerMm", "is above that of the straight law");
        curve.Keep(ratio >= 0, "ratio", "is below 0");
        if (ratio > 0 && bent > 0)
        {
            double found = ((straight * straight) - (bent * bent)) / (bent * bent) * curve.Number("freedom");
            curve.Same("ratio", found, Shares.Room(found));
        }
    }

    private static void Edge(StatedFields top, StatedFields values)
    {
        StatedFields? limit = values.Inner("maxEdgeCompressionPercent");
        if (top.Inner("edge") is not { } edge)
        {
            top.Keep(limit is null, "edge", "is null, and values hold an edge limit");
            return;
        }

        double flat = Strain(edge.Number("flatDiscMm"), edge.Number("flatRadiusMm"));
        edge.Same("flatPercent", flat, Shares.Room(flat));
        limit?.Same("value", flat, Shares.Room(flat));
        double? puckered = edge.Optional("puckeredDiscMm") is { } disc ? Strain(disc, edge.Number("puckeredRadiusMm")) : null;
        edge.Same("puckeredPercent", puckered, Shares.Room(flat));
        edge.Keep(puckered is null || puckered > flat, "puckeredPercent", "is not above flatPercent");
        double share = 100 * (1 - Math.Pow(Doubt, 1 / edge.Number("flatDiscs")));
        edge.Same("puckerShareAtMostPercent", share, Shares.Room(share));
        edge.Flag("contradict");
    }

    // Compression of the edge of a disc on a sphere, per cent.
    private static double Strain(double disc, double radius) => 100 * disc * disc / (32 * radius * radius);

    private static void Spread(StatedFields figure)
    {
        double specimens = figure.Number("specimens");
        figure.Keep(specimens >= 1, "specimens", "is below 1");
        if (figure.Optional("spread") is not { } spread)
        {
            bool none = figure.Optional("specimenSpread") is null && figure.Optional("interval") is null
                && figure.Optional("freedom") is null;
            figure.Keep(none, "spread", "is left out where another spread is told");
            return;
        }

        figure.Keep(spread >= 0, "spread", "is below 0");
        figure.Keep(figure.Number("interval") >= spread, "interval", "is below the spread");
        double freedom = figure.Number("freedom");
        figure.Keep(freedom >= 1, "freedom", "is below 1");
        if (figure.Optional("specimenSpread") is { } own)
        {
            figure.Same("freedom", specimens - 1, 0);
            figure.Same("spread", own / Math.Sqrt(specimens), Shares.Room(own));
        }
    }
}
