using FeltNest.Ball.Tolerance;

namespace FeltNest.Ball;

/// <summary>What is covered and with what: the whole ball specification.</summary>
/// <param name="Name">Name shown on results.</param>
/// <param name="RuleType">Row of the rule table it is meant for.</param>
/// <param name="Core">Rubber core.</param>
/// <param name="Cement">Adhesive between core and felt.</param>
/// <param name="Felt">The felt.</param>
/// <param name="Seam">The seam on the fitted sphere.</param>
/// <param name="Panel">How the panel is made flat.</param>
public sealed record BallSpec(
    string Name, RuleType RuleType, CoreSpec Core, CementSpec Cement, FeltSpec Felt, SeamSpec Seam, PanelSpec Panel)
{
    /// <summary>How far the parts may be off, or null where the file states nothing.</summary>
    public ToleranceSpec? Tolerances { get; init; }

    /// <summary>Fields that were given beside the ball's file and went before it, each as <c>field=value</c>; the name says them
    /// too.</summary>
    public IReadOnlyList<string> Given { get; init; } = [];

    /// <summary>Radius of the sphere on which the cover is fitted, mm: core radius + cement + the share of the felt's thickness at which
    /// its neutral layer sits.</summary>
    public double FittedRadiusMm => (Core.OuterDiameterMm / 2) + Cement.ThicknessMm + (Felt.NeutralLayer * Felt.ThicknessMm);

    /// <summary>Diameter of the finished ball, mm: core, cement and finished felt on both sides.</summary>
    public double FinishedDiameterMm => Core.OuterDiameterMm + (2 * (Cement.ThicknessMm + Felt.FinishedThicknessMm));
}
