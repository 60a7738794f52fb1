namespace FeltNest.Files.Check;

/// <summary>A ball fitted to a measured outline: residuals from the deviations, values as they go into the ball.</summary>
internal static class ProvenFigures
{
    // The least rms distance at which outlines are told apart, mm.
    private const double LeastTellableMm = 0.05;

    /// <summary>Checks the file.</summary>
    public static void Check(StatedFields top)
    {
        IReadOnlyList<double[]> off = top.Rows("deviations", 3);
        top.Keep(off.Count > 0, "deviations", "is empty");
        StatedFields residuals = top.Needed("residuals");
        if (off.Count > 0)
        {
            double rms = Math.Sqrt(off.Average(d => d[2] * d[2]));
            double[] greatest = off.MaxBy(d => Math.Abs(d[2]))!;
            residuals.Same("rmsMm", rms, Shares.Room(rms));
            residuals.Same("greatestMm", greatest[2], Shares.Room(greatest[2]));
            residuals.Same("greatestU", greatest[0], Shares.Room(greatest[0]));
            residuals.Same("greatestV", greatest[1], Shares.Room(greatest[1]));
            top.Same("tellableMm", Math.Max(LeastTellableMm, rms), Shares.Room(rms));
        }

        StatedFields ball = top.Needed("ballFields");
        StatedFields.Grow(top.Items("families"), "rmsMm");
        foreach (StatedFields value in top.Items("values"))
        {
            string[] names = (value.Text("field") ?? string.Empty).Split('.');
            StatedFields? room = names.Length == 2 ? ball.Inner(names[0]) : null;
            value.Keep(room is not null, "field", "is not among ballFields");
            room?.Same(names[1], value.Number("value"), Shares.Room(value.Number("value")));
            value.Keep(value.Optional("spread") is null or >= 0, "spread", "is below 0");
        }
    }
}
