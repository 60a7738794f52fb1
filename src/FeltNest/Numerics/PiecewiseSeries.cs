namespace FeltNest.Numerics;

/// <summary>A function on -1 to 1 that is smooth between given places, as one Chebyshev series a piece.</summary>
internal sealed class PiecewiseSeries
{
    private readonly double[] ends;
    private readonly ChebyshevSeries[] pieces;

    /// <summary>Interpolates.</summary>
    /// <param name="joints">Places inside -1 to 1 where the function is not smooth, ascending.</param>
    /// <param name="terms">Terms of each piece.</param>
    /// <param name="function">The function; it is not asked at -1, 1 or a joint.</param>
    public PiecewiseSeries(IReadOnlyList<double> joints, int terms, Func<double, double> function)
    {
        ends = [-1, .. joints, 1];
        double[] nodes = ChebyshevSeries.Nodes(terms);
        pieces =
        [
            .. Enumerable.Range(0, ends.Length - 1)
                .Select(i => ChebyshevSeries.Through([.. nodes.Select(node => function(Middle(i) + (Half(i) * node)))])),
        ];
    }

    /// <summary>Value and first derivative; at a joint those of the piece above it.</summary>
    public (double Value, double Slope) At(double x)
    {
        int piece = 0;
        while (piece < pieces.Length - 1 && x >= ends[piece + 1])
        {
            piece++;
        }

        (double value, double slope) = pieces[piece].At((x - Middle(piece)) / Half(piece));
        return (value, slope / Half(piece));
    }

    private double Middle(int piece) => (ends[piece] + ends[piece + 1]) / 2;

    private double Half(int piece) => (ends[piece + 1] - ends[piece]) / 2;
}
