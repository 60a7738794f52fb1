namespace FeltNest.Ball;

/// <summary>Where a ball's mass comes from, g.</summary>
internal sealed record MassBudget
{
    /// <summary>Core.</summary>
    public required double CoreG { get; init; }

    /// <summary>Adhesive film on the core; the edge adhesive in the seam is not counted.</summary>
    public required double CementG { get; init; }

    /// <summary>Both felt panels as cut.</summary>
    public required double FeltG { get; init; }

    // Felt masses, g per ball, outside which the mass per area or the panel is probably mistyped. Our judgement around 20 % of an adult
    // ball's 57.7 g = 11.5 g.
    private const double LightFeltG = 6;
    private const double HeavyFeltG = 16;

    /// <summary>All together, g.</summary>
    public double TotalG => CoreG + CementG + FeltG;

    /// <summary>A line to warn with where the felt's mass is unusual, or null.</summary>
    public string? FeltWarning => FeltG switch
    {
        < LightFeltG => FormattableString.Invariant(
            $"felt weighs {FeltG:0.0} g a ball, less than {LightFeltG} g is unusual (our judgement): check the mass per area"),
        > HeavyFeltG => FormattableString.Invariant(
            $"felt weighs {FeltG:0.0} g a ball, more than {HeavyFeltG} g is unusual (our judgement): check the mass per area"),
        _ => null,
    };

    /// <summary>The budget of a ball whose two panels have the area given, mm2 each.</summary>
    public static MassBudget Of(BallSpec ball, double panelAreaMm2)
    {
        // g/m2 times mm2.
        const double perSquareMillimetre = 1e-6;
        double diameter = ball.Core.OuterDiameterMm;
        return new MassBudget
        {
            CoreG = ball.Core.MassG,
            CementG = Math.PI * diameter * diameter * ball.Cement.MassPerAreaGsm * perSquareMillimetre,
            FeltG = 2 * panelAreaMm2 * ball.Felt.MassPerAreaGsm * perSquareMillimetre,
        };
    }
}
