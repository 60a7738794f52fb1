using FeltNest.Ball;
using FeltNest.Ball.Tolerance;

namespace FeltNest.Panel.Budget;

/// <summary>The gap round a ball's seam with its spread by what may be off.</summary>
internal sealed record GapBudget
{
    /// <summary>How the tolerances are read.</summary>
    public required ToleranceReading ReadAs { get; init; }

    /// <summary>Balls counted.</summary>
    public required int Balls { get; init; }

    /// <summary>Gaps that the edge adhesive bridges; null where the ball states none.</summary>
    public required AdhesiveRange? Adhesive { get; init; }

    /// <summary>Tolerances in the budget.</summary>
    public required IReadOnlyList<GapSource> Sources { get; init; }

    /// <summary>Fields of tolerances that the ball does not state: they are not in the budget.</summary>
    public required IReadOnlyList<string> NotStated { get; init; }

    /// <summary>At fitting: as cut.</summary>
    public required GapState AtFitting { get; init; }

    /// <summary>After the felt has shrunk in the cure; the same as at fitting where it does not shrink.</summary>
    public required GapState AfterCure { get; init; }

    /// <summary>Whether the two states differ.</summary>
    public bool Shrinks => !ReferenceEquals(AtFitting, AfterCure);
}
