using FeltNest.Geometry;

namespace FeltNest.Die.Proof;

/// <summary>Finds which measured ring is which cavity, by their middles alone.</summary>
/// <remarks>The two rings farthest from each other are tried as every pair of cavities that lies as far apart. Each trial lays all rings;
/// the one whose rings all come nearest to cavities of their own is taken.</remarks>
internal static class CavityMatch
{
    // Middles of a die that was made lie within this of where they are wanted, mm: far more than any tolerance.
    private const double Near = 5;

    /// <summary>The cavity of each ring, by its place in the list of cavities.</summary>
    /// <exception cref="InputException">The rings do not lie as cavities of the die do.</exception>
    public static IReadOnlyList<int> Of(IReadOnlyList<Point2> rings, IReadOnlyList<Point2> cavities)
    {
        if (rings.Count > cavities.Count)
        {
            throw new InputException($"holds {rings.Count} rings where the die has {cavities.Count} cavities");
        }

        if (rings.Count == 1)
        {
            return cavities.Count == 1
                ? [0]
                : throw new InputException("holds one ring: which cavity it is has to be said, in a list of cavity,u,v");
        }

        (int a, int b) = Farthest(rings);
        double apart = (rings[b] - rings[a]).Length;
        (double Sum, int[] Match)? best = null;
        for (int i = 0; i < cavities.Count; i++)
        {
            for (int k = 0; k < cavities.Count; k++)
            {
                if (i == k || Math.Abs((cavities[k] - cavities[i]).Length - apart) > Near)
                {
                    continue;
                }

                RigidMove pose = PlaceFit.Squares([(rings[a], cavities[i]), (rings[b], cavities[k])]);
                if (Matched(rings, cavities, pose) is { } found && (best is null || found.Sum < best.Value.Sum - 1e-9))
                {
                    best = found;
                }
            }
        }

        return best?.Match ?? throw new InputException(
            "does not lie as the cavities of the die do: is it this die, seen from the nap side, with all rings in one frame?");
    }

    private static (double Sum, int[] Match)? Matched(IReadOnlyList<Point2> rings, IReadOnlyList<Point2> cavities, RigidMove pose)
    {
        int[] match = new int[rings.Count];
        HashSet<int> taken = [];
        double sum = 0;
        for (int r = 0; r < rings.Count; r++)
        {
            Point2 at = pose.Apply(rings[r]);
            int near = Enumerable.Range(0, cavities.Count).MinBy(c => (cavities[c] - at).Length);
            double off = (cavities[near] - at).Length;
            if (off > 2 * Near || !taken.Add(near))
            {
                return null;
            }

            match[r] = near;
            sum += off * off;
        }

        return (sum, match);
    }

    private static (int A, int B) Farthest(IReadOnlyList<Point2> rings)
    {
        (double Far, int A, int B) best = (-1, 0, 0);
        for (int i = 0; i < rings.Count; i++)
        {
            for (int k = i + 1; k < rings.Count; k++)
            {
                double far = (rings[k] - rings[i]).Length;
                best = far > best.Far ? (far, i, k) : best;
            }
        }

        return (best.A, best.B);
    }
}
