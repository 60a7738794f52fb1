namespace FeltNest.Layout.Rows.Tables;

/// <summary>Parallel rows of parallel panels, each row the same step and shift from the one below.</summary>
/// <param name="Tilt">Tilt of every panel, radians.</param>
/// <param name="Rows">How many rows.</param>
/// <param name="Pitch">Step along a row, mm.</param>
/// <param name="Shift">Shift along the roll from row to row, mm.</param>
/// <param name="Step">Step across from row to row, mm.</param>
internal sealed record RowLattice(double Tilt, int Rows, double Pitch, double Shift, double Step)
{
    /// <summary>Panels per mm of roll.</summary>
    internal double Density => Rows / Pitch;
}
