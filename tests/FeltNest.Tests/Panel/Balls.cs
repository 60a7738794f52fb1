using FeltNest.Ball;

namespace FeltNest.Tests.Panel;

/// <summary>Balls for tests; all numbers invented.</summary>
internal static class Balls
{
    /// <summary>A ball with fitted radius 31.75 mm and isotropic felt.</summary>
    public static BallSpec Usual() => new()
    {
        Name = "Example",
        RuleType = RuleType.Type2,
        Core = new CoreSpec { OuterDiameterMm = 60, MassG = 45 },
        Cement = new CementSpec { ThicknessMm = 0.15, MassPerAreaGsm = 120 },
        Felt = new FeltSpec
        {
            Name = "felt",
            Construction = FeltConstruction.Woven,
            ThicknessMm = 3.2,
            FinishedThicknessMm = 3.0,
            MassPerAreaGsm = 800,
            WarpModulusNPerMm = 2,
            WeftModulusNPerMm = 2,
            ShearModulusNPerMm = 2 / 2.6,
            Poisson = 0.3,
            NeutralLayer = 0.5,
            MaxStretchPercent = 20,
            MaxEdgeCompressionPercent = 15,
            CureShrinkWarpPercent = 0,
            CureShrinkWeftPercent = 0,
        },
        Seam = new SeamSpec { Curve = SeamFamily.TwoHarmonic, WaistMm = 26, SeamGapMm = 0.4 },
        Panel = new PanelSpec(FlatteningMethod.Elastic, EdgeRule.Mated, null),
    };
}
