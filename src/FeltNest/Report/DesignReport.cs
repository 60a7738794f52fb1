using System.Globalization;
using FeltNest.Ball;
using FeltNest.Design;

namespace FeltNest.Report;

/// <summary>What the angle to the warp does to a panel: strains when laid off its design, and what designing for the tilt gains.</summary>
internal static class DesignReport
{
    /// <summary>Strains of a panel laid at other angles than designed; empty text where there are none.</summary>
    public static string Laid(BallSpec ball, IReadOnlyList<LaidStrain> laid)
    {
        TextTable table = new();
        foreach (LaidStrain one in laid)
        {
            table.Heading(
                FormattableString.Invariant(
                    $"Laid at {one.LaidAngleDeg:0.##} degrees to the warp, designed for {one.DesignAngleDeg:0.##}"));
            if (one.Wrap.EdgeHeld is { } held)
            {
                table.Line(
                    "greatest stretch", held.MaxStretchPercent, "0.00", "%",
                    FormattableString.Invariant($"limit in the ball file {ball.Felt.MaxStretchPercent:0.##} %"))
                    .Line("greatest compression", held.MaxCompressionPercent, "0.00", "%", "edge held on the seam as designed")
                    .Line("greatest edge pull", held.EdgePullNPerMm, "0.000", "N/mm", "what holding it there needs");
            }
            else
            {
                table.Note($"Not drawn to the seam: {one.Wrap.WhyNotHeld}.");
            }

            table.Line("gap, edge free", one.Wrap.EdgeFree.LargestGapMm, "0.00", "mm")
                .Line("overlap, edge free", one.Wrap.EdgeFree.LargestOverlapMm, "0.00", "mm");
        }

        return laid.Count == 0 ? string.Empty : table.ToString();
    }

    /// <summary>Limits of the ball file that are passed only because a panel is laid off its design; empty where none is.</summary>
    /// <remarks>The edge is held place by place as designed, so what it is pushed together by does not change: stretch alone can pass its
    /// limit there.</remarks>
    public static IReadOnlyList<string> Warnings(BallSpec ball, IReadOnlyList<LaidStrain> laid) =>
    [
        .. laid
            .Where(one => one.Wrap.EdgeHeld is { } held && !ball.Felt.TakesStretch(held.MaxStretchPercent))
            .Select(one => string.Create(
            CultureInfo.InvariantCulture,
            $"laid at {one.LaidAngleDeg:0.##} degrees to the warp instead of {one.DesignAngleDeg:0.##} the felt is stretched by up to "
                + $"{one.Wrap.EdgeHeld!.MaxStretchPercent:0.0} %, more than the {ball.Felt.MaxStretchPercent:0.0} % the ball file allows")),
    ];

    /// <summary>What each way to choose the angle gives.</summary>
    public static string Joint(JointResult joint)
    {
        TextTable table = new();
        table.Heading("Panel and tilt designed together");
        foreach (DesignChoice choice in joint.Choices)
        {
            string strain = choice.Strain is { } s
                ? FormattableString.Invariant($"stretch {s.MaxStretchPercent:0.0} %, edge {s.EdgeMaxCompressionPercent:0.0} %")
                : "strains are not as designed";
            table.Line(
                choice.Name, choice.Yield.PerThousandBalls.SquareMetres, "0.00", "m2",
                FormattableString.Invariant(
                    $"per thousand balls, before losses; {choice.DesignAngleDeg:0.##} deg laid at {choice.LaidAngleDeg:0.##}; {strain}"));
        }

        return table.ToString();
    }
}
