namespace FeltNest.Die.Bend;

/// <summary>Fits the springback of a rule to test bends by least squares.</summary>
internal static class SpringbackFit
{
    // Yield over modulus is looked for up to this: four times that of a spring steel of 2000 N/mm2 on 206,000.
    private const double Most = 0.04;
    private const int Looks = 4000;
    private const int Halvings = 80;

    /// <summary>Fewest test bends.</summary>
    public const int Fewest = 3;

    /// <summary>The fit; the tests are at least <see cref="Fewest"/>, and none gained angle.</summary>
    public static Springback Of(IReadOnlyList<BendTest> tests, double thicknessMm)
    {
        double Left(double y) => tests.Sum(t => Square(t.AngleGotDeg - (t.AngleSetDeg * Springback.ShareLeft(
            t.InsideRadiusMm + (thicknessMm / 2), y, thicknessMm))));

        // The best of many looks, then its neighbourhood by sections of three.
        int best = Enumerable.Range(1, Looks).MinBy(i => Left(Most * i / Looks));
        double low = Most * (best - 1) / Looks;
        double high = Most * (best + 1) / Looks;
        for (int i = 0; i < Halvings; i++)
        {
            double one = low + ((high - low) / 3);
            double two = high - ((high - low) / 3);
            (low, high) = Left(one) <= Left(two) ? (low, two) : (one, high);
        }

        double found = (low + high) / 2;
        return new Springback
        {
            ThicknessMm = thicknessMm,
            YieldOverModulus = found,
            ScatterDeg = Math.Sqrt(Left(found) / tests.Count),
            Tests = tests,
        };
    }

    private static double Square(double value) => value * value;
}
