namespace FeltNest.Die.Bend;

/// <summary>How a rule springs back, fitted to the shop's test bends.</summary>
/// <remarks>R_i/R_f = 4 X^3 - 3 X + 1 with X = R_i Y / (E t): R_i the radius of the body's middle as formed, R_f as it is left, Y the yield
/// stress, E Young's modulus, t the thickness (S. Kalpakjian, S. R. Schmid, <em>Manufacturing Engineering and Technology</em>; formula as
/// reprinted on a public page). The length of the middle stays, so angles go as radii turned over. Y/E is what is fitted.</remarks>
public sealed record Springback
{
    /// <summary>Thickness of the rule tested, mm.</summary>
    public required double ThicknessMm { get; init; }

    /// <summary>Yield stress over Young's modulus, fitted.</summary>
    public required double YieldOverModulus { get; init; }

    /// <summary>Root of the mean square of what the fit leaves, degrees.</summary>
    public required double ScatterDeg { get; init; }

    /// <summary>The test bends.</summary>
    public required IReadOnlyList<BendTest> Tests { get; init; }

    // Above this no set is left: the strip springs back flat.
    private const double NoSet = 0.5;

    /// <summary>Share of the angle that is left of a bend formed to a radius of the body's middle, 0 to 1.</summary>
    public static double ShareLeft(double middleRadiusMm, double yieldOverModulus, double thicknessMm)
    {
        double x = middleRadiusMm * yieldOverModulus / thicknessMm;
        return x >= NoSet ? 0 : (4 * x * x * x) - (3 * x) + 1;
    }

    /// <summary>To what a bend is formed to be left with an angle and a radius.</summary>
    public BendSetting For(double turnDeg, double insideRadiusMm)
    {
        double wanted = insideRadiusMm + (ThicknessMm / 2);
        double low = 0;
        double high = Math.Min(wanted, NoSet * ThicknessMm / YieldOverModulus);
        for (int i = 0; i < 100; i++)
        {
            double middle = (low + high) / 2;
            bool tooWide = middle >= wanted * ShareLeft(middle, YieldOverModulus, ThicknessMm);
            (low, high) = tooWide ? (low, middle) : (middle, high);
        }

        double inside = high - (ThicknessMm / 2);
        return new BendSetting { TurnDeg = turnDeg * wanted / high, InsideRadiusMm = inside, Tested = Reaches(inside) };
    }

    // A radius counts as tested between the least and the greatest of the formers, and a tenth beyond.
    private bool Reaches(double insideRadiusMm) =>
        insideRadiusMm >= 0.9 * Tests.Min(t => t.InsideRadiusMm) && insideRadiusMm <= 1.1 * Tests.Max(t => t.InsideRadiusMm);
}
