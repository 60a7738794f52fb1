using FeltNest.Geometry;
using FeltNest.Layout.Limits;
using FeltNest.Layout.Polish;
using FeltNest.Layout.Rows;
using FeltNest.Layout.Rows.Tables;

namespace FeltNest.Layout.Bands;

/// <summary>A band of parallel rows, polished on exact distances.</summary>
/// <param name="Low">Lower side from the lower selvedge, mm.</param>
/// <param name="High">Upper side, mm.</param>
/// <param name="Rows">Its rows.</param>
/// <param name="Repeat">Its repeat.</param>
internal sealed record RowBand(double Low, double High, RowLattice Rows, LayoutRepeat Repeat)
{
    /// <summary>Panels per mm of roll.</summary>
    internal double Density => Rows.Density;

    /// <summary>Rows brought into a band and polished, or null where they do not fit.</summary>
    /// <param name="request">Part, gap and roll.</param>
    /// <param name="low">Lower side, mm.</param>
    /// <param name="high">Upper side, mm.</param>
    /// <param name="near">Rows to start from.</param>
    /// <param name="tilts">Tilts allowed.</param>
    /// <param name="effort">Work to spend.</param>
    internal static RowBand? Polished(LayoutRequest request, double low, double high, RowLattice near, TiltRange tilts, SearchEffort effort)
    {
        Outline turned = request.Part.Outline.Turned(near.Tilt);
        double room = high - low - (turned.MaxY - turned.MinY);
        if (room < (near.Rows == 1 ? -effort.FirstTrust : 0))
        {
            return null;
        }

        RowLattice rows = near with { Step = near.Rows == 1 ? 0 : room / (near.Rows - 1) };
        LayStart start = LayStart.Of(FreeCloth.Run(request, low, high), rows, tilts);
        return LayoutPolisher.Polish(start.Model, effort.PolishSteps, effort.FirstTrust) is { } end
            ? new RowBand(low, high, new RowLattice(end[1], rows.Rows, end[0], end[2], end[3]), start.Build(end)) : null;
    }
}
