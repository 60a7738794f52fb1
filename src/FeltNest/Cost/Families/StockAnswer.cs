namespace FeltNest.Cost.Families;

/// <summary>The width that each ball is cut on.</summary>
/// <param name="WidthOf">Place of the width of each ball.</param>
/// <param name="Total">Hundredths of the currency a year.</param>
/// <param name="Bound">No choice costs less than this.</param>
internal sealed record StockAnswer(IReadOnlyList<int> WidthOf, long Total, long Bound);
