using FeltNest.Rolls;

namespace FeltNest.Die.Order;

/// <summary>What the shop wants of a die.</summary>
/// <param name="Name">Name or number of the die.</param>
/// <param name="Rule">The rule.</param>
/// <param name="Board">The board.</param>
/// <param name="Ejection">The ejection.</param>
/// <param name="Tolerances">Tolerances.</param>
/// <param name="Force">Figures of the force.</param>
/// <param name="FeltThicknessMm">Thickness of one ply as cut, mm.</param>
/// <param name="FeltMaterial">Felt in words, or null.</param>
/// <param name="Plies">Layers under one strike.</param>
/// <param name="CommonCut">Whether rules may stand nearer than their bodies have room.</param>
/// <param name="DieView">True where drawings and DXF are to be seen from the die's side (mirrored), false for the panel's nap side.</param>
/// <param name="ThirdAngle">Projection symbol: third angle, else first.</param>
/// <param name="Title">Title block.</param>
/// <param name="Wishes">The rest of the order.</param>
/// <param name="Wear">Price and life, or null where not known.</param>
public sealed record DieOrder(
    string Name, DieRule Rule, DieBoard Board, DieEjection Ejection, DieTolerances Tolerances, ForceFigures Force, double FeltThicknessMm,
    string? FeltMaterial, int Plies, bool CommonCut,
    bool DieView, bool ThirdAngle, DieTitle Title, DieWishes Wishes, DieWear? Wear)
{
    /// <summary>True where the shop has written no order and usual figures stand for it.</summary>
    public bool IsAssumed { get; init; }

    /// <summary>Which way the nap of the felt lies under the die, or null where the shop does not say: a layout does not know.</summary>
    public NapDirection? Nap { get; init; }

    /// <summary>Sign of the drawing's x in which something points that points with the feed, or against it: from the die's side left and
    /// right change places.</summary>
    public char SeenSign(bool withFeed) => withFeed == DieView ? '-' : '+';

    /// <summary>Height of the felt under one strike, mm.</summary>
    public double StackMm => Plies * FeltThicknessMm;

    /// <summary>Room from board to edge, mm: felt and pressed ejection have to fit in it.</summary>
    public double CavityDepthMm => Rule.HeightMm - Board.ThicknessMm;
}
