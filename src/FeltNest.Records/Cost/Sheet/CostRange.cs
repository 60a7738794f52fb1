namespace FeltNest.Cost.Sheet;

/// <summary>How far a figure may be off what is thought likely.</summary>
/// <param name="Field">The figure's place in the costs file, such as <c>roll.endLossMm</c>.</param>
/// <param name="Low">Least value thought possible.</param>
/// <param name="High">Greatest value thought possible.</param>
public readonly record struct CostRange(string Field, decimal Low, decimal High);
