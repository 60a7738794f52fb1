namespace FeltNest.Rolls.Orders.Patterns;

/// <summary>A variable of the master, from 0 up.</summary>
/// <param name="Cost">Cost of one of it.</param>
/// <param name="Most">The most it can be.</param>
/// <param name="Whole">Whether it is a whole number in a plan.</param>
/// <param name="Entries">Its factor in each row it stands in.</param>
internal sealed record MasterColumn(double Cost, double Most, bool Whole, (int Row, double Factor)[] Entries);
