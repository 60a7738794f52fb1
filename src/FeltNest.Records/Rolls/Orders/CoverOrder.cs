namespace FeltNest.Rolls.Orders;

/// <summary>Balls somebody wants covers for.</summary>
/// <param name="Name">Name of the order, once in a list.</param>
/// <param name="Ball">Ball, by the name the dies carry.</param>
/// <param name="Balls">Good balls wanted.</param>
/// <param name="Due">Day on which the last cover must be cut.</param>
/// <param name="OneLot">Whether all its felt must be of one shade lot.</param>
/// <param name="Felt">Felt it must be cut from, or null for any felt its dies reach.</param>
/// <param name="ReserveBalls">Balls for which felt of its lot is to stay uncut in stock, for rejects found later.</param>
public sealed record CoverOrder(string Name, string Ball, int Balls, DateOnly Due, bool OneLot, string? Felt, int ReserveBalls);
