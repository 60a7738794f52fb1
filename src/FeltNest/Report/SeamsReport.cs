using System.Globalization;
using System.Text;
using FeltNest.Ball;
using FeltNest.Design;
using FeltNest.Panel;

namespace FeltNest.Report;

/// <summary>The table of seam families side by side.</summary>
internal static class SeamsReport
{
    // Long because it writes a table from top to bottom.
    /// <summary>The text, lines ending in a line feed.</summary>
    public static string Text(SeamComparison comparison)
    {
        StringBuilder text = new();
        string head = string.Create(
            CultureInfo.InvariantCulture,
            $"{comparison.Ball.Name}: seams at waist {comparison.WaistMm:0.##} mm, roll {comparison.Roll.RollWidthMm:0.##} mm, gap "
                + $"{comparison.Roll.GapMm:0.##} mm");
        text.Append(head).Append('\n').Append('-', head.Length).Append('\n');
        text.Append("seam             seam  radius stretch  compr. at edge energy   panel felt/1000\n");
        text.Append("                   mm      mm       %       %       %   N mm     cm2        m2\n");
        foreach (SeamEntry e in comparison.Entries)
        {
            (FlatPanel p, StrainSummary s) = (e.Panel, e.Panel.Strain);
            text.Append(string.Create(
                CultureInfo.InvariantCulture,
                $"{EnumWord.Of(e.Ball.Seam.Curve),-13}{p.Sphere.SeamLengthMm,8:0.00}{p.Sphere.LeastRadiusMm,8:0.00}"
                    + $"{s.MaxStretchPercent,8:0.00}{(e.StretchAllowed ? ' ' : '!')}{s.MaxCompressionPercent,7:0.00}"
                    + $"{s.EdgeMaxCompressionPercent,8:0.00}{(e.EdgeAllowed ? ' ' : '!')}{s.EnergyNmm,6:0.00}{p.AreaMm2 / 100,8:0.00}"
                    + $"{e.Yield.PerThousandBalls.SquareMetres,10:0.00}"));
            text.Append('\n');
        }

        TextTable foot = new();
        foot.Note(
            "seam, radius: its length and least geodesic radius on the fitted sphere; panel: as cut; felt: m2 per thousand balls, "
                + "before losses.");
        if (comparison.Entries.Any(e => !e.StretchAllowed || !e.EdgeAllowed))
        {
            foot.Note("! above the limit in the ball file.");
        }

        foreach ((SeamFamily curve, string reason) in comparison.Unanswered)
        {
            foot.Note($"{EnumWord.Of(curve)} has no answer: {reason}.");
        }

        if (comparison.CutShort)
        {
            foot.Note("Cut short: seams not reached are missing.");
        }

        return text.Append(foot).ToString();
    }
}
