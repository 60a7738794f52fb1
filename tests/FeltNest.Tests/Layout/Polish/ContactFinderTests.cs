using FeltNest.Geometry;
using FeltNest.Layout.Polish;
using NetTopologySuite.Geometries;
using Xunit;

namespace FeltNest.Tests.Layout.Polish;

/// <summary>Contacts of parts by hand, and their least distance against NetTopologySuite.</summary>
public sealed class ContactFinderTests
{
    private static readonly Outline Square = Outline.From([new(-10, -10), new(10, -10), new(10, 10), new(-10, 10)]);

    [Fact]
    public void A_corner_before_a_side_is_seen_from_the_second_part()
    {
        // A square on its corner, left of an upright one: its corner (14.142, 0) stands before the side x = 10 seen from 30, so 20 - 14.142
        // away; the normal points to the first part.
        double corner = 10 * Math.Sqrt(2);
        Contact near = Find(Square, Math.PI / 4, Square, 0, 30, 3, 8).MinBy(c => c.Distance);
        Assert.Equal(20 - corner, near.Distance, 1e-9);
        Assert.Equal((-1, 0), (Math.Round(near.NormalX, 9), Math.Round(near.NormalY, 9)));
        Assert.Equal((corner, 0), (near.FirstX, Math.Round(near.FirstY, 9)), Near);
        Assert.Equal((-10, -3), (near.SecondX, near.SecondY), Near);

        // The other way about the corner is the second part's.
        Contact back = Find(Square, 0, Square, Math.PI / 4, -30, -3, 8).MinBy(c => c.Distance);
        Assert.Equal(
            (near.Distance, -near.NormalX, near.FirstX, near.SecondX), (back.Distance, Math.Abs(back.NormalX), back.SecondX, back.FirstX),
            (a, b) => Math.Abs(a.Item1 - b.Item1) < 1e-9 && Math.Abs(a.Item3 - b.Item3) < 1e-9);
    }

    [Fact]
    public void Corners_that_face_each_other_meet_along_the_line_between_them()
    {
        // Corners (10, 10) and (13, 14): 5 apart, the first part lies along (-0.6, -0.8).
        Contact near = Find(Square, 0, Square, 0, 23, 24, 6).MinBy(c => c.Distance);
        Assert.Equal((5, -0.6, -0.8), (Math.Round(near.Distance, 9), Math.Round(near.NormalX, 9), Math.Round(near.NormalY, 9)));
        Assert.Empty(Find(Square, 0, Square, 0, 23, 24, 4.999));
    }

    [Fact]
    public void A_corner_inside_is_as_deep_as_its_nearest_side()
    {
        // The corner (14.142, 0) of the first stands 2.142 beyond the side at 12.
        Contact deep = Find(Square, Math.PI / 4, Square, 0, 22, 3, 1).MinBy(c => c.Distance);
        Assert.Equal(12 - (10 * Math.Sqrt(2)), deep.Distance, 1e-9);
        Assert.Equal(-1, deep.NormalX, 1e-9);
    }

    [Fact]
    public void The_least_distance_of_parts_at_any_turn_is_that_of_a_second_engine()
    {
        Random random = new(3);
        Outline bone = Shapes.DogBone(2.3, 0.5, 10, 10);
        Outline hook = Shapes.Of(8, 0, 0, 4, 0, 4, 1, 1, 1, 1, 3, 0, 3);
        int apart = 0;
        for (int run = 0; run < 300; run++)
        {
            (Outline a, Outline b) = run % 2 == 0 ? (bone, hook) : (hook, bone);
            double first = 7 * random.NextDouble();
            double second = 7 * random.NextDouble();
            double x = 90 * (random.NextDouble() - 0.5);
            double y = 90 * (random.NextDouble() - 0.5);
            double distance = Polygon(a.Turned(first)).Distance(Polygon(b.Turned(second).Moved(new Point2(x, y))));
            if (distance > 0)
            {
                apart++;
                Assert.Equal(distance, Find(a, first, b, second, x, y, distance + 3).Min(c => c.Distance), 1e-9);
                Assert.Empty(Find(a, first, b, second, x, y, distance - 1e-6));
            }
        }

        Assert.InRange(apart, 100, 299);
    }

    private static bool Near((double X, double Y) a, (double X, double Y) b) => Math.Abs(a.X - b.X) + Math.Abs(a.Y - b.Y) < 1e-9;

    private static List<Contact> Find(Outline first, double turn, Outline second, double secondTurn, double x, double y, double margin)
    {
        List<Contact> contacts = [];
        ContactFinder.Find(new PosedOutline(first, turn), new PosedOutline(second, secondTurn), x, y, margin, contacts);
        return contacts;
    }

    private static Polygon Polygon(Outline outline) =>
        new(new LinearRing([.. outline.Points.Append(outline.Points[0]).Select(p => new Coordinate(p.X, p.Y))]));
}
