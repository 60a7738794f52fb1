using FeltNest.Cost.Sheet;

namespace FeltNest.Page.Answers;

/// <summary>What a thousand balls cost.</summary>
internal sealed record CostAnswer(string Currency, decimal Total, decimal Felt, string[] NotCounted)
{
    /// <summary>The answer of a sheet.</summary>
    public static CostAnswer Of(CostSheet sheet) => new(sheet.Currency, sheet.Total, sheet.AmountOf(10), [.. sheet.NotCounted]);
}
