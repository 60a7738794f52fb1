namespace FeltNest.Rolls;

/// <summary>The four-point score of a roll after ASTM D5430 (steps of length and the limit of 4 points a yard from secondary inspection
/// pages; the standard itself was not at hand).</summary>
/// <remarks>A fault up to 3 in long counts 1, up to 6 in 2, up to 9 in 3, longer 4; no running yard counts more than 4, and a fault that
/// runs on counts 4 in every yard it is in. Length is the greater side of its box or its diameter. Holes, which the method counts by their
/// own steps, cannot be told from other faults here.</remarks>
internal sealed record FourPointScore
{
    /// <summary>Points of the whole roll.</summary>
    public required int Points { get; init; }

    /// <summary>Points per 100 square yards of cuttable cloth.</summary>
    public required double Per100SquareYards { get; init; }

    /// <summary>Points per 100 m2 of cuttable cloth.</summary>
    public required double Per100SquareMetres { get; init; }

    private const double InchMm = 25.4;
    private const double YardMm = 914.4;
    private const int MostPerYard = 4;

    /// <summary>The score of a roll.</summary>
    /// <param name="roll">The roll.</param>
    /// <param name="trimsMm">Both edge trims together, mm: cuttable width is the mean width less these.</param>
    public static FourPointScore Of(FeltRoll roll, double trimsMm)
    {
        Dictionary<int, int> yards = [];
        foreach (RollFault fault in roll.Faults)
        {
            int first = (int)Math.Floor(fault.XMm / YardMm);
            int last = (int)Math.Floor((fault.XMm + fault.LengthMm) / YardMm);
            bool runs = fault.LengthMm > YardMm;
            for (int yard = first; yard <= (runs ? last : first); yard++)
            {
                int points = runs ? MostPerYard : PointsOf(Math.Max(fault.LengthMm, fault.WidthMm));
                yards[yard] = Math.Min(MostPerYard, yards.GetValueOrDefault(yard) + points);
            }
        }

        return Of(yards.Values.Sum(), roll.LengthMm, roll.MeanWidthMm - trimsMm);
    }

    /// <summary>The score of so many points on so much cuttable cloth.</summary>
    public static FourPointScore Of(int points, double lengthMm, double widthMm) =>
        new()
        {
            Points = points,
            Per100SquareYards = points * 100 * YardMm * YardMm / (lengthMm * widthMm),
            Per100SquareMetres = points * 100e6 / (lengthMm * widthMm),
        };

    /// <summary>Points of one fault by its length, mm.</summary>
    public static int PointsOf(double lengthMm) => lengthMm switch
    {
        <= 3 * InchMm => 1,
        <= 6 * InchMm => 2,
        <= 9 * InchMm => 3,
        _ => 4,
    };
}
