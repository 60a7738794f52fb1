using FeltNest.Geometry;
using Xunit;

namespace FeltNest.Tests.Geometry;

/// <summary>Parts that nearly are none: hair-thin waists, cusps, teeth of a nanometre, sides that nearly touch, corners that hardly turn.
/// About 40 mm across, centred.</summary>
internal static class RoughOutlines
{
    public static TheoryData<string> Names =>
        [
            "waist of a micrometre", "waist of a nanometre", "cusps", "teeth of a nanometre", "slot of a nanometre",
            "corners that hardly turn", "sides of a nanometre", "far corner",
        ];

    internal static Outline Of(string name) => (name switch
    {
        "waist of a micrometre" => Waisted(1e-3),
        "waist of a nanometre" => Waisted(1e-6),
        "cusps" => Star(4, i => i % 2 == 0 ? 20 : 4, 20),
        "teeth of a nanometre" => Plate([.. Enumerable.Range(0, 21).Select(i => new Point2(20 - (2 * i), 10 + (i % 2 * 1e-6)))]),
        "slot of a nanometre" => Plate([new(20, 10), new(1e-6, 10), new(1e-6, -5), new(0, -5), new(0, 10), new(-20, 10)]),
        "corners that hardly turn" => Plate([.. Enumerable.Range(0, 41).Select(i => new Point2(20 - i, 10 + (1e-9 * i * (40 - i))))]),
        "sides of a nanometre" => Plate([new(20, 10), new(1e-6, 10), new(0, 10), new(-1e-6, 10 + 1e-6), new(-20, 10)]),
        "far corner" => Plate([new(20, 10), new(19, 10), new(0, 20), new(-19.999_999, 10), new(-20, 10)]),
        _ => throw new ArgumentException(name),
    }).Centred();

    /// <summary>The same part with each side given in so many equal pieces.</summary>
    internal static Outline Densified(Outline part, int pieces) => Outline.From(part.Points.SelectMany((p, i) =>
        Enumerable.Range(0, pieces).Select(k => p + ((part.Points[(i + 1) % part.Points.Count] - p) * ((double)k / pieces)))));

    // A plate of 40 by 20 whose upper side is given from right to left.
    private static Outline Plate(Point2[] top) => Outline.From([new(-20, -10), new(20, -10), .. top]);

    private static Outline Waisted(double waist) => Outline.From(
    [
        new(-20, -8), new(-2, -8), new(-2, -waist / 2), new(2, -waist / 2), new(2, -8), new(20, -8), new(20, 8), new(2, 8),
        new(2, waist / 2), new(-2, waist / 2), new(-2, 8), new(-20, 8),
    ]);

    // Sides that bend inwards so far that they meet at the tips in no angle at all.
    private static Outline Star(int tips, Func<int, double> radius, int steps) =>
        Outline.From(Enumerable.Range(0, 2 * tips).SelectMany(i => Enumerable.Range(0, steps).Select(k =>
    {
        double share = (double)k / steps;
        double along = (1 - Math.Cos(Math.PI * share)) / 2;
        return new Point2(radius(i) + ((radius(i + 1) - radius(i)) * Math.Sqrt(i % 2 == 0 ? along : along * along)), 0)
            .Turned(Math.PI * (i + share) / tips);
    })));
}
