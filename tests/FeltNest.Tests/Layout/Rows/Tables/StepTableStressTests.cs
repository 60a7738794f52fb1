using FeltNest.Geometry;
using FeltNest.Layout.Rows.Tables;
using FeltNest.Tests.Geometry;
using NetTopologySuite.Geometries;
using NetTopologySuite.Geometries.Utilities;
using NetTopologySuite.Operation.Overlay;
using NetTopologySuite.Operation.OverlayNG;
using Xunit;

namespace FeltNest.Tests.Layout.Rows.Tables;

/// <summary>Step tables of random parts of every kind: against NetTopologySuite place by place, and turned, mirrored and scaled against
/// themselves.</summary>
public sealed class StepTableStressTests
{
    // By definition a step is the least rise at which no sampled column passes through the overlap of the two parts; the judge finds the
    // overlap as a polygon and looks at the columns in it.
    [Fact]
    public void A_step_is_the_least_rise_that_frees_every_sampled_column()
    {
        int seen = 0;
        for (int seed = 0; seed < Runs.Count(56); seed++)
        {
            (Outline below, Outline above, double grid, Random random) = Case(seed);
            StepTable table = StepTable.Make(TurnedPart.Make(below, 0, grid, 0), TurnedPart.Make(above, 0, grid, 0));
            Polygon still = PiecewiseUnion.ToPolygon(below.Points);
            Polygon moving = PiecewiseUnion.ToPolygon(above.Points);
            for (int n = 0; n < 6; n++)
            {
                double shift = grid * Math.Round((table.MinShift + ((table.MaxShift - table.MinShift) * random.NextDouble())) / grid);
                double step = table.At(shift);
                if (double.IsInfinity(step))
                {
                    continue;
                }

                Assert.True(ColumnInside(shift, step - 1e-5) > 0, $"seed {seed}: no column overlaps under the step {step} at {shift}");
                Assert.All(
                    [1e-5, 0.1, 1.0, 4.0],
                    rise => Assert.True(
                        ColumnInside(shift, step + rise) < 1e-6, $"seed {seed}: a column overlaps above the step {step} at {shift}"));
                seen++;
            }

            double ColumnInside(double shift, double rise)
            {
                NetTopologySuite.Geometries.Geometry both = OverlayNGRobust.Overlay(
                    still, AffineTransformation.TranslationInstance(shift, rise).Transform(moving), SpatialFunction.Intersection);
                Envelope box = both.EnvelopeInternal;
                double longest = 0;
                for (double x = (Math.Ceiling((box.MinX / grid) - 0.5) + 0.5) * grid; !box.IsNull && x <= box.MaxX; x += grid)
                {
                    LineString column = new([new Coordinate(x, box.MinY - 1), new Coordinate(x, box.MaxY + 1)]);
                    longest = Math.Max(longest, both.Intersection(column).Length);
                }

                return longest;
            }
        }

        Assert.True(seen > 200, $"{seen} places asked");
    }

    [Fact]
    public void No_step_with_a_gap_keeps_parts_further_apart_than_the_gap()
    {
        for (int seed = 0; seed < Runs.Count(56); seed++)
        {
            (Outline below, Outline above, double grid, Random random) = Case(seed);
            double gap = 3 * random.NextDouble();
            StepTable table = StepTable.Make(TurnedPart.Make(below, 0, grid, gap), TurnedPart.Make(above, 0, grid, gap));
            Polygon still = PiecewiseUnion.ToPolygon(below.Points);
            Polygon moving = PiecewiseUnion.ToPolygon(above.Points);
            for (int n = 0; n < 6; n++)
            {
                double shift = grid * Math.Round((table.MinShift + ((table.MaxShift - table.MinShift) * random.NextDouble())) / grid);
                double step = table.At(shift);
                if (double.IsFinite(step))
                {
                    Assert.InRange(still.Distance(AffineTransformation.TranslationInstance(shift, step).Transform(moving)), 0, gap + 1e-9);
                }
            }
        }
    }

    [Fact]
    public void Tables_turn_mirror_and_grow_with_their_parts()
    {
        for (int seed = 0; seed < Runs.Count(56); seed++)
        {
            (Outline below, Outline above, double grid, Random random) = Case(seed);
            double gap = 3 * random.NextDouble();
            double size = Math.Pow(2, random.Next(-4, 5));
            StepTable plain = Make(below, above, 1, gap);
            StepTable mirrored = Make(Placed(below, p => new Point2(-p.X, p.Y)), Placed(above, p => new Point2(-p.X, p.Y)), 1, gap);

            // Half a turn takes the upper part below.
            StepTable turned = Make(Placed(above, p => p * -1), Placed(below, p => p * -1), 1, gap);
            StepTable grown = Make(Placed(below, p => p * size), Placed(above, p => p * size), size, gap);
            Assert.Equal((plain.MinShift, plain.MaxShift), (-mirrored.MaxShift, -mirrored.MinShift));
            for (double shift = plain.MinShift; shift <= plain.MaxShift; shift += grid * random.Next(1, 5))
            {
                Assert.Equal(plain.At(shift), mirrored.At(-shift), 1e-9);
                Assert.Equal(plain.At(shift), plain.Mirrored().At(-shift), 1e-9);
                Assert.Equal(plain.At(shift), turned.At(shift), 1e-9);
                Assert.Equal(plain.At(shift) * size, grown.At(shift * size), 1e-9 * size);
            }

            StepTable Make(Outline lower, Outline upper, double by, double apart) =>
                StepTable.Make(TurnedPart.Make(lower, 0, grid * by, apart * by), TurnedPart.Make(upper, 0, grid * by, apart * by));
        }
    }

    // Columns of a grid stand among those of the grid a third as wide: more of them can only find more.
    [Fact]
    public void A_finer_grid_never_finds_less()
    {
        for (int seed = 0; seed < Runs.Count(28); seed++)
        {
            (Outline below, Outline above, double grid, Random random) = Case(seed);
            double gap = 2 * random.NextDouble();
            StepTable coarse = StepTable.Make(TurnedPart.Make(below, 0, grid, gap), TurnedPart.Make(above, 0, grid, gap));
            StepTable fine = StepTable.Make(TurnedPart.Make(below, 0, grid / 3, gap), TurnedPart.Make(above, 0, grid / 3, gap));
            for (double shift = coarse.MinShift; shift <= coarse.MaxShift; shift += grid)
            {
                Assert.True(
                    fine.At(shift) >= coarse.At(shift) - 1e-9,
                    $"seed {seed}: {fine.At(shift)} of the finer grid under {coarse.At(shift)} at {shift}");
            }
        }
    }

    // Turned to no round angle, so that no corner stands on a column but by chance.
    private static (Outline Below, Outline Above, double Grid, Random Random) Case(int seed)
    {
        Random random = new(seed);
        Outline below = RandomOutlines.Next(random, seed % RandomOutlines.Kinds, 30).Turned(7 * random.NextDouble());
        Outline above = RandomOutlines.Next(random, random.Next(RandomOutlines.Kinds), 30).Turned(7 * random.NextDouble());
        return (below, above, 0.05 + (0.2 * random.NextDouble()), random);
    }

    private static Outline Placed(Outline part, Func<Point2, Point2> place) => Outline.From(part.Points.Select(place));
}
