namespace FeltNest.Cost.Compare;

/// <summary>A kept die on one width.</summary>
/// <param name="Rows">Rows of it that fit.</param>
/// <param name="PanelsPerMetre">Panels per metre they give.</param>
/// <param name="SquareMetresPerThousandBalls">Felt bought per thousand good balls, m2.</param>
/// <param name="Total">Cost of a thousand balls, or null.</param>
/// <param name="NewDiePaysAfterThousandBalls">Thousand balls after which the new lay has saved the price of its die; null where that price
/// is not known or nothing is saved.</param>
public sealed record KeptDieRow(
    int Rows, double PanelsPerMetre, double SquareMetresPerThousandBalls, decimal? Total, decimal? NewDiePaysAfterThousandBalls);
