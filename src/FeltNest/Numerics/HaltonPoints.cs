namespace FeltNest.Numerics;

/// <summary>Points that fill a cube evenly: Halton's sequence with the digits of every place permuted at random from a seed, so that
/// dimensions of great primes are even too.</summary>
/// <remarks>J. H. Halton, <i>On the efficiency of certain quasi-random sequences of points in evaluating multi-dimensional integrals</i>,
/// Numerische Mathematik 2 (1960) 84-90; A. B. Owen, <i>A randomized Halton algorithm in R</i>, arXiv 1706.02808, 2017 (both from
/// memory).</remarks>
internal sealed class HaltonPoints
{
    // Digits that a double holds.
    private const double Least = 1e-16;

    private readonly int[] primes;
    private readonly int[][][] permuted;

    /// <param name="dimensions">Dimensions of the cube, 1 or more.</param>
    /// <param name="seed">Seed of the permutations.</param>
    public HaltonPoints(int dimensions, int seed)
    {
        Random random = new(seed);
        primes = [.. Primes().Take(dimensions)];
        permuted = [.. primes.Select(prime =>
        {
            List<int[]> places = [];
            for (double weight = 1; weight > Least; weight /= prime)
            {
                int[] digits = [.. Enumerable.Range(0, prime)];
                random.Shuffle(digits);
                places.Add(digits);
            }

            return places.ToArray();
        })];
    }

    /// <summary>A point, each of its places above 0 and below 1.</summary>
    /// <param name="index">Its number, 0 or more.</param>
    public double[] At(int index)
    {
        double[] point = new double[primes.Length];
        for (int d = 0; d < primes.Length; d++)
        {
            int prime = primes[d];
            int rest = index;
            double weight = 1.0 / prime;
            foreach (int[] digits in permuted[d])
            {
                point[d] += weight * digits[rest % prime];
                rest /= prime;
                weight /= prime;
            }

            point[d] = Math.Clamp(point[d], Least, 1 - Least);
        }

        return point;
    }

    private static IEnumerable<int> Primes()
    {
        List<int> found = [];
        for (int n = 2; ; n++)
        {
            if (found.TrueForAll(prime => n % prime != 0))
            {
                found.Add(n);
                yield return n;
            }
        }
    }
}
