using FeltNest.Geometry;
using FeltNest.Layout.Limits;
using FeltNest.Layout.Polish;
using FeltNest.Layout.Rows;
using FeltNest.Layout.Rows.Tables;

namespace FeltNest.Layout.Bands;

/// <summary>A band of parallel rows, polished on exact distances.</summary>
internal sealed record RowBand
{
    /// <summary>Lower side from the lower selvedge, mm.</summary>
    public required double Low { get; init; }

    /// <summary>Upper side, mm.</summary>
    public required double High { get; init; }

    /// <summary>Its rows.</summary>
    public required RowLattice Rows { get; init; }

    /// <summary>Its repeat.</summary>
    public required LayoutRepeat Repeat { get; init; }

    /// <summary>Panels per mm of roll.</summary>
    internal double Density => Rows.Density;

    /// <summary>Rows brought into a band and polished, or null where they do not fit.</summary>
    /// <param name="request">Part, gap and roll.</param>
    /// <param name="low">Lower side, mm.</param>
    /// <param name="high">Upper side, mm.</param>
    /// <param name="near">Rows to start from.</param>
    /// <param name="tilts">Tilts allowed.</param>
    /// <param name="effort">Work to spend.</param>
    /// <param name="isNear">Whether the rows are near their best already, as those of a scan are.</param>
    internal static RowBand? Polished(
        LayoutRequest request, double low, double high, RowLattice near, TiltRange tilts, SearchEffort effort, bool isNear = false)
    {
        Outline turned = request.Part.Outline.Turned(near.Tilt);
        double room = high - low - (turned.MaxY - turned.MinY);
        if (room < (near.Rows == 1 ? -effort.FirstTrust : 0))
        {
            return null;
        }

        RowLattice rows = near with { Step = near.Rows == 1 ? 0 : room / (near.Rows - 1) };
        LayStart start = LayStart.Of(FreeCloth.Run(request, low, high), rows, tilts);
        return LayoutPolisher.Polish(start.Model, effort.PolishSteps, effort.FirstTrust, isNear) is { } end
            ? new RowBand
            {
                Low = low,
                High = high,
                Rows = new RowLattice { Tilt = end[1], Rows = rows.Rows, Pitch = end[0], Shift = end[2], Step = end[3] },
                Repeat = start.Build(end),
            } : null;
    }
}
