namespace FeltNest.Cost.Sheet;

/// <summary>A rate the user states.</summary>
/// <param name="Currency">Another currency.</param>
/// <param name="Rate">Units of the sheet's own currency for one unit of it.</param>
public sealed record CurrencyRate(string Currency, decimal Rate);
