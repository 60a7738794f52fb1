using FeltNest.Ball;
using FeltNest.Design;
using FeltNest.Design.SeamDesign;
using FeltNest.Files.Balls;
using FeltNest.Geometry;
using FeltNest.Layout.Polish;
using FeltNest.Tests.Files;
using FeltNest.Tests.Panel;
using Xunit;

namespace FeltNest.Tests.Design.SeamDesign;

public sealed class SeamSolverTests
{
    // Low enough to be quick; the derivatives are those of the panel of this degree, whatever it is.
    private const int Degree = 15;

    // Central differences over so much, mm: their own error, of second order, is below what is asked.
    private const double Apart = 0.01;

    [Theory]
    [InlineData(false, 15)]
    [InlineData(false, 13.5)]
    [InlineData(true, 15)]
    public void Tangents_are_the_differences_of_solved_panels(bool skewed, double edgeLimit)
    {
        (SeamSolver solver, SeamState at) = Solved(skewed, edgeLimit);
        Assert.Equal(edgeLimit < 14, at.Held.Count > 0);

        double[][] tangents = solver.Tangents(at);

        for (int k = 0; k < tangents.Length; k++)
        {
            double[] above = Beside(solver, at, tangents, k, Apart).Coefficients;
            double[] below = Beside(solver, at, tangents, k, -Apart).Coefficients;
            double size = tangents[k].Max(Math.Abs);
            Assert.All(tangents[k], (slope, i) => Assert.Equal((above[i] - below[i]) / (2 * Apart), slope, 1e-4 * size));
        }
    }

    [Fact]
    public void The_tangent_of_the_angle_to_the_warp_is_the_difference_of_solved_panels()
    {
        BallSpec woven = BallReader.Read(RepositoryFile.PathOf("shapes", "balls", "type-2-woven.json")).Ball;
        SeamVariables variables = SeamVariables.Shaped(woven, [6], turnsWarp: true);
        SeamSolver solver = new(variables, Degree);
        SeamState at = solver.First(variables.Plain(27, 0.1));

        double[][] tangents = solver.Tangents(at);

        double[] above = Beside(solver, at, tangents, 2, Apart).Coefficients;
        double[] below = Beside(solver, at, tangents, 2, -Apart).Coefficients;
        double size = tangents[2].Max(Math.Abs);
        Assert.InRange(size, 1e-4, 1);
        Assert.All(tangents[2], (slope, i) => Assert.Equal((above[i] - below[i]) / (2 * Apart), slope, 1e-4 * size));
    }

    [Fact]
    public void A_turn_of_half_a_round_is_the_same_angle_to_the_warp()
    {
        BallSpec woven = BallReader.Read(RepositoryFile.PathOf("shapes", "balls", "type-2-woven.json")).Ball;
        SeamVariables variables = SeamVariables.Shaped(woven, [6], turnsWarp: true);

        Assert.Equal(30, variables.BallOf(variables.Plain(27)).Panel.WarpAngleDeg!.Value, 1e-9);
        Assert.Equal(30, variables.BallOf(variables.Plain(27, Math.PI)).Panel.WarpAngleDeg!.Value, 1e-9);
        Assert.Equal(165, variables.BallOf(variables.Plain(27, -Math.PI / 4)).Panel.WarpAngleDeg!.Value, 1e-9);
    }

    [Fact]
    public void What_is_read_off_a_panel_moves_as_its_slopes_say()
    {
        (SeamSolver solver, SeamState at) = Solved(false, 15);
        SeamReader reader = new(solver.Space);
        SeamSearch search = new(Variables(false, 15), solver, reader, new SeamLimits { StretchPercent = 8 });
        double[][] tangents = solver.Tangents(at);
        SeamLook[] slopes = search.Slopes(at, tangents);

        for (int k = 0; k < slopes.Length; k++)
        {
            SeamLook found = SeamLook.Slope(
                Look(reader, Beside(solver, at, tangents, k, Apart)), Look(reader, Beside(solver, at, tangents, k, -Apart)), 2 * Apart);
            Assert.All(found.Outline, (move, i) => Assert.InRange((move - slopes[k].Outline[i]).Length, 0, 1e-3));
            Assert.All(found.Stretch, (slope, i) => Assert.Equal(slope, slopes[k].Stretch[i], 0.02));
            Assert.All(found.Compression, (slope, i) => Assert.Equal(slope, slopes[k].Compression[i], 0.02));
        }
    }

    [Fact]
    public void A_contact_opens_as_fast_as_its_row_says()
    {
        // Two octagons side by side, all corners moved outwards along x: the gap closes by twice that.
        Point2[] outline =
        [
            .. Enumerable.Range(0, 8)
                .Select(i => new Point2(10 * Math.Cos((i + 0.5) * Math.PI / 4), 10 * Math.Sin((i + 0.5) * Math.PI / 4))),
        ];
        Point2[] move = [.. outline.Select(p => new Point2(Math.Sign(p.X), 0))];
        PoseModel model = new()
        {
            Part = Outline.From(outline),
            Gap = 1,
            Lower = null,
            Upper = null,
            Panels = [new PanelPose { X = new AffineForm(0), Y = new AffineForm(0), Angle = new AffineForm(0) }],
            Periods = [(AffineForm.Of(0), new AffineForm(0)), (new AffineForm(0), AffineForm.Of(1))],
            Parameters = [20, 60],
            IsAngle = [false, false],
            Least = [0, 0],
            Most = [100, 100],
        };

        (double[] Factors, double Bound)[] rows = [.. SeamRows.Of(model, outline, [move], 1)];

        double width = 20 * Math.Cos(Math.PI / 8);
        Assert.NotEmpty(rows);
        Assert.All(rows, row =>
        {
            Assert.Equal(1 - (20 - width), row.Bound, 1e-9);
            Assert.Equal(1, row.Factors[0], 1e-9);
            Assert.Equal(-2, row.Factors[2], 1e-9);
        });
    }

    private static SeamLook Look(SeamReader reader, SeamState state) => reader.At(state.Request, state.Domain, state.Coefficients);

    private static SeamState Beside(SeamSolver solver, SeamState at, double[][] tangents, int number, double by)
    {
        double[] values = [.. at.Values];
        values[number] += by;
        return solver.Followed(at, tangents, values, 0)!;
    }

    private static SeamVariables Variables(bool skewed, double edgeLimit)
    {
        BallSpec usual = Balls.Usual();
        BallSpec ball = usual with { Felt = usual.Felt with { MaxEdgeCompressionPercent = edgeLimit } };
        return SeamVariables.Shaped(ball, skewed ? [4, 6] : [6, 10]);
    }

    private static (SeamSolver Solver, SeamState At) Solved(bool skewed, double edgeLimit)
    {
        SeamVariables variables = Variables(skewed, edgeLimit);
        SeamSolver solver = new(variables, Degree);
        SeamState plain = solver.First(variables.Plain(27));
        double[] values = [27, 0.2, 0.3];
        return (solver, solver.Followed(plain, solver.Tangents(plain), values, 2)!);
    }
}
