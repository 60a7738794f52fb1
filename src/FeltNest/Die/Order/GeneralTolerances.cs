namespace FeltNest.Die.Order;

/// <summary>General tolerances of ISO 2768-1:1989 for lengths: fine and medium as several independent pages reproduce them; coarse and very
/// coarse (coarse from memory).</summary>
internal static class GeneralTolerances
{
    // Upper ends of the ranges, mm.
    private static readonly double[] Ends = [3, 6, 30, 120, 400, 1000, 2000, 4000];

    private static readonly Dictionary<string, double?[]> Table = new()
    {
        ["f"] = [0.05, 0.05, 0.1, 0.15, 0.2, 0.3, 0.5, null],
        ["m"] = [0.1, 0.1, 0.2, 0.3, 0.5, 0.8, 1.2, 2],
        ["c"] = [0.2, 0.3, 0.5, 0.8, 1.2, 2, 3, 4],
        ["v"] = [null, 0.5, 1, 1.5, 2.5, 4, 6, 8],
    };

    /// <summary>Plus-minus tolerance of a length, mm; null below 0.5 mm, beyond 4 m and where the class has none: it must then be
    /// stated.</summary>
    public static double? Linear(string grade, double lengthMm)
    {
        int at = Array.FindIndex(Ends, end => lengthMm <= end);
        return lengthMm < 0.5 || at < 0 ? null : Table[grade][at];
    }
}
