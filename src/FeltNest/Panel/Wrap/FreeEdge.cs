using FeltNest.Ball;
using FeltNest.Panel.Wrap.Solve;

namespace FeltNest.Panel.Wrap;

/// <summary>Lays a panel on its ball with the edge free.</summary>
internal static class FreeEdge
{
    extension(PanelFit)
    {
        /// <summary>The panel with its fit; without one where it finds no rest on the sphere with its edge free.</summary>
        /// <exception cref="InputException">The ball has no seam or felt that can be used.</exception>
        public static FlatPanel Felt(BallSpec ball, FlatPanel panel)
        {
            try
            {
                WrapRequest request = WrapRequest.For(ball, panel.EdgeMap);
                EdgeFreeWrap free = PanelWrap.LayFree(request);
                (EdgeFreeWrap asCut, EdgeFreeWrap afterCure) = PieceWrap.Free(
                    request with { EdgeMap = null }, FeltStates.OfClosed(PanelRequest.For(ball), new EdgeMapCurve(panel.EdgeMap)));
                return panel with
                {
                    Fit = new PanelFit
                    {
                        LargestGapMm = free.LargestGapMm,
                        LargestOverlapMm = free.LargestOverlapMm,
                        EnergyNmm = free.EnergyNmm,
                        AsCut = Told(asCut),
                        AfterCure = Told(afterCure),
                    }
                };
            }
            catch (NoAnswerException)
            {
                return panel;
            }
        }
    }
    private static FitGap Told(EdgeFreeWrap free) =>
        new() { LargestGapMm = free.LargestGapMm, LargestOverlapMm = free.LargestOverlapMm };
}
