namespace FeltNest.Files.Check;

/// <summary>Seam families side by side: outlines, limits and yields.</summary>
internal static class SeamsFigures
{
    /// <summary>Checks the file.</summary>
    public static void Check(StatedFields top)
    {
        StatedFields roll = top.Needed("roll");
        IReadOnlyList<StatedFields> seams = top.Items("seams");
        HashSet<string?> curves = [];
        foreach (StatedFields seam in seams)
        {
            seam.Keep(curves.Add(seam.Text("curve")), "curve", "stands here twice");
            FeltLimits.Check(top.Needed("limits"), seam);
            FlatShape shape = FlatShape.Of(seam.Rows("outline", 2));
            shape.CheckSize(seam);
            seam.Same("panelAreaMm2", shape.AreaMm2, shape.AreaRoom);
            RollYield.Check(seam, roll.Number("widthMm"), seam.Number("panelAreaMm2"));
        }

        RollYield.OneMass(seams);
    }
}
