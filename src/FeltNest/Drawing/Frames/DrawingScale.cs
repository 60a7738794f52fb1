namespace FeltNest.Drawing.Frames;

/// <summary>A scale of ISO 5455.</summary>
/// <param name="Factor">Paper over real.</param>
/// <param name="Words">As written on a drawing.</param>
internal readonly record struct DrawingScale(double Factor, string Words)
{
    /// <summary>The recommended scales, largest first.</summary>
    public static IReadOnlyList<DrawingScale> All { get; } =
    [
        new(50, "50:1"), new(20, "20:1"), new(10, "10:1"), new(5, "5:1"), new(2, "2:1"), new(1, "1:1"), new(0.5, "1:2"), new(0.2, "1:5"),
        new(0.1, "1:10"), new(0.05, "1:20"), new(0.02, "1:50"),
        new(0.01, "1:100"),
    ];

    /// <summary>The largest scale, at most <paramref name="most"/>, at which a thing fits a room; the smallest of all where none
    /// does.</summary>
    public static DrawingScale Fitting(double width, double height, double roomWidth, double roomHeight, double most) =>
        All.Where(s => s.Factor <= most && width * s.Factor <= roomWidth && height * s.Factor <= roomHeight)
            .DefaultIfEmpty(All[^1])
            .First();
}
