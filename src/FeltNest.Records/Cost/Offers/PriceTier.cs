namespace FeltNest.Cost.Offers;

/// <summary>A price from a length bought on.</summary>
/// <param name="FromM">Least length of an order, m.</param>
/// <param name="Amount">Money for one unit of the price.</param>
public sealed record PriceTier(double FromM, decimal Amount);
