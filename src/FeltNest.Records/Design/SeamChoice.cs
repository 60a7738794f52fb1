using FeltNest.Ball;
using FeltNest.Panel;
using FeltNest.Yield;

namespace FeltNest.Design;

/// <summary>A seam chosen, measured as every ball's is: its panel made flat, its fit felt, its panel laid.</summary>
/// <param name="Ball">The ball with this seam.</param>
/// <param name="Panel">Its panel, with its fit.</param>
/// <param name="PlaneSquareMetres">Felt for a thousand balls in the best lattice of the endless plane, m2.</param>
/// <param name="Yield">Yield of the layout on the roll.</param>
internal sealed record SeamChoice(BallSpec Ball, FlatPanel Panel, double PlaneSquareMetres, YieldFigures Yield)
{
    /// <summary>Least distance between neighbouring runs of the seam, mm on the fitted sphere.</summary>
    public required double LeastRunMm { get; init; }

    /// <summary>Felt for a thousand balls on the roll, m2 of full width.</summary>
    public double RollSquareMetres => Yield.PerThousandBalls.SquareMetres;
}
