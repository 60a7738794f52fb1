using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Tests.Geometry;
using Xunit;

namespace FeltNest.Tests.Layout;

/// <summary>Densities of the plane against published and derived values.</summary>
public sealed class PlaneLatticeTests
{
    // Regular octagon: J. Baez, AMS Visual Insight, 2014: (4 + 4 sqrt 2)/(5 + 4 sqrt 2).
    [Fact]
    public void The_octagon_reaches_its_published_lattice_density() => Expect(Shapes.Polygon(8, 50), 0.9061637, 1e-6);

    // Smoothed octagon: (8 - 4 sqrt 2 - ln 2)/(2 sqrt 2 - 1), K. Reinhardt 1934, as told by J. Baez, AMS Visual Insight, 2014; its corners
    // are arcs of the hyperbola (sqrt 2 - 1)^2 x^2 - y^2 = 1/sqrt 2 about the octagon's corner (2, 0) with its centre at (2 + sqrt 2, 0)
    // (from memory; checked here by where arcs and sides meet).
    [Fact]
    public void The_smoothed_octagon_reaches_its_published_lattice_density()
    {
        double l = Math.Sqrt(2) - 1;
        double m = Math.Pow(0.5, 0.25);
        double end = Math.Log(2) / 4;
        Assert.Equal(0, (m * Math.Sinh(end)) - (Math.Tan(3 * Math.PI / 8) * ((m / l * Math.Cosh(end)) - 2)), 1e-12);
        Point2[] corner =
        [
            .. Enumerable.Range(-12, 25)
                .Select(i => -end * i / 12)
                .Select(t => new Point2((m / l * Math.Cosh(t)) - 2 - Math.Sqrt(2), m * Math.Sinh(t))),
        ];
        Outline part = Outline.From(Enumerable.Range(0, 8).SelectMany(k => corner.Select(p => (p * 35).Turned(Math.PI * k / 4))));
        Expect(part, 0.9024142, 1e-4);
    }

    // An ellipse packs as its circle does.
    [Fact]
    public void A_fine_ellipse_reaches_the_hexagonal_density() =>
        Expect(
            Outline.From(
                Enumerable.Range(0, 360).Select(i => new Point2(80 * Math.Cos(Math.PI * i / 180), 30 * Math.Sin(Math.PI * i / 180)))),
                0.9068997, 2e-4);

    // Any convex part reaches sqrt(3)/2 with half-turns (G. and W. Kuperberg, Discrete Comput. Geom. 5, 1990, from memory).
    [Theory, Trait("tier", "long")]
    [InlineData(new double[] { 0, 0, 4, 0, 1, 3 })]
    [InlineData(new double[] { 0, 0, 5, 0, 6, 2, 2, 4 })]
    [InlineData(new double[] { 0, 0, 3, -1, 6, 1, 5, 4, 1, 4 })]
    public void Convex_parts_pack_at_least_as_densely_as_the_theorem_says(double[] corners)
    {
        RollLayout layout = Shapes.Lay(Shapes.Request(Shapes.Of(15, corners), 600, effort: 2));
        Assert.InRange(layout.Search.PlaneUtilisationPercent, 100 * Math.Sqrt(3) / 2, 100 + 1e-6);
    }

    // Circle: pi/sqrt 12, L. Fejes Toth 1943. The inscribed 360-gon is lighter than its circle by 5e-5 and packs no better than it.
    [Fact]
    public void A_fine_circle_reaches_the_hexagonal_density() => Expect(Shapes.Polygon(360, 50), 0.9068997, 1.5e-4);

    // Pentagon in two orientations: (5 - sqrt 5)/3, G. and W. Kuperberg, Discrete Comput. Geom. 5, 1990.
    [Fact]
    public void The_pentagon_with_its_turned_self_reaches_the_published_density() =>
        Expect(Shapes.Polygon(5, 50).Centred(), 0.9213107, 1e-5, effort: 5);

    // Two fused unit discs: the densest packing of translates is a lattice (Zbl 0606.52004); formula derived: (2 pi - 2 acos d + 2 d sqrt(1
    // - d^2))/(2 sqrt 3 + 2 d sqrt(4 - d^2)).
    [Theory]
    [InlineData(0.25, 0.9270280)]
    [InlineData(0.5, 0.9359741)]
    public void Fused_discs_reach_the_derived_density(double d, double density) => Expect(Shapes.FusedDiscs(d, 180, 50), density, 2e-4);

    // Greek cross, densest packings are lattices: Atkinson, Jiao, Torquato, Phys. Rev. E 86, 031302, 2012; determinant derived.
    [Theory]
    [InlineData(0.2, 0.9)]
    [InlineData(0.25, 28.0 / 29)]
    [InlineData(1.0 / 3, 1)]
    [InlineData(0.5, 1)]
    public void The_cross_reaches_the_derived_density(double arm, double density) => Expect(Shapes.Cross(arm, 50), density, 1e-6);

    [Theory, Trait("tier", "long")]
    [InlineData("plus")]
    [InlineData("L tromino")]
    [InlineData("I-beam")]
    [InlineData("trapezoid dog bone")]
    [InlineData("bow-tie hexagon")]
    [InlineData("chevron")]
    public void Shapes_that_tile_fill_the_plane(string name)
    {
        Outline part = Tiles.Named(name).Part;
        Expect(Outline.From(part.Points.Select(p => p * 20)).Centred(), 1, 1e-6);
    }

    // Conway criterion: D. Schattschneider, Math. Magazine 53, 1980, 224-233.
    [Theory, Trait("tier", "long")]
    [InlineData("dart", new double[] { 0, 0, 4, 2, 0, 4, 1, 2 })]
    [InlineData("U pentomino", new double[] { 0, 0, 3, 0, 3, 2, 2, 2, 2, 1, 1, 1, 1, 2, 0, 2 })]
    [InlineData("T pentomino", new double[] { 1, 0, 2, 0, 2, 2, 3, 2, 3, 3, 0, 3, 0, 2, 1, 2 })]
    public void Shapes_that_tile_with_a_half_turn_fill_the_plane(string name, double[] corners)
    {
        Assert.NotEmpty(name);
        Expect(Shapes.Of(20, corners), 1, 1e-5, effort: 5);
    }

    // Filleted dog bones, found by an independent search whose branch and bound left nothing denser by 1e-5 (own derivation); 96 steps an
    // arc differ by about 2e-5.
    [Theory, Trait("tier", "long")]
    [InlineData(2, 0.3, 0.887068)]
    [InlineData(2, 0.7, 0.906154)]
    [InlineData(1.8, 0.6, 0.907920)]
    public void The_filleted_dog_bone_reaches_the_searched_density(double d, double w, double density) =>
        Expect(Shapes.DogBone(d, w, 96, 25), density, 1e-4);

    private static void Expect(Outline part, double density, double tolerance, int effort = 2)
    {
        RollLayout layout = Shapes.Lay(Shapes.Request(part, 1000, effort: effort));
        Assert.Equal(density, layout.Search.PlaneUtilisationPercent / 100, tolerance);
    }
}
