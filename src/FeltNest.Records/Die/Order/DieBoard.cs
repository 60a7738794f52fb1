namespace FeltNest.Die.Order;

/// <summary>The board that holds the rules.</summary>
/// <param name="Material">In words.</param>
/// <param name="ThicknessMm">mm.</param>
/// <param name="LandMm">Board left outside the outermost edge, mm.</param>
/// <param name="DensityKgPerM3">For the mass of the die, kg/m3.</param>
/// <param name="BridgeEveryMm">Length of edge to one bridge, mm.</param>
/// <param name="BridgeMm">Length of a bridge, mm.</param>
public sealed record DieBoard(
    string Material, double ThicknessMm, double LandMm, double DensityKgPerM3, double BridgeEveryMm, double BridgeMm);
