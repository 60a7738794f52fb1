namespace FeltNest.Ball.Passport;

/// <summary>The range of strain in which the laws of the strips are fitted; strips in compression take it below 0.</summary>
internal sealed record FitRange
{
    /// <summary>Least strain, per cent.</summary>
    public required double FromPercent { get; init; }

    /// <summary>Greatest strain, per cent.</summary>
    public required double ToPercent { get; init; }

    // Room for the last digit of a strain worked out from an extension in mm.
    private const double Rounding = 1e-9;

    /// <summary>The usual range: what panels strain their felt by, without the slack of the first pull.</summary>
    public static FitRange Usual { get; } = new() { FromPercent = 1, ToPercent = 8 };

    /// <summary>Whether it holds a strain, in tension or compression.</summary>
    public bool Holds(double strain)
    {
        double percent = 100 * Math.Abs(strain);
        return percent >= FromPercent - Rounding && percent <= ToPercent + Rounding;
    }
}
