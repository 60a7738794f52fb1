namespace FeltNest.Cost.Offers;

/// <summary>What a price of felt is for.</summary>
public enum PriceUnit
{
    /// <summary>A running metre of the full width.</summary>
    Metre,

    /// <summary>A square metre of the full width.</summary>
    SquareMetre,

    /// <summary>A kilogram.</summary>
    Kilogram,
}
