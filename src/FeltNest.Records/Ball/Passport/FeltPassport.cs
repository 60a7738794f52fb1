namespace FeltNest.Ball.Passport;

/// <summary>What the readings of one lot of felt give.</summary>
internal sealed record FeltPassport
{
    /// <summary>Name of the felt.</summary>
    public required string Felt { get; init; }

    /// <summary>The lot.</summary>
    public required FeltLot Lot { get; init; }

    /// <summary>Figures that a ball takes; those that were not measured are left out.</summary>
    public required IReadOnlyDictionary<FeltQuantity, FeltValue> Values { get; init; }

    /// <summary>Laws of the strips.</summary>
    public required IReadOnlyList<FeltCurve> Curves { get; init; }

    /// <summary>Error of the shear modulus, per cent, for one per cent of the bias modulus; null without a shear modulus.</summary>
    public required double? ShearGain { get; init; }

    /// <summary>The edge limit; null where no disc was pressed.</summary>
    public required FeltEdge? Edge { get; init; }

    /// <summary>What has to be told, one sentence each.</summary>
    public required IReadOnlyList<string> Remarks { get; init; }
}
