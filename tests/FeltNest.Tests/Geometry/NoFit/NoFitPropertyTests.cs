using FeltNest.Geometry;
using FeltNest.Geometry.NoFit;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Overlay;
using NetTopologySuite.Operation.OverlayNG;
using Xunit;

namespace FeltNest.Tests.Geometry.NoFit;

/// <summary>The traced no-fit region against the long way round and against overlaps asked place by place.</summary>
public sealed class NoFitPropertyTests
{
    [Theory, Trait("tier", "long")]
    [InlineData(0, 60)]
    [InlineData(1, 60)]
    [InlineData(2, 60)]
    [InlineData(3, 60)]
    [InlineData(4, 60)]
    [InlineData(5, 12)]
    [InlineData(6, 60)]
    public void Random_parts_have_the_region_slits_and_points_that_all_convex_pieces_give(int kind, int runs)
    {
        int unjudged = 0;
        for (int seed = 0; seed < Runs.Count(runs); seed++)
        {
            (Outline standing, Outline moving) = Pair(new Random(seed), kind);
            NoFitRegion region = NoFitRegion.Of(standing, moving);
            PiecewiseRegion plain;
            NetTopologySuite.Geometries.Geometry difference;
            try
            {
                plain = PiecewiseRegion.Of(standing, moving);
                difference = OverlayNGRobust.Overlay(Polygons(region), PiecewiseUnion.Of(standing, moving), SpatialFunction.SymDifference);
            }
            catch (TopologyException)
            {
                // The judge's own union fails on some parts with slots of a millionth.
                unjudged++;
                continue;
            }

            Assert.True(difference.Area <= 1e-9 * plain.FilledArea, $"kind {kind} seed {seed}: {difference.Area} of {plain.FilledArea}");
            Assert.Equal(plain.FilledArea, region.FilledArea, 1e-9 * plain.FilledArea);
            Assert.Equal(Length(plain.Slits), Length(region.Slits), 1e-7);
            Assert.Equal(plain.IsolatedPoints.Count, region.IsolatedPoints.Count);
        }

        Assert.True(unjudged <= Runs.Count(runs) / 10, $"{unjudged} not judged");
    }

    [Fact]
    public void A_place_is_forbidden_exactly_where_the_interiors_meet()
    {
        int forbidden = 0;
        int allowed = 0;
        for (int seed = 0; seed < Runs.Count(40); seed++)
        {
            Random random = new(seed);
            (Outline standing, Outline moving) = Pair(random, seed % RandomOutlines.Kinds);
            NoFitRegion region = NoFitRegion.Of(standing, moving);
            Point2[] corners = [.. region.Rings.SelectMany(r => r)];
            (double lowX, double highX, double lowY, double highY) = (corners.Min(p => p.X), corners.Max(p => p.X), corners.Min(
                p => p.Y), corners.Max(p => p.Y));
            Polygon still = PiecewiseUnion.ToPolygon(standing.Points);
            for (int i = 0; i < 40; i++)
            {
                Point2 place = new(lowX + ((highX - lowX) * random.NextDouble()), lowY + ((highY - lowY) * random.NextDouble()));
                bool overlaps = still.Relate(PiecewiseUnion.ToPolygon(moving.Moved(place).Points), "T********");
                Assert.Equal(overlaps, region.Forbids(place));
                (forbidden, allowed) = overlaps ? (forbidden + 1, allowed) : (forbidden, allowed + 1);
            }
        }

        Assert.True(forbidden > 300 && allowed > 100, $"{forbidden} forbidden, {allowed} allowed");
    }

    // The region of a part against itself is its own mirror through the origin: exchanging the two parts reverses every place.
    [Fact]
    public void Exchanging_the_parts_turns_the_region_by_half_a_turn()
    {
        for (int seed = 0; seed < Runs.Count(70); seed++)
        {
            (Outline standing, Outline moving) = Pair(new Random(seed), seed % RandomOutlines.Kinds);
            NoFitRegion one = NoFitRegion.Of(standing, moving);
            NoFitRegion other = NoFitRegion.Of(moving, standing);
            Assert.Equal(one.FilledArea, other.FilledArea, 1e-9 * one.FilledArea);
            Assert.All(one.Rings.SelectMany(r => r).Take(50), p => Assert.False(other.Forbids(-p)));
        }
    }

    // A chamber behind a narrow channel holds its own shape in one place alone.
    [Theory]
    [InlineData(0)]
    [InlineData(0.7)]
    [InlineData(2.5)]
    public void A_pocket_of_exactly_the_part_allows_one_point_at_any_tilt(double tilt)
    {
        Outline chamber = Outline.From([new(-3, -2), new(3, -2), new(2, 2), new(-2, 3)]);
        Outline block = Outline.From(
        [
            new(-9, -9), new(-0.5, -9), new(-0.5, -2), new(-3, -2), new(-2, 3), new(2, 2), new(3, -2), new(0.5, -2), new(0.5, -9),
            new(9, -9), new(9, 9), new(-9, 9),
        ]);
        NoFitRegion region = NoFitRegion.Of(block.Turned(tilt), chamber.Turned(tilt));
        Point2 only = Assert.Single(region.IsolatedPoints);
        Assert.Equal(0, only.Length, 1e-9);
        Assert.False(region.Forbids(only));
        Assert.True(region.Forbids(only + new Point2(1e-6, 0)));
        Assert.Empty(region.Slits);
    }

    private static (Outline Standing, Outline Moving) Pair(Random random, int kind)
    {
        int most = kind == 5 ? 60 : 24;
        Outline standing = RandomOutlines.Next(random, kind, most);
        Outline moving = random.Next(3) switch
        {
            0 => standing,
            1 => standing.Turned(Math.PI),
            _ => RandomOutlines.Next(random, random.Next(RandomOutlines.Kinds), most),
        };
        double tilt = random.Next(2) * random.NextDouble() * 6;
        return (standing.Turned(tilt), moving.Turned(tilt));
    }

    private static NetTopologySuite.Geometries.Geometry Polygons(NoFitRegion region)
    {
        NetTopologySuite.Geometries.Geometry shells = OverlayNGRobust.Union(PiecewiseUnion.ToPolygon(region.Rings[0]).Factory.BuildGeometry(
            [.. region.Rings.Where(IsShell).Select(PiecewiseUnion.ToPolygon)]));
        foreach (Point2[] hole in region.Rings.Where(r => !IsShell(r)))
        {
            shells = OverlayNGRobust.Overlay(shells, PiecewiseUnion.ToPolygon(hole), SpatialFunction.Difference);
        }

        return shells;
    }

    private static bool IsShell(Point2[] ring) => ring.Select((p, i) => p.Cross(ring[(i + 1) % ring.Length])).Sum() > 0;

    private static double Length(IEnumerable<NoFitSlit> slits) => slits.Sum(s => (s.To - s.From).Length);
}
