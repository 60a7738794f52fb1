using FeltNest.Ball.Tolerance;

namespace FeltNest.Ball;

/// <summary>What is covered and with what: the whole ball specification.</summary>
public sealed record BallSpec
{
    /// <summary>Name shown on results.</summary>
    public required string Name { get; init; }

    /// <summary>Row of the rule table it is meant for.</summary>
    public required RuleType RuleType { get; init; }

    /// <summary>Rubber core.</summary>
    public required CoreSpec Core { get; init; }

    /// <summary>Adhesive between core and felt.</summary>
    public required CementSpec Cement { get; init; }

    /// <summary>The felt.</summary>
    public required FeltSpec Felt { get; init; }

    /// <summary>The seam on the fitted sphere.</summary>
    public required SeamSpec Seam { get; init; }

    /// <summary>How the panel is made flat.</summary>
    public required PanelSpec Panel { get; init; }

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
