namespace FeltNest.Files.Check;

/// <summary>A study of waists: limits, yields and the best one.</summary>
internal static class WaistFigures
{
    /// <summary>Checks the file.</summary>
    public static void Check(StatedFields top)
    {
        StatedFields roll = top.Needed("roll");
        IReadOnlyList<StatedFields> waists = top.Items("waists");
        StatedFields.Grow(waists, "waistMm");
        foreach (StatedFields point in waists)
        {
            FeltLimits.Check(top.Needed("limits"), point);
            RollYield.Check(point, roll.Number("widthMm"), point.Number("panelAreaMm2"));
        }

        RollYield.OneMass(waists);
        StatedFields? best = waists
            .Where(p => p.Flag("stretchAllowed") && p.Flag("edgeAllowed"))
            .MinBy(p => (p.Needed("perThousandBalls").Optional("squareMetres") ?? double.PositiveInfinity,
                p.Number("edgeMaxCompressionPercent")));
        top.Same("bestWaistMm", best?.Number("waistMm"), 0);
        if (best is not null)
        {
            top.Keep(top.Number("flatFromMm") <= best.Number("waistMm"), "flatFromMm", "is above the waist marked");
            top.Keep(top.Number("flatToMm") >= best.Number("waistMm"), "flatToMm", "is below the waist marked");
        }
    }
}
