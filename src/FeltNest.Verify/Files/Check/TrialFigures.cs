namespace FeltNest.Files.Check;

/// <summary>Readings of a trial wrap: the fitted gap from its waves, what is moved and what is left, and what follows from each
/// test.</summary>
internal static class TrialFigures
{
    // Above this chance a test has found nothing.
    private const double Level = 0.05;

    // Amounts of one ball.
    private static readonly string[] Own = ["along", "across", "turn", "unlike"];

    /// <summary>Checks the file.</summary>
    public static void Check(StatedFields top)
    {
        bool panel = Test(top.Needed("panel"));
        Test(top.Needed("placing"));
        Test(top.Needed("unlike"));
        if (top.Inner("ballsDiffer") is { } differ)
        {
            Test(differ);
        }

        (int Order, bool Sine, double Mm)[] waves = [.. top.Items("parts").Select(part =>
            ((int)part.Number("order"), part.Flag("sine"), Amount(part)))];
        StatedFields? seam = top.Inner("seam");
        double move = seam is null ? 0 : Amount(seam);
        bool moved = seam is not null && Math.Abs(move) > seam.Number("intervalMm");
        top.Keep(seam is null == (top.Number("waists") == 0), "waists", "has to be above 0 exactly where a seam stands");
        top.Keep(
            top.Inner("corrected") is not null == (panel || moved), "corrected", "has to stand there exactly where something is found");
        IReadOnlyList<StatedFields> balls = top.Items("balls");
        // The amounts themselves follow from the readings, which the file does not hold.
        foreach (StatedFields amount in balls.SelectMany(ball => Own.Select(ball.Needed)))
        {
            Spread(amount);
        }

        IReadOnlyList<StatedFields> places = top.Items("places");
        top.Keep(
            places.Sum(place => place.Number("readings")) == balls.Sum(ball => ball.Number("readings")), "places",
            "hold other readings than the balls");
        for (int i = 0; i < places.Count; i++)
        {
            double s = 2 * Math.PI * i / places.Count;
            places[i].Same("place", i + 1, 0);
            places[i].Same("s", s, Shares.Room(s));
            double off = waves.Sum(wave => wave.Mm * Shape(wave.Order, wave.Sine, s));
            double mended = panel ? off : 0;
            double shifted = moved ? move * Math.Cos(2 * s) : 0;
            Place(places[i], top.Number("aimMm") + off, mended, shifted);
        }
    }

    private static void Place(StatedFields place, double fitted, double mended, double shifted)
    {
        place.Same("fittedMm", fitted, Shares.Room(fitted));
        place.Same("correctionMm", (mended / 2) - shifted, Shares.Room(mended));
        place.Same("leftMm", place.Optional("readMm") - mended, Shares.Room(mended));
        place.Keep(place.Number("fittedIntervalMm") >= 0, "fittedIntervalMm", "is below 0");
        place.Keep(place.Number("correctionIntervalMm") >= 0, "correctionIntervalMm", "is below 0");
    }

    private static double Shape(int order, bool sine, double s) => sine ? Math.Sin(order * s) : Math.Cos(order * s);

    private static double Amount(StatedFields amount)
    {
        Spread(amount);
        return amount.Number("amountMm");
    }

    private static void Spread(StatedFields amount)
    {
        double spread = amount.Number("spreadMm");
        amount.Keep(spread >= 0, "spreadMm", "is below 0");
        amount.Keep(amount.Number("intervalMm") >= spread, "intervalMm", "is below the spread");
    }

    private static bool Test(StatedFields test)
    {
        double chance = test.Number("chance");
        test.Keep(chance is >= 0 and <= 1, "chance", "is outside 0 to 1");
        test.Keep(test.Number("ratio") >= 0 && test.Number("above") >= 1 && test.Number("below") >= 1, "ratio", "is no ratio of squares");
        test.Same("found", chance < Level);
        return chance < Level;
    }
}
