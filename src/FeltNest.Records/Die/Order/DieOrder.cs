using FeltNest.Rolls;

namespace FeltNest.Die.Order;

/// <summary>What the shop wants of a die.</summary>
public sealed record DieOrder
{
    /// <summary>Name or number of the die.</summary>
    public required string Name { get; init; }

    /// <summary>The rule.</summary>
    public required DieRule Rule { get; init; }

    /// <summary>The board.</summary>
    public required DieBoard Board { get; init; }

    /// <summary>The ejection.</summary>
    public required DieEjection Ejection { get; init; }

    /// <summary>Tolerances.</summary>
    public required DieTolerances Tolerances { get; init; }

    /// <summary>Figures of the force.</summary>
    public required ForceFigures Force { get; init; }

    /// <summary>Thickness of one ply as cut, mm.</summary>
    public required double FeltThicknessMm { get; init; }

    /// <summary>Felt in words, or null.</summary>
    public string? FeltMaterial { get; init; }

    /// <summary>Layers under one strike.</summary>
    public required int Plies { get; init; }

    /// <summary>Whether rules may stand nearer than their bodies have room.</summary>
    public required bool CommonCut { get; init; }

    /// <summary>True where drawings and DXF are to be seen from the die's side (mirrored), false for the panel's nap side.</summary>
    public required bool DieView { get; init; }

    /// <summary>Projection symbol: third angle, else first.</summary>
    public required bool ThirdAngle { get; init; }

    /// <summary>Title block.</summary>
    public required DieTitle Title { get; init; }

    /// <summary>The rest of the order.</summary>
    public required DieWishes Wishes { get; init; }

    /// <summary>Price and life, or null where not known.</summary>
    public DieWear? Wear { get; init; }

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
