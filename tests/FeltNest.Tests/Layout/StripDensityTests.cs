using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Tests.Geometry;
using FeltNest.Yield;
using Xunit;

namespace FeltNest.Tests.Layout;

/// <summary>Strips whose best utilisation is known.</summary>
public sealed class StripDensityTests
{
    // Hexagonal rows of circles of diameter 1 in a strip W = 1 + (k - 1) sqrt 3/2 cannot be beaten (Groemer's bound, 1960, as stated in an
    // encyclopaedia of mathematics).
    [Theory]
    [InlineData(1, .785398)]
    [InlineData(2, .841787)]
    [InlineData(3, .862427)]
    [InlineData(4, .873131)]
    [InlineData(5, .879682)]
    [InlineData(6, .884104)]
    [InlineData(7, .887290)]
    [InlineData(8, .889695)]
    public void Circles_in_k_hexagonal_rows_reach_the_known_density(int rows, double density)
    {
        // A polygon of 720 corners round the circle: heavier than it by 6.3e-6 of its area, and by the same share too wide, so a hair of
        // width is added.
        const double diameter = 60;
        double outside = 1 / Math.Cos(Math.PI / 720);
        Outline circle = Shapes.Polygon(720, diameter / 2 * outside);
        double width = diameter * outside * (1 + ((rows - 1) * Math.Sqrt(3) / 2));
        double found = YieldAccount.Of(Shapes.Lay(Shapes.Request(circle, width))).UtilisationPercent / 100;
        Assert.InRange(found, density - 2e-5, density + 2e-5);
    }

    // Discs of diameter 1 in a strip 1
    // <= W <= 1 + sqrt 3/2: 1/sqrt(1 - (W - 1)^2) a unit length (Z. Fueredi, Discrete Comput. Geom. 6, 1991, 95-106, from memory).
    [Theory]
    [InlineData(1)]
    [InlineData(1.3)]
    [InlineData(1.6)]
    [InlineData(1.8)]
    public void Discs_in_a_narrow_strip_zigzag_as_closely_as_is_known_to_be_possible(double width)
    {
        const double diameter = 60;
        double outside = 1 / Math.Cos(Math.PI / 720);
        RollLayout layout = Shapes.Lay(Shapes.Request(Shapes.Polygon(720, diameter / 2 * outside), diameter * outside * width));
        Assert.Equal(1 / Math.Sqrt(1 - ((width - 1) * (width - 1))), layout.PanelsPerMetre / 1000 * diameter, 1e-4);
    }

    // Own derivation: k rows of a tile with vectors (2L, 0), (L, 2b) in a strip of width 2(b+g) + (k-1) 2b, axis along the roll: k b/(k b +
    // g), here b = 0.7, g = 0.3.
    [Theory, Trait("tier", "long")]
    [InlineData("cosine", 1, .7)]
    [InlineData("cosine", 2, 14.0 / 17)]
    [InlineData("cosine", 5, 3.5 / 3.8)]
    [InlineData("cosine", 10, 7 / 7.3)]
    [InlineData("trapezoid", 1, .7)]
    [InlineData("trapezoid", 2, 14.0 / 17)]
    [InlineData("trapezoid", 5, 3.5 / 3.8)]
    [InlineData("trapezoid", 10, 7 / 7.3)]
    public void Tiling_dog_bones_reach_the_derived_utilisation(string shape, int rows, double utilisation)
    {
        const double scale = 20;
        Outline part = shape == "cosine"
            ? Tiles.CosineDogBone(96, scale)
            : Outline.From(Tiles.Named("trapezoid dog bone").Part.Points.Select(p => p * scale));
        double width = scale * (2 + ((rows - 1) * 1.4));
        double along = YieldAccount.Of(Shapes.Lay(Shapes.Request(part, width, warp: 0))).UtilisationPercent / 100;
        Assert.Equal(utilisation, along, 1e-6);
        double free = YieldAccount.Of(Shapes.Lay(Shapes.Request(part, width))).UtilisationPercent / 100;
        Assert.True(free >= utilisation - 1e-6, $"free tilt gives {free}");
    }

    // k rows at one common angle, no gap, free width: lower bounds of an independent search (own derivation); k = 1 is exact.
    [Theory, Trait("tier", "long")]
    [InlineData(0.3, 1, .822512)]
    [InlineData(0.3, 2, .85236)]
    [InlineData(0.3, 3, .86334)]
    [InlineData(0.3, 4, .86904)]
    [InlineData(0.3, 6, .87484)]
    [InlineData(0.3, 8, .87783)]
    [InlineData(0.7, 1, .851900)]
    [InlineData(0.7, 2, .87686)]
    [InlineData(0.7, 3, .88601)]
    [InlineData(0.7, 4, .89077)]
    [InlineData(0.7, 6, .89563)]
    [InlineData(0.7, 8, .89821)]
    public void Filleted_dog_bones_reach_the_searched_utilisation_at_the_best_width(double waist, int rows, double utilisation)
    {
        Outline part = Shapes.DogBone(2, waist, 96, 25);
        double best = BestWidth.Utilisation(part, rows);
        Assert.True(best >= utilisation - 3e-4, $"best {best:F6}");
    }

    // Round blanks D = 50, web = edge = 2.5 (Press Tools, ch. 6, MSME Tool Room training text); utilisation derived.
    [Theory]
    [InlineData(55, .679998)]
    [InlineData(100.4663, .744526)]
    [InlineData(145.9327, .768846)]
    public void Staggered_round_blanks_with_web_reach_the_derived_utilisation(double width, double utilisation)
    {
        Outline blank = Shapes.Polygon(720, 25);
        double found = YieldAccount.Of(Shapes.Lay(Shapes.Request(blank, width, gap: 2.5, edge: 2.5))).UtilisationPercent / 100;
        Assert.InRange(found, utilisation - 3e-5, utilisation + 3e-5);
    }
}
