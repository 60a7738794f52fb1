using FeltNest.Ball;

namespace FeltNest.Tests.Panel;

/// <summary>Balls for tests; all numbers invented.</summary>
internal static class Balls
{
    /// <summary>A ball with fitted radius 31.75 mm and isotropic felt.</summary>
    public static BallSpec Usual() => new(
        "Example",
        RuleType.Type2,
        new CoreSpec(60, 45),
        new CementSpec(0.15, 120),
        new FeltSpec("felt", FeltConstruction.Woven, 3.2, 3.0, 800, 2, 2, 2 / 2.6, 0.3, 0.5, 20, 15, 0, 0),
        new SeamSpec(SeamFamily.TwoHarmonic, 26, 0.4),
        new PanelSpec(FlatteningMethod.Elastic, EdgeRule.Mated, null));
}
