using FeltNest.Die.Gang;
using FeltNest.Geometry;
using Xunit;

namespace FeltNest.Tests.Die.Gang;

public sealed class EdgeDistanceTests
{
    private static readonly Point2[] Square = [new(0, 0), new(10, 0), new(10, 10), new(0, 10)];

    [Fact]
    public void Without_play_it_is_the_distance_of_the_outlines()
    {
        Assert.Equal(3, EdgeDistance.Least(Square, Moved(13, 2), default, 100).Distance, 12);
        Assert.Equal(5, EdgeDistance.Least(Square, Moved(13, 14), default, 100).Distance, 12);
    }

    [Fact]
    public void Play_takes_its_share_along_and_across()
    {
        Assert.Equal(2.5, EdgeDistance.Least(Square, Moved(13, 2), new(0.5, 9), 100).Distance, 12);
        Assert.Equal(Math.Sqrt(4 + 9), EdgeDistance.Least(Square, Moved(13, 14), new(1, 1), 100).Distance, 12);
        Assert.Equal(0, EdgeDistance.Least(Square, Moved(13, 2), new(3.1, 0), 100).Distance, 12);
    }

    // The judge: the outline moved to every place of a fine grid over the box of play. It can only be larger, and by no more than half a
    // step of the grid.
    [Fact]
    public void No_place_in_the_box_of_play_is_nearer_and_one_is_as_near()
    {
        Random random = new(5);
        for (int n = 0; n < 20; n++)
        {
            Point2[] star =
            [
                .. Enumerable.Range(0, 9).Select(k => new Point2(4 + (3 * random.NextDouble()), 0).Turned(k * 2 * Math.PI / 9)),
            ];
            Point2[] other =
            [
                .. star.Select(p => p.Turned(random.NextDouble()) + new Point2(13 + (3 * random.NextDouble()), 4 * random.NextDouble())),
            ];
            Point2 play = new(0.6, 0.9);
            double judged = double.PositiveInfinity;
            const int steps = 12;
            for (int i = 0; i <= steps; i++)
            {
                for (int k = 0; k <= steps; k++)
                {
                    Point2 by = new(((2.0 * i / steps) - 1) * play.X, ((2.0 * k / steps) - 1) * play.Y);
                    judged = Math.Min(judged, EdgeDistance.Least(star, [.. other.Select(p => p + by)], default, 100).Distance);
                }
            }

            double found = EdgeDistance.Least(star, other, play, 100).Distance;
            Assert.InRange(found, judged - (play.Length / steps), judged + 1e-9);
        }
    }

    private static Point2[] Moved(double x, double y) => [.. Square.Select(p => p + new Point2(x, y))];
}
