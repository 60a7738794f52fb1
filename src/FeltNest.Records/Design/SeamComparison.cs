using FeltNest.Ball;
using FeltNest.Layout;

namespace FeltNest.Design;

/// <summary>Seam families side by side on one ball and one roll.</summary>
/// <param name="Ball">The ball; its own curve is one of those compared.</param>
/// <param name="WaistMm">Waist of all of them on the fitted sphere, mm.</param>
/// <param name="Roll">The question asked of the layout engine, with the part of the first seam.</param>
/// <param name="Entries">One a seam, in the order of the families; at least one.</param>
/// <param name="Unanswered">Seams without a panel that keeps the felt's limit and fits the roll, with the reason.</param>
/// <param name="CutShort">True when the comparison was stopped before all seams were done.</param>
public sealed record SeamComparison(
    BallSpec Ball, double WaistMm, LayoutRequest Roll, IReadOnlyList<SeamEntry> Entries,
    IReadOnlyList<(SeamFamily Curve, string Reason)> Unanswered, bool CutShort);
