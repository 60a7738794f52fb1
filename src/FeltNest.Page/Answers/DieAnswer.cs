using FeltNest.Die;

namespace FeltNest.Page.Answers;

/// <summary>A die's figures and what to watch. Lengths mm.</summary>
internal sealed record DieAnswer
{
    public required int Cavities { get; init; }

    public required double FeedMm { get; init; }

    public required double BoardLengthMm { get; init; }

    public required double BoardWidthMm { get; init; }

    public required double MassKg { get; init; }

    public required double RuleLengthMm { get; init; }

    public required double LeastRadiusMm { get; init; }

    public required double? LeastGapMm { get; init; }

    public required double ForceKn { get; init; }

    public required string[] Notes { get; init; }

    /// <summary>The answer of a design.</summary>
    public static DieAnswer Of(DieDesign design) => new()
    {
        Cavities = design.Gang.Cavities.Count,
        FeedMm = design.Gang.FeedMm,
        BoardLengthMm = design.Gang.BoardLengthMm,
        BoardWidthMm = design.Gang.BoardWidthMm,
        MassKg = design.MassKg,
        RuleLengthMm = design.RuleLengthMm,
        LeastRadiusMm = design.LeastRadiusMm,
        LeastGapMm = double.IsFinite(design.LeastGapMm) ? design.LeastGapMm : null,
        ForceKn = design.Force.Kn,
        Notes = [.. design.Notes.Select(n => n.Text)],
    };
}
