using FeltNest.Numerics;
using static FeltNest.InvariantText;

namespace FeltNest.Ball.Passport;

/// <summary>The law of the strips of one direction, in tension or in compression, from the places within the range of strain.</summary>
/// <remarks>Each strip has a shift of its own. The bend is tested by F: squares left by straight lines, strip by strip, against those left
/// when one bend, alike for all strips, goes with them.</remarks>
internal static class CurveFit
{
    /// <summary>Fewest places of a strip within the range: a line, a bend, and one that tells the noise.</summary>
    public const int FewestPlaces = 4;

    // Squares left below this share of the greatest force are rounding, not noise.
    private const double Rounding = 1e-9;

    /// <summary>The law; null where no strip was read in that direction and sense.</summary>
    /// <exception cref="InputException">Too few strips, or too few places of one.</exception>
    public static FeltCurve? Of(FeltDirection direction, bool tension, IReadOnlyList<StripReading> all, FitRange range)
    {
        IGrouping<string, StripReading>[] strips =
        [
            .. all.Where(r => r.Direction == direction && r.ExtensionMm != 0 && r.ExtensionMm > 0 == tension).GroupBy(r => r.Specimen),
        ];
        if (strips.Length == 0)
        {
            return null;
        }

        string words = Words(direction, tension);
        if (strips.Length < SpecimenMean.Fewest)
        {
            throw new InputException(
                null, words,
                $"has {strips.Length} strips; at least {SpecimenMean.Fewest} are needed for a spread, the standards ask for 5");
        }

        (double X, double Y)[][] places = [.. strips.Select(strip => Places(strip, range))];
        return Fitted(direction, tension, places);
    }

    /// <summary>Poisson's ratio warp to weft: narrowing for a strain of 1, strip by strip; null where no narrowing was read.</summary>
    /// <exception cref="InputException">Too few strips, or too few places of one.</exception>
    public static FeltValue? Poisson(IReadOnlyList<StripReading> all, FitRange range)
    {
        IGrouping<string, StripReading>[] strips = [.. all.Where(r => r.NarrowingMm is not null).GroupBy(r => r.Specimen)];
        if (strips.Length == 0)
        {
            return null;
        }

        if (strips.Length < SpecimenMean.Fewest)
        {
            throw new InputException(
                null, "narrowingMm", $"is read on {strips.Length} strips; at least {SpecimenMean.Fewest} are needed for a spread");
        }

        return SpecimenMean.Of(
        [
            .. strips.Select(strip =>
                StripLine.Of([.. Within(strip, range).Select(r => (r.Strain, r.NarrowingMm!.Value / r.WidthMm))]).Slope),
        ]);
    }

    /// <summary>How messages call a direction and sense: <c>warp in tension</c>.</summary>
    public static string Words(FeltDirection direction, bool tension) =>
        $"{EnumWord.Of(direction)} in {(tension ? "tension" : "compression")}";

    private static FeltCurve Fitted(FeltDirection direction, bool tension, (double X, double Y)[][] places)
    {
        StripLine[] lines = [.. places.Select(StripLine.Of)];
        int points = places.Sum(strip => strip.Length);
        double greatest = places.Max(strip => strip.Max(p => Math.Abs(p.Y)));
        double straight = lines.Sum(line => line.LeftSquares);
        double row = lines.Sum(line => line.BowRow);
        double common = lines.Sum(line => line.Bow * line.BowRow) / row;
        double taken = common * common * row;
        double bent = Math.Max(0, straight - taken);
        int freedom = points - (2 * lines.Length) - 1;
        bool rounding = straight <= points * Rounding * greatest * Rounding * greatest;
        double ratio = rounding ? 0 : Math.Min(double.MaxValue, taken * freedom / bent);
        FeltValue bow = SpecimenMean.Of([.. lines.Select(line => line.Bow)]);
        FeltValue initial = SpecimenMean.Of([.. lines.Select(line => line.SlopeAtZero)]);
        return new FeltCurve
        {
            Direction = direction,
            InTension = tension,
            Points = points,
            Straight = SpecimenMean.Of([.. lines.Select(line => line.Slope)]),
            StraightRms = Math.Sqrt(straight / points),
            Initial = initial,
            Bend = bow with
            {
                Value = bow.Value / initial.Value,
                SpecimenSpread = bow.SpecimenSpread / Math.Abs(initial.Value),
                Spread = bow.Spread / Math.Abs(initial.Value),
                Interval = bow.Interval / Math.Abs(initial.Value),
            },
            BentRms = Math.Sqrt(bent / points),
            Ratio = ratio,
            Freedom = freedom,
            Chance = FDistribution.Tail(ratio, 1, freedom),
        };
    }

    private static (double X, double Y)[] Places(IGrouping<string, StripReading> strip, FitRange range) =>
        [.. Within(strip, range).Select(r => (r.Strain, r.NPerMm))];

    private static StripReading[] Within(IGrouping<string, StripReading> strip, FitRange range)
    {
        StripReading[] places = [.. strip.Where(r => range.Holds(r.Strain))];
        int apart = places.Select(r => r.ExtensionMm).Distinct().Count();
        return apart >= FewestPlaces
            ? places
            : throw new InputException(
                null, $"strip '{strip.Key}'",
                Invariant($"has {apart} places between {range.FromPercent:0.##} and {range.ToPercent:0.##} % of strain; at least ")
                    + $"{FewestPlaces} are needed");
    }
}
