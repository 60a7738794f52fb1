using FeltNest.Ball;
using FeltNest.Ball.Passport;
using FeltNest.Ball.Ranges;

namespace FeltNest.Panel.Lot;

/// <summary>A ball covered with another lot of felt.</summary>
internal static class LotOfFelt
{
    /// <summary>The ball with the figures that were measured of the lot; what was not measured stays as the ball has it.</summary>
    /// <exception cref="InputException">The felt and the ball's panel do not go together.</exception>
    public static BallSpec On(BallSpec ball, FeltFile felt)
    {
        FeltSpec spec = felt.Values.Aggregate(ball.Felt, (so, figure) => With(so, figure.Key, figure.Value.Value));
        BallSpec covered = BallRanges.Checked(ball with { Felt = spec with { Name = felt.Name, Lot = felt.Lot } });
        PanelRequest.For(covered);
        return covered;
    }

    /// <summary>The felt with one figure changed.</summary>
    public static FeltSpec With(FeltSpec felt, FeltQuantity quantity, double value) => quantity switch
    {
        FeltQuantity.Thickness => felt with { ThicknessMm = value },
        FeltQuantity.MassPerArea => felt with { MassPerAreaGsm = value },
        FeltQuantity.WarpModulus => felt with { WarpModulusNPerMm = value },
        FeltQuantity.WeftModulus => felt with { WeftModulusNPerMm = value },
        FeltQuantity.ShearModulus => felt with { ShearModulusNPerMm = value },
        FeltQuantity.Poisson => felt with { Poisson = value },
        FeltQuantity.NeutralLayer => felt with { NeutralLayer = value },
        FeltQuantity.EdgeLimit => felt with { MaxEdgeCompressionPercent = value },
        FeltQuantity.ShrinkWarp => felt with { CureShrinkWarpPercent = value },
        FeltQuantity.ShrinkWeft => felt with { CureShrinkWeftPercent = value },
        _ => throw new ArgumentOutOfRangeException(nameof(quantity), quantity, "is no figure of a felt"),
    };

    /// <summary>A figure of the felt.</summary>
    public static double Of(FeltSpec felt, FeltQuantity quantity) => quantity switch
    {
        FeltQuantity.Thickness => felt.ThicknessMm,
        FeltQuantity.MassPerArea => felt.MassPerAreaGsm,
        FeltQuantity.WarpModulus => felt.WarpModulusNPerMm,
        FeltQuantity.WeftModulus => felt.WeftModulusNPerMm,
        FeltQuantity.ShearModulus => felt.ShearModulusNPerMm,
        FeltQuantity.Poisson => felt.Poisson,
        FeltQuantity.NeutralLayer => felt.NeutralLayer,
        FeltQuantity.EdgeLimit => felt.MaxEdgeCompressionPercent,
        FeltQuantity.ShrinkWarp => felt.CureShrinkWarpPercent,
        FeltQuantity.ShrinkWeft => felt.CureShrinkWeftPercent,
        _ => throw new ArgumentOutOfRangeException(nameof(quantity), quantity, "is no figure of a felt"),
    };
}
