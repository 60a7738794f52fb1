using FeltNest.Die;
using FeltNest.Die.Gang;
using FeltNest.Die.Make;
using FeltNest.Die.Order;
using FeltNest.Geometry;
using NetTopologySuite.Geometries;
using Xunit;

namespace FeltNest.Tests.Die.Make;

public sealed class EjectionTests
{
    [Fact]
    public void The_strip_in_a_plate_stands_off_the_rule_and_fills_a_narrow_cavity()
    {
        // A plate of 40 x 20 with the rule's body in the waste: half a millimetre off leaves 39 x 19, narrower than two strips of 12.7. The
        // corners are rounded to half the least width.
        DieDesign design = DieDesigner.Run(
            new GangRequest(DieCases.Plates, 0, DieCases.Order, DieCases.Press(110, 200), null), TestContext.Current.CancellationToken);
        IReadOnlyList<Point2> strip = EjectionOutlines.Of(design).Rings[0];
        double radius = (2.4 - (2 * 0.5)) / 2;

        Assert.Equal((39 * 19) - ((4 - Math.PI) * radius * radius), Area(strip), 0.05 * 116);
        Assert.Empty(EjectionOutlines.Of(design).Empty);
    }

    [Fact, Trait("tier", "long")]
    public void Outlines_keep_clear_of_every_rule_and_lie_on_the_board()
    {
        foreach (DieDesign design in new[]
        {
            DieCases.Panels,
            DieCases.Common(DieCases.Bricks),
            DieDesigner.Run(
                new GangRequest(DieCases.TwoParts, 0, DieCases.Order, DieCases.Press(300, 200), null),
                TestContext.Current.CancellationToken),
        })
        {
            EjectionPieces pieces = EjectionOutlines.Of(design);
            DieRule rule = design.Request.Order.Rule;
            Polygon[] cavities =
            [
                .. design.Gang.Cavities.Select(c =>
                    Ring([
                        .. design.Edges[c.Placed.Part]!.Arcs
                            .ContainingPolygon(0.001).Points
                            .Select(p => p.Turned(double.DegreesToRadians(c.Placed.AngleDeg)) + new Point2(c.Placed.XMm, c.Placed.YMm)),
                    ])),
            ];
            double clear = design.Request.Order.Ejection.ClearMm;
            double inPanel = rule.ThicknessMm - rule.BodyInWasteMm;

            Assert.True(pieces.Rings.Count > design.Gang.Cavities.Count);
            foreach (Polygon ring in pieces.Rings.Select(Ring))
            {
                Assert.True(
                    ring.EnvelopeInternal.MinX >= 0
                        && ring.EnvelopeInternal.MinY >= 0
                        && ring.EnvelopeInternal.MaxX <= design.Gang.BoardLengthMm
                        && ring.EnvelopeInternal.MaxY <= design.Gang.BoardWidthMm);
                foreach (Polygon cavity in cavities)
                {
                    bool within = cavity.Contains(ring.InteriorPoint) && cavity.Contains(ring.Shell.StartPoint);
                    Assert.True(ring.Shell.Distance(cavity.Shell) >= (within ? inPanel : rule.BodyInWasteMm) + clear - 0.025);
                    Assert.True(within || !cavity.Intersects(ring.Shell));
                }
            }
        }
    }

    [Fact]
    public void A_gap_of_two_rules_and_the_room_wanted_has_a_strip_and_a_narrower_one_has_none()
    {
        // Two plates 4 mm apart: rules of 0.71 leave 2.58 mm. The strip between them is there at 2.4 and not at 2.7.
        Assert.True(Between(2.4));
        Assert.False(Between(2.7));
    }

    [Fact]
    public void A_cavity_too_small_for_any_ejection_is_told()
    {
        DieDesign design = DieDesigner.Run(
            new GangRequest(
                DieCases.Plates, 0, DieCases.Order with { Ejection = new DieEjection { Material = "rubber", RoomMm = 25, ClearMm = 2 } },
                DieCases.Press(110, 200), null),
                TestContext.Current.CancellationToken);

        Assert.Contains(design.Notes, n => n.Text.StartsWith("no ejection has room in cavities 1, 2", StringComparison.Ordinal));
    }

    private static bool Between(double room)
    {
        DieDesign design = DieDesigner.Run(
            new GangRequest(
                DieCases.Plates, 0,
                DieCases.Order with { Ejection = new DieEjection { Material = "rubber", RoomMm = room, ClearMm = 0.5 } },
                DieCases.Press(200, 200), 4));
        DieCavity[] row = [.. design.Gang.Cavities.Take(2)];
        Point middle = new((row[0].Placed.XMm + row[1].Placed.XMm) / 2, row[0].Placed.YMm);
        return EjectionOutlines.Of(design).Rings
            .Select(Ring)
            .Aggregate(0, (count, ring) => count + (ring.Contains(middle) ? 1 : 0)) % 2 == 1;
    }

    private static double Area(IReadOnlyList<Point2> ring) => Ring(ring).Area;

    private static Polygon Ring(IReadOnlyList<Point2> ring) =>
        new(new LinearRing([.. ring.Append(ring[0]).Select(p => new Coordinate(p.X, p.Y))]));
}
