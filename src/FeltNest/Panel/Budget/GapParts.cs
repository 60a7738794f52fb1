using FeltNest.Ball;
using FeltNest.Ball.Ranges;
using FeltNest.Ball.Tolerance;
using FeltNest.Panel.Felt;

namespace FeltNest.Panel.Budget;

/// <summary>Everything that may be off and moves the seam gap, in the order of the ball's making.</summary>
internal static class GapParts
{
    private static readonly Entry[] All =
    [
        new(ToleranceRanges.CoreDiameterTolerance, "core diameter", t => t.CoreDiameterMm,
            (b, x) => b with { Core = b.Core with { OuterDiameterMm = b.Core.OuterDiameterMm + x } }),
        new(ToleranceRanges.CementThicknessTolerance, "cement thickness", t => t.CementThicknessMm,
            (b, x) => b with { Cement = b.Cement with { ThicknessMm = b.Cement.ThicknessMm + x } }),
        new(ToleranceRanges.FeltThicknessTolerance, "felt thickness", t => t.FeltThicknessMm,
            (b, x) => b with { Felt = b.Felt with { ThicknessMm = b.Felt.ThicknessMm + x } }),
        new(ToleranceRanges.NeutralLayerTolerance, "neutral layer", t => t.NeutralLayer,
            (b, x) => b with { Felt = b.Felt with { NeutralLayer = b.Felt.NeutralLayer + x } }),
        new(ToleranceRanges.WarpModulusTolerance, "modulus along the warp", t => t.WarpModulusNPerMm,
            (b, x) => b with { Felt = b.Felt with { WarpModulusNPerMm = b.Felt.WarpModulusNPerMm + x } }),
        new(ToleranceRanges.WeftModulusTolerance, "modulus along the weft", t => t.WeftModulusNPerMm,
            (b, x) => b with { Felt = b.Felt with { WeftModulusNPerMm = b.Felt.WeftModulusNPerMm + x } }),
        new(ToleranceRanges.ShearModulusTolerance, "shear modulus", t => t.ShearModulusNPerMm,
            (b, x) => b with { Felt = b.Felt with { ShearModulusNPerMm = b.Felt.ShearModulusNPerMm + x } }),
        new(ToleranceRanges.PoissonTolerance, "Poisson's ratio", t => t.Poisson,
            (b, x) => b with { Felt = WithPoisson(b.Felt, b.Felt.Poisson + x) }),
        new(ToleranceRanges.CureShrinkWarpTolerance, "cure shrinkage, warp", t => t.CureShrinkWarpPercent,
            (b, x) => b with { Felt = b.Felt with { CureShrinkWarpPercent = b.Felt.CureShrinkWarpPercent + x } }),
        new(ToleranceRanges.CureShrinkWeftTolerance, "cure shrinkage, weft", t => t.CureShrinkWeftPercent,
            (b, x) => b with { Felt = b.Felt with { CureShrinkWeftPercent = b.Felt.CureShrinkWeftPercent + x } }),
        new(ToleranceRanges.ApplicationStretchWarpTolerance, "stretch on application, warp", t => t.ApplicationStretchWarpPercent,
            (b, x) => b with { Felt = b.Felt with { ApplicationStretchWarpPercent = b.Felt.ApplicationStretchWarpPercent + x } }),
        new(ToleranceRanges.ApplicationStretchWeftTolerance, "stretch on application, weft", t => t.ApplicationStretchWeftPercent,
            (b, x) => b with { Felt = b.Felt with { ApplicationStretchWeftPercent = b.Felt.ApplicationStretchWeftPercent + x } }),
        new(ToleranceRanges.WarpAngleTolerance, "angle to the warp", t => t.WarpAngleDeg,
            (b, x) => b with { Panel = b.Panel with { WarpAngleDeg = b.Panel.WarpAngleDeg + x } }),

        // A die that cuts farther out leaves more felt than the offset it was drawn for takes away.
        new(ToleranceRanges.DieOffsetTolerance, "die, outwards", t => t.DieOffsetMm,
            (b, x) => b with { Panel = b.Panel with { DieOffsetMm = b.Panel.DieOffsetMm - x } }),
        new(ToleranceRanges.PlacingAlongTolerance, "placing along", t => t.PlacingAlongMm,
            Placing: (x, radius) => new PanelPlacing { Along = x / radius }),
        new(ToleranceRanges.PlacingAcrossTolerance, "placing across", t => t.PlacingAcrossMm,
            Placing: (x, radius) => new PanelPlacing { Across = x / radius }),
        new(ToleranceRanges.PlacingTurnTolerance, "turn on the ball", t => t.PlacingTurnDeg,
            Placing: (x, _) => new PanelPlacing { Turn = x * Math.PI / 180 }),
    ];

    /// <summary>The parts whose tolerances a ball states.</summary>
    public static IReadOnlyList<GapPart> Of(ToleranceSpec off) =>
    [
        .. All.Where(entry => entry.Value(off) is not null).Select(entry => new GapPart
        {
            Source = new GapSource
            {
                Field = entry.Range.Field,
                Words = entry.Words,
                Unit = entry.Range.Unit,
                PlusMinus = entry.Value(off)!.Value,
            },
            Ball = entry.Ball,
            Placing = entry.Placing,
        }),
    ];

    /// <summary>Fields of the tolerances that a ball does not state.</summary>
    public static IReadOnlyList<string> NotStated(ToleranceSpec? off) =>
        [.. All.Where(entry => off is null || entry.Value(off) is null).Select(entry => entry.Range.Field)];

    // Felt without a warp stays so: its shear modulus follows.
    private static FeltSpec WithPoisson(FeltSpec felt, double poisson) => FeltLaw.IsIsotropic(felt)
        ? felt with { Poisson = poisson, ShearModulusNPerMm = felt.WarpModulusNPerMm / (2 * (1 + poisson)) }
        : felt with { Poisson = poisson };

    private sealed record Entry(
        FieldRange Range, string Words, Func<ToleranceSpec, double?> Value, Func<BallSpec, double, BallSpec>? Ball = null,
        Func<double, double, PanelPlacing>? Placing = null);
}
