using FeltNest.Die;

namespace FeltNest.Page.Answers;

/// <summary>A die's figures and what to watch. Lengths mm.</summary>
internal sealed record DieAnswer(
    int Cavities, double FeedMm, double BoardLengthMm, double BoardWidthMm, double MassKg, double RuleLengthMm, double LeastRadiusMm,
    double? LeastGapMm, double ForceKn, string[] Notes)
{
    /// <summary>The answer of a design.</summary>
    public static DieAnswer Of(DieDesign design) => new(
        design.Gang.Cavities.Count, design.Gang.FeedMm, design.Gang.BoardLengthMm, design.Gang.BoardWidthMm, design.MassKg,
        design.RuleLengthMm, design.LeastRadiusMm,
        double.IsFinite(design.LeastGapMm) ? design.LeastGapMm : null, design.Force.Kn, [.. design.Notes.Select(n => n.Text)]);
}
