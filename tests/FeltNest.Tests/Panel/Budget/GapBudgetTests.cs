using System.Diagnostics;
using FeltNest.Ball;
using FeltNest.Ball.Tolerance;
using FeltNest.Files.Balls;
using FeltNest.Panel;
using FeltNest.Panel.Budget;
using FeltNest.Tests.Files;
using Xunit;

namespace FeltNest.Tests.Panel.Budget;

public sealed class GapBudgetTests
{
    [Theory]
    [InlineData("type-2.json")]
    [InlineData("type-2-woven.json")]
    public void Timing(string file)
    {
        BallSpec ball = BallReader.Read(RepositoryFile.PathOf("shapes", "balls", file)).Ball;
        bool woven = ball.Panel.WarpAngleDeg is not null;
        ball = ball with
        {
            Seam = ball.Seam with { Adhesive = new(0.2, 0.6) },
            Tolerances = new ToleranceSpec
            {
                CoreMassG = 0, CementMassPerAreaGsm = 0, FeltFinishedThicknessMm = 0, FeltMassPerAreaGsm = 0,
                CoreDiameterMm = 0.2, CementThicknessMm = 0.03, FeltThicknessMm = 0.15, NeutralLayer = 0.05, Poisson = 0.05,
                WarpModulusNPerMm = woven ? 0.3 : null, WeftModulusNPerMm = woven ? 0.2 : null, ShearModulusNPerMm = woven ? 0.1 : null,
                WarpAngleDeg = woven ? 1 : null, DieOffsetMm = 0.1, PlacingAlongMm = 0.3, PlacingAcrossMm = 0.3, PlacingTurnDeg = 0.5,
            },
        };
        FlatPanel panel = PanelFlattener.Flatten(ball);
        Stopwatch watch = Stopwatch.StartNew();
        GapBudget b = GapBudgetStudy.Run(ball, panel);
        Console.Error.WriteLine($"{file} {watch.Elapsed.TotalSeconds:0.00} s");
        GapState s = b.AtFitting;
        Console.Error.WriteLine($"nominal {s.NominalLeastMm:0.000}..{s.NominalMostMm:0.000} worst {s.WorstLeastMm:0.000}..{s.WorstMostMm:0.000} solved {s.SolvedLeastMm:0.000}..{s.SolvedMostMm:0.000} rss {s.RootLeastMm:0.000}..{s.RootMostMm:0.000} balls {s.BallsWithinPercent} seam {s.SeamWithinPercent}");
        foreach (GapShare share in s.Shares)
        {
            Console.Error.WriteLine($"{share.Rank} {b.Sources[share.Source]} greatest {share.GreatestMm:0.0000} bend {share.BendMm:0.0000} var {share.VariancePercent:0.0} gain {share.GainPercent:0.0}");
        }
    }
}
