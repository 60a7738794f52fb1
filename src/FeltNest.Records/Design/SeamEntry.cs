using FeltNest.Ball;
using FeltNest.Panel;
using FeltNest.Yield;

namespace FeltNest.Design;

/// <summary>One seam of a comparison: its panel and what a roll yields of it.</summary>
/// <param name="Ball">The ball with this seam.</param>
/// <param name="Panel">Its panel.</param>
/// <param name="Yield">Yield of the layout on the comparison's roll.</param>
internal sealed record SeamEntry(BallSpec Ball, FlatPanel Panel, YieldFigures Yield)
{
    /// <summary>Whether the felt takes the greatest stretch.</summary>
    public bool StretchAllowed => Ball.Felt.TakesStretch(Panel.Strain.MaxStretchPercent);

    /// <summary>Whether the edge takes up what it is pushed together by.</summary>
    public bool EdgeAllowed => Ball.Felt.TakesAlongEdge(Panel.Strain.EdgeMaxCompressionPercent);
}
