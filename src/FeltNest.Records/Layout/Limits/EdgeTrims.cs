namespace FeltNest.Layout.Limits;

/// <summary>What is cut off along both selvedges and never carries a panel.</summary>
public readonly record struct EdgeTrims
{
    /// <summary>Trim at the lower selvedge (y = 0), mm.</summary>
    public required double LowerMm { get; init; }

    /// <summary>Trim at the upper selvedge, mm.</summary>
    public required double UpperMm { get; init; }

    /// <summary>Both together, mm.</summary>
    public double TotalMm => LowerMm + UpperMm;

    /// <summary>True when both sides lose the same.</summary>
    public bool AreEqual => LowerMm == UpperMm;

    /// <summary>As one types it: one length in mm, or the lower and the upper one with a comma between.</summary>
    public override string ToString() =>
        AreEqual ? FormattableString.Invariant($"{LowerMm:R}") : FormattableString.Invariant($"{LowerMm:R},{UpperMm:R}");

    /// <summary>The same trim on each side.</summary>
    public static EdgeTrims Both(double eachMm) => new() { LowerMm = eachMm, UpperMm = eachMm };
}
