using static FeltNest.InvariantText;

namespace FeltNest.Ball.Passport;

/// <summary>From the readings of a lot to the figures that a ball takes, with their spread.</summary>
internal static class PassportStudy
{
    private static readonly bool[] Senses = [true, false];

    /// <summary>Studies readings.</summary>
    /// <exception cref="InputException">Too few specimens of a test, or too few places of a strip.</exception>
    /// <exception cref="NoAnswerException">Readings that no felt gives.</exception>
    public static FeltPassport Run(FeltReadings readings, FitRange range)
    {
        FeltCurve[] curves =
        [
            .. Enum.GetValues<FeltDirection>()
                .SelectMany(direction => Senses.Select(tension => CurveFit.Of(direction, tension, readings.Strips, range)))
                .OfType<FeltCurve>(),
        ];
        FeltValues values = new();
        values.Add(FeltQuantity.Thickness, Mean(readings.Thicknesses, "thickness"));
        values.Add(FeltQuantity.MassPerArea, Mean(readings.Masses, "mass"));
        FeltValue? warp = Modulus(curves, FeltDirection.Warp);
        FeltValue? weft = Modulus(curves, FeltDirection.Weft);
        values.Add(FeltQuantity.WarpModulus, warp);
        values.Add(FeltQuantity.WeftModulus, weft);
        FeltValue? poisson = values.Add(FeltQuantity.Poisson, CurveFit.Poisson(readings.Strips, range));
        RequirePossible(warp, weft, poisson);
        double? gain = Shear(values, Modulus(curves, FeltDirection.Bias));
        FeltEdge? edge = Bent(readings, values);
        values.Add(FeltQuantity.ShrinkWarp, Shrinkage(readings.Squares, FeltDirection.Warp));
        values.Add(FeltQuantity.ShrinkWeft, Shrinkage(readings.Squares, FeltDirection.Weft));
        return new FeltPassport
        {
            Felt = readings.Felt,
            Lot = new FeltLot
            {
                Name = readings.Lot,
                Date = readings.Date,
                FromPercent = range.FromPercent,
                ToPercent = range.ToPercent,
                CurveBends = curves.Any(curve => curve.Bends),
            },
            Values = values.All,
            Curves = curves,
            ShearGain = gain,
            Edge = edge,
            Remarks = [.. values.Remarks, .. PassportWords.Remarks(readings, values.All, curves, edge)],
        };
    }

    // Adds the shear modulus where all that it follows from was read, and gives back its error for one of the bias modulus.
    private static double? Shear(FeltValues values, FeltValue? bias)
    {
        if (bias is null || !values.All.TryGetValue(FeltQuantity.WarpModulus, out FeltValue? warp)
            || !values.All.TryGetValue(FeltQuantity.WeftModulus, out FeltValue? weft)
            || !values.All.TryGetValue(FeltQuantity.Poisson, out FeltValue? poisson))
        {
            return null;
        }

        (FeltValue shear, double gain) = ShearFit.Of(warp, weft, bias, poisson);
        values.Add(FeltQuantity.ShearModulus, shear);
        return gain;
    }

    // A ratio above the root of the moduli would give energy away.
    private static void RequirePossible(FeltValue? warp, FeltValue? weft, FeltValue? poisson)
    {
        if (warp is null || weft is null || poisson is null)
        {
            return;
        }

        double most = Math.Sqrt(warp.Value / weft.Value);
        if (poisson.Value >= most)
        {
            throw new NoAnswerException(
                Invariant($"Poisson's ratio comes out at {poisson.Value:0.###}; with these moduli it is below {most:0.###}: look at ")
                    + "the narrowing read");
        }
    }

    // The neutral layer, and the edge limit, which is at the radius of that layer.
    private static FeltEdge? Bent(FeltReadings readings, FeltValues values)
    {
        FeltValue? neutral = values.Add(FeltQuantity.NeutralLayer, BySpecimen(
            readings.Wraps.Select(r => new SpecimenReading(r.Specimen, r.NeutralLayer)), "wrapped strips"));
        if (readings.Discs.Count == 0)
        {
            return null;
        }

        if (neutral is null)
        {
            throw new InputException(
                null, "discs", "need the neutral layer, whose radius their strain is of: add lines of wrapped strips");
        }

        FeltEdge edge = EdgeBracket.Of(readings.Discs, neutral.Value);
        values.Add(FeltQuantity.EdgeLimit, new FeltValue
        {
            Value = edge.FlatPercent,
            SpecimenSpread = null,
            Spread = null,
            Interval = null,
            Freedom = null,
            Specimens = readings.Discs.Count,
        });
        return edge;
    }

    private static FeltValue? Modulus(FeltCurve[] curves, FeltDirection direction) =>
        Array.Find(curves, curve => curve.Direction == direction && curve.InTension)?.Straight;

    private static FeltValue? Mean(IReadOnlyList<SpecimenReading> read, string test) => BySpecimen(read, $"lines of {test}");

    private static FeltValue? Shrinkage(IReadOnlyList<SquareReading> squares, FeltDirection direction) => BySpecimen(
        squares.Where(r => r.Direction == direction).Select(r => new SpecimenReading(r.Specimen, r.ShrinkPercent)),
        $"squares along the {EnumWord.Of(direction)}");

    // Readings of one specimen are one value: they share whatever it is off by.
    private static FeltValue? BySpecimen(IEnumerable<SpecimenReading> read, string what)
    {
        double[] means = [.. read.GroupBy(r => r.Specimen).Select(group => group.Average(r => r.Value))];
        if (means.Length == 0)
        {
            return null;
        }

        return means.Length >= SpecimenMean.Fewest
            ? SpecimenMean.Of(means)
            : throw new InputException(
                null, what,
                Invariant($"are of {means.Length} specimens; at least {SpecimenMean.Fewest} are needed for a spread"));
    }
}
