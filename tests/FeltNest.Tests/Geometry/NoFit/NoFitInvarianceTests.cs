using FeltNest.Geometry;
using FeltNest.Geometry.NoFit;
using NetTopologySuite.Geometries;
using Xunit;

namespace FeltNest.Tests.Geometry.NoFit;

/// <summary>No-fit regions of parts that are turned, mirrored, scaled, given more points on the same sides, or drawn as badly as can
/// be.</summary>
public sealed class NoFitInvarianceTests
{
    [Fact]
    public void A_region_turns_mirrors_and_grows_with_its_parts()
    {
        for (int seed = 0; seed < Runs.Count(70); seed++)
        {
            (Outline standing, Outline moving, Random random) = Pair(seed);
            double plain = NoFitRegion.Of(standing, moving).FilledArea;
            double angle = 7 * random.NextDouble();
            double size = Math.Pow(10, (4 * random.NextDouble()) - 2);

            Assert.Equal(plain, Of(standing, moving, p => p.Turned(angle)), 1e-9 * plain);
            Assert.Equal(plain, Of(standing, moving, p => new Point2(-p.X, p.Y)), 1e-9 * plain);
            Assert.Equal(plain, Of(standing, moving, p => p * size) / (size * size), 1e-9 * plain);
        }
    }

    [Fact]
    public void More_points_on_the_same_sides_change_nothing()
    {
        for (int seed = 0; seed < Runs.Count(35); seed++)
        {
            (Outline standing, Outline moving, _) = Pair(seed);
            double plain = NoFitRegion.Of(standing, moving).FilledArea;

            Assert.Equal(
                plain, NoFitRegion.Of(RoughOutlines.Densified(standing, 3), RoughOutlines.Densified(moving, 2)).FilledArea, 1e-9 * plain);
        }
    }

    [Theory]
    [MemberData(nameof(RoughOutlines.Names), MemberType = typeof(RoughOutlines))]
    public void A_part_drawn_as_badly_as_can_be_has_the_region_that_its_overlaps_give(string name)
    {
        Outline part = RoughOutlines.Of(name);
        Outline half = part.Turned(Math.PI);
        foreach (Outline moving in new[] { part, half })
        {
            NoFitRegion region = NoFitRegion.Of(part, moving);
            Polygon still = PiecewiseUnion.ToPolygon(part.Points);
            Random random = new(1);
            double reach = 2 * part.Points.Max(p => p.Length);
            for (int i = 0; i < 60; i++)
            {
                Point2 place = new Point2(reach * random.NextDouble(), 0).Turned(7 * random.NextDouble());
                Assert.Equal(still.Relate(PiecewiseUnion.ToPolygon(moving.Moved(place).Points), "T********"), region.Forbids(place));
            }
        }
    }

    [Fact]
    public void Points_given_twice_and_points_on_a_side_leave_area_and_centroid_as_they_are()
    {
        for (int seed = 0; seed < Runs.Count(70); seed++)
        {
            Outline part = Pair(seed).Standing;
            Outline dense = RoughOutlines.Densified(part, 4);
            Outline doubled = Outline.From(part.Points.SelectMany(p => new[] { p, p }));

            Assert.Equal(part.Points, doubled.Points);
            Assert.Equal(part.Area, dense.Area, 1e-12 * part.Perimeter * part.Perimeter);
            Assert.Equal(0, (part.Centroid - dense.Centroid).Length, 1e-9 * part.Perimeter);
        }
    }

    // J. Steiner 1840: a convex part grown by d has its area + its perimeter times d + pi d2; the rounding in 16 chords a quarter loses a
    // part in a thousand of the last term.
    [Fact]
    public void A_convex_part_grows_by_steiners_formula_however_it_lies()
    {
        for (int seed = 0; seed < Runs.Count(40); seed++)
        {
            Random random = new(seed);
            Outline part = RandomOutlines.Next(random, 0, 30).Turned(7 * random.NextDouble());
            double by = 5 * random.NextDouble();
            double grown = Outline.From(Assert.Single(PolygonSets.Offset(part.Points, by))).Area;

            Assert.InRange(
                grown, part.Area + (part.Perimeter * by) + (0.998 * Math.PI * by * by),
                part.Area + (part.Perimeter * by) + (Math.PI * by * by) + 1e-9);
        }
    }

    private static (Outline Standing, Outline Moving, Random Random) Pair(int seed)
    {
        Random random = new(seed);
        return (RandomOutlines.Next(
            random, seed % RandomOutlines.Kinds, 20), RandomOutlines.Next(random, random.Next(RandomOutlines.Kinds), 20), random);
    }

    private static double Of(Outline standing, Outline moving, Func<Point2, Point2> placed) =>
        NoFitRegion.Of(Outline.From(standing.Points.Select(placed)), Outline.From(moving.Points.Select(placed))).FilledArea;
}
