using FeltNest.Cost.Sheet;

namespace FeltNest.Page.Answers;

/// <summary>What a thousand balls cost.</summary>
internal sealed record CostAnswer
{
    public required string Currency { get; init; }

    public required decimal Total { get; init; }

    public required decimal Felt { get; init; }

    public required string[] NotCounted { get; init; }

    /// <summary>The answer of a sheet.</summary>
    public static CostAnswer Of(CostSheet sheet) => new()
    {
        Currency = sheet.Currency,
        Total = sheet.Total,
        Felt = sheet.AmountOf(10),
        NotCounted = [.. sheet.NotCounted],
    };
}
