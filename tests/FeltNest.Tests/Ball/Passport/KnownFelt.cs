using FeltNest.Ball.Passport;

namespace FeltNest.Tests.Ball.Passport;

/// <summary>Readings made from a known felt: each specimen off by its own amount, each reading by noise.</summary>
internal sealed record KnownFelt
{
    public double Warp { get; init; } = 2.4;

    public double Weft { get; init; } = 1.8;

    public double Poisson { get; init; } = 0.28;

    public double Shear { get; init; } = 0.65;

    public double WarpBend { get; init; }

    public double NeutralLayer { get; init; } = 0.42;

    public double ShrinkWarp { get; init; } = 1.2;

    /// <summary>Standard deviation from specimen to specimen, as a share; of the bend, as a number.</summary>
    public double SpecimenShare { get; init; } = 0.02;

    /// <summary>Standard deviation of a force, N.</summary>
    public double ForceNoise { get; init; } = 0.03;

    // Modulus at 45 degrees by the turned compliance (Jones 1999, section 2.6).
    public double Bias => 4 / ((1 / Warp) + (1 / Weft) + (1 / Shear) - (2 * Poisson / Warp));

    /// <summary>A felt without any noise.</summary>
    public static KnownFelt Exact { get; } = new() { SpecimenShare = 0, ForceNoise = 0 };

    /// <summary>Readings by a seed.</summary>
    public FeltReadings Readings(int seed)
    {
        Random random = new(seed);
        List<StripReading> strips =
        [
            .. Strips(FeltDirection.Warp, Warp, WarpBend, random), .. Strips(FeltDirection.Weft, Weft, 0, random),
            .. Strips(FeltDirection.Bias, Bias, 0, random),
        ];
        return new FeltReadings
        {
            Felt = "known",
            Lot = "L",
            Date = "2026-03-02",
            Strips = strips,
            Wraps = [.. Enumerable.Range(0, 5).Select(i => Wrap(i, random))],
            Discs = [],
            Squares = [.. Enumerable.Range(0, 3).SelectMany(i => Square(i, random))],
            Thicknesses = [],
            Masses = [],
        };
    }

    /// <summary>Strips in compression, with a modulus of their own.</summary>
    public IEnumerable<StripReading> Pushed(double modulus, int seed)
    {
        Random random = new(seed);
        return Strips(FeltDirection.Warp, modulus, 0, random).Select(r => r with
        {
            Specimen = "block " + r.Specimen,
            ForceN = -r.ForceN,
            ExtensionMm = -r.ExtensionMm,
            NarrowingMm = null,
        });
    }

    private IEnumerable<StripReading> Strips(FeltDirection direction, double modulus, double bend, Random random)
    {
        for (int i = 0; i < 5; i++)
        {
            double own = modulus * (1 + (SpecimenShare * Normal(random)));
            double bent = bend + (SpecimenShare * 10 * Normal(random));
            double narrow = Poisson * (1 + (SpecimenShare * Normal(random)));
            double shift = 0.2 + (SpecimenShare * Normal(random));
            for (int percent = 1; percent <= 8; percent++)
            {
                double strain = percent / 100.0;
                double force = shift + (own * strain * (1 + ((bend == 0 ? 0 : bent) * strain)));
                yield return new StripReading
                {
                    Specimen = $"{direction} {i}",
                    Direction = direction,
                    GaugeMm = 200,
                    WidthMm = 50,
                    ForceN = (50 * force) + (ForceNoise * Normal(random)),
                    ExtensionMm = 200 * strain,
                    NarrowingMm = direction == FeltDirection.Warp ? (50 * narrow * strain) + (ForceNoise * Normal(random)) : null,
                };
            }
        }
    }

    private WrapReading Wrap(int i, Random random)
    {
        const double radius = 30;
        const double thick = 3.2;
        double layer = NeutralLayer + (SpecimenShare * Normal(random));
        return new WrapReading
        {
            Specimen = $"wrap {i}",
            LengthMm = 2 * Math.PI * (radius + (layer * thick)) * (1 - (100 / (24 * radius * radius))),
            WidthMm = 10,
            Shape = CoreShape.Ball,
            CoreDiameterMm = 2 * radius,
            ThicknessMm = thick,
        };
    }

    // Three pairs of marks a square, which share what the square is off by.
    private IEnumerable<SquareReading> Square(int i, Random random)
    {
        double own = ShrinkWarp + (10 * SpecimenShare * Normal(random));
        return Enumerable.Range(0, 3).Select(_ => new SquareReading
        {
            Specimen = $"square {i}",
            Direction = FeltDirection.Warp,
            BeforeMm = 350,
            AfterMm = (350 * (1 - (own / 100))) + (ForceNoise * Normal(random)),
        });
    }

    // By G. E. P. Box and M. E. Muller, Annals of Mathematical Statistics 29, 1958.
    private static double Normal(Random random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
