using FeltNest.Die.Edge;
using FeltNest.Geometry;

namespace FeltNest.Die.SharedRule;

/// <summary>A run of rule in a die with common cuts: from where cavities begin to share it to where they end.</summary>
public sealed record RuleRun
{
    /// <summary>Cavity whose edge it is, by its place in the gang's list.</summary>
    public required int Cavity { get; init; }

    /// <summary>The cavity that shares it, or null for a run that serves one alone; always the later of the two.</summary>
    public required int? Other { get; init; }

    /// <summary>Where it begins along the first cavity's edge, mm.</summary>
    public required double FromMm { get; init; }

    /// <summary>Where it ends, mm; beyond the edge's length where it passes its start.</summary>
    public required double ToMm { get; init; }

    /// <summary>The run in the die's frame; runs that meet have the very same end.</summary>
    public required IReadOnlyList<ArcVertex> Line { get; init; }

    /// <summary>Its pieces.</summary>
    public IReadOnlyList<EdgePiece> Pieces => [.. Line.Take(Line.Count - 1).Select((v, i) => EdgePiece.Of(v, Line[i + 1].Point))];

    /// <summary>Centre of its length.</summary>
    public Point2 Centre =>
        Pieces is var pieces && pieces.Sum(q => q.LengthMm) is var total
            ? pieces.Aggregate(default(Point2), (sum, p) => sum + (Middle(p) * (p.LengthMm / total)))
            : default;

    /// <summary>Length, mm.</summary>
    public double LengthMm => ToMm - FromMm;

    // Centre of an arc's length: on its middle radius, at the share sin(half)/half of it.
    private static Point2 Middle(EdgePiece piece) =>
        piece.Turn == 0 ? piece.Middle : piece.Centre + ((piece.Middle - piece.Centre) * (Math.Sin(piece.Turn / 2) / (piece.Turn / 2)));
}
