namespace FeltNest.Die.Proof;

/// <summary>What may hide between measured points: how far the edge can lie off where nothing was measured.</summary>
/// <remarks>Own derivation. Along the edge the distance changes by no more than the steepness. So between two points that lie a and b off,
/// with s of edge between them, it reaches at most (a + b + steepness x s) / 2 outside, and as far inside with the signs turned. A longer
/// stretch without a point can hide more, and a stretch of a fifth of the edge hides more than any tolerance.</remarks>
internal sealed record HiddenBetween
{
    /// <summary>Greatest distance that may be anywhere, mm, without sign; no less than what was measured.</summary>
    public required double FarthestMm { get; init; }

    /// <summary>Longest stretch without a point, mm.</summary>
    public required double WidestGapMm { get; init; }

    /// <summary>Length along the edge to the middle of that stretch, mm.</summary>
    public required double WidestGapAt { get; init; }

    /// <summary>What hides between points round a closed edge.</summary>
    /// <param name="points">Length along the edge and distance off it of each point, in any order.</param>
    /// <param name="perimeter">Length of the edge.</param>
    /// <param name="steepness">Steepest change of the distance along the edge, mm a mm.</param>
    public static HiddenBetween Of(IReadOnlyList<(double Along, double Off)> points, double perimeter, double steepness)
    {
        (double Along, double Off)[] round = [.. points.OrderBy(p => p.Along)];
        double farthest = round.Max(p => Math.Abs(p.Off));
        (double widest, double at) = (0, 0);
        for (int i = 0; i < round.Length; i++)
        {
            (double along, double off) = round[i];
            (double next, double nextOff) = round[(i + 1) % round.Length];
            double gap = i + 1 < round.Length ? next - along : next + perimeter - along;
            farthest = Math.Max(farthest, (Math.Abs(off + nextOff) + (steepness * gap)) / 2);
            if (gap > widest)
            {
                (widest, at) = (gap, along + (gap / 2));
            }
        }

        return new HiddenBetween { FarthestMm = farthest, WidestGapMm = widest, WidestGapAt = at };
    }
}
