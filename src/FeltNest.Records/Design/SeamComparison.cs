using FeltNest.Ball;
using FeltNest.Layout;

namespace FeltNest.Design;

/// <summary>Seam families side by side on one ball and one roll.</summary>
internal sealed record SeamComparison
{
    /// <summary>The ball; its own curve is one of those compared.</summary>
    public required BallSpec Ball { get; init; }

    /// <summary>Waist of all of them on the fitted sphere, mm.</summary>
    public required double WaistMm { get; init; }

    /// <summary>The question asked of the layout engine, with the part of the first seam.</summary>
    public required LayoutRequest Roll { get; init; }

    /// <summary>One a seam, in the order of the families; at least one.</summary>
    public required IReadOnlyList<SeamEntry> Entries { get; init; }

    /// <summary>Seams without a panel that keeps the felt's limit and fits the roll, with the reason.</summary>
    public required IReadOnlyList<(SeamFamily Curve, string Reason)> Unanswered { get; init; }

    /// <summary>True when the comparison was stopped before all seams were done.</summary>
    public required bool CutShort { get; init; }
}
