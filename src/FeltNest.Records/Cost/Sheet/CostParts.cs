namespace FeltNest.Cost.Sheet;

/// <summary>A total cost by what a layout decides, for a thousand good balls; the parts add to the total.</summary>
public sealed record CostParts
{
    /// <summary>Felt less waste sold.</summary>
    public required decimal Felt { get; init; }

    /// <summary>Labour, machine and board of the strikes, with their overhead.</summary>
    public required decimal Strikes { get; init; }

    /// <summary>Wear of the die, with its overhead.</summary>
    public required decimal Die { get; init; }

    /// <summary>Everything else: set-up, handling and their overhead.</summary>
    public required decimal Rest { get; init; }

    /// <summary>All of it.</summary>
    public decimal Total => Felt + Strikes + Die + Rest;

    /// <summary>The parts of a sheet.</summary>
    public static CostParts Of(CostSheet sheet)
    {
        decimal conversion = Enumerable.Range(13, 5).Sum(sheet.AmountOf);
        decimal loaded = conversion == 0 ? 1 : 1 + (sheet.AmountOf(18) / conversion);
        return new CostParts
        {
            Felt = sheet.AmountOf(12),
            Strikes = (sheet.AmountOf(14) + sheet.AmountOf(16)) * loaded,
            Die = sheet.AmountOf(15) * loaded,
            Rest = (sheet.AmountOf(13) + sheet.AmountOf(17)) * loaded,
        };
    }

    /// <summary>So many times these parts.</summary>
    public CostParts Times(decimal count) => new()
    {
        Felt = Felt * count,
        Strikes = Strikes * count,
        Die = Die * count,
        Rest = Rest * count,
    };

    /// <summary>What these parts are above others.</summary>
    public CostParts Above(CostParts other) => new()
    {
        Felt = Felt - other.Felt,
        Strikes = Strikes - other.Strikes,
        Die = Die - other.Die,
        Rest = Rest - other.Rest,
    };
}
