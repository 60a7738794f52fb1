using FeltNest.Ball;

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
                EdgeFreeWrap free = PanelWrap.LayFree(WrapRequest.For(ball, panel.EdgeMap));
                return panel with
                {
                    Fit = new PanelFit
                    {
                        LargestGapMm = free.LargestGapMm,
                        LargestOverlapMm = free.LargestOverlapMm,
                        EnergyNmm = free.EnergyNmm,
                    }
                };
            }
            catch (NoAnswerException)
            {
                return panel;
            }
        }
    }
}
