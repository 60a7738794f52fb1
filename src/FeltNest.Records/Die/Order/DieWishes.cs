namespace FeltNest.Die.Order;

/// <summary>What an order for a die settles beside the drawing; null is asked for on the sheet as a blank.</summary>
/// <param name="Quantity">Dies of this kind.</param>
/// <param name="Replaces">Die that this one replaces.</param>
/// <param name="Mounting">How it is held in the press.</param>
/// <param name="Registration">How it finds its place on the press.</param>
/// <param name="AirHoles">Vents of the cavities.</param>
/// <param name="CavityMarks">How cavities are marked.</param>
/// <param name="JudgedBy">How the first blank is judged.</param>
public sealed record DieWishes(
    int Quantity, string? Replaces, string? Mounting, string? Registration, string? AirHoles, string? CavityMarks, string? JudgedBy);
