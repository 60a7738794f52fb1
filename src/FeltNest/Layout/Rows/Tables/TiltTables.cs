using FeltNest.Geometry;
using FeltNest.Layout.Limits;

namespace FeltNest.Layout.Rows.Tables;

/// <summary>Step tables of a part for all tilts of a grid. They know the part, the gap, the tilts and the fineness, and nothing of a roll:
/// one set serves any number of widths.</summary>
internal sealed class TiltTables
{
    private readonly TiltRows[] tilts;

    /// <summary>Makes the tables; two threads at a time, the order does not depend on them.</summary>
    /// <param name="part">Part.</param>
    /// <param name="gapMm">Gap, mm.</param>
    /// <param name="range">Tilts allowed.</param>
    /// <param name="effort">Fineness of tilts and samples.</param>
    internal TiltTables(Outline part, double gapMm, TiltRange range, SearchEffort effort)
    {
        double extent = Math.Max(part.MaxX - part.MinX, part.MaxY - part.MinY);
        Grid = (extent + gapMm) / effort.Samples;
        StepDeg = effort.TiltStepDeg;
        Wraps = range.IsFree;

        // A hair of the part's size: the arcs' polygon is equal under the half-turn, and a symmetric panel's in its mirror, far below it.
        double hair = 1e-6 * extent;
        HasHalfTurn = OutlineSymmetry.HasHalfTurn(part, default, hair);
        HasMirror = range.IsFree && OutlineSymmetry.HasMirror(part, hair);

        // Tilts t and half a turn less t are mirrors of each other where the part is its own.
        double[] angles = range.Grid(StepDeg);
        int made = HasMirror ? (angles.Length / 2) + 1 : angles.Length;
        tilts =
        [
            .. angles
                .Take(made)
                .AsParallel()
                .AsOrdered()
                .WithDegreeOfParallelism(2)
                .Select(t => new TiltRows(TurnedPart.Make(part, t, Grid, gapMm))),
        ];
        if (HasMirror)
        {
            tilts = [.. tilts, .. Enumerable.Range(made, angles.Length - made).Select(i => tilts[angles.Length - i].Mirrored())];
        }
    }

    /// <summary>Sampling step, mm.</summary>
    internal double Grid { get; }

    /// <summary>Step of the tilts, degrees.</summary>
    internal double StepDeg { get; }

    /// <summary>True when the last tilt is the first one's neighbour.</summary>
    internal bool Wraps { get; }

    /// <summary>True when the part turned by half a turn about its origin is itself.</summary>
    internal bool HasHalfTurn { get; }

    /// <summary>True when the part is its own mirror in its u axis and all tilts are allowed: the second half of the tilts then mirrors the
    /// first.</summary>
    internal bool HasMirror { get; }

    /// <summary>Tables by tilt.</summary>
    internal IReadOnlyList<TiltRows> Tilts => tilts;
}
