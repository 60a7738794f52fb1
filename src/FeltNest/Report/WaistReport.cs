using System.Globalization;
using System.Text;
using FeltNest.Design;

namespace FeltNest.Report;

/// <summary>The table a study of waists prints.</summary>
internal static class WaistReport
{
    /// <summary>The text, lines ending in a line feed.</summary>
    public static string Text(WaistTradeOff study)
    {
        StringBuilder text = new();
        string head = string.Create(
            CultureInfo.InvariantCulture,
            $"{study.Ball.Name}: choosing the waist, roll {study.Roll.RollWidthMm:0.##} mm, gap {study.Roll.GapMm:0.##} mm");
        text.Append(head).Append('\n').Append('-', head.Length).Append('\n');
        text.Append("  waist  stretch  compr.  at edge    panel     seam   panels  felt per 1000 balls\n");
        text.Append("     mm        %       %        %      cm2       mm    per m         m         m2\n");
        foreach (WaistPoint p in study.Points)
        {
            text.Append(string.Create(
                CultureInfo.InvariantCulture,
                $"{p.WaistMm,7:0.##}{p.Strain.MaxStretchPercent,8:0.00}{(p.StretchAllowed ? ' ' : '!')}"
                    + $"{p.Strain.MaxCompressionPercent,7:0.00}{p.Strain.EdgeMaxCompressionPercent,9:0.00}{(p.EdgeAllowed ? ' ' : '!')}"
                    + $"{p.PanelAreaMm2 / 100,8:0.00}{p.SeamLengthMm,9:0.00}{p.Yield.PanelsPerMetre,9:0.00}"
                    + $"{p.Yield.PerThousandBalls.Metres,10:0.00}{p.Yield.PerThousandBalls.SquareMetres,11:0.00}"
                    + $"{(p == study.Best ? " <" : string.Empty)}"));
            text.Append('\n');
        }

        TextTable foot = new();
        foot.Note($"{(study.Best is null ? string.Empty : "< ")}{study.Finding}.");
        foot.Note("Felt of the full roll width, before losses.");
        foot.Note("! above the limit in the ball file.");
        foreach ((double waist, string reason) in study.Unanswered)
        {
            foot.Note(string.Create(CultureInfo.InvariantCulture, $"Waist {waist:0.##} mm has no answer: {reason}."));
        }

        if (study.CutShort)
        {
            foot.Note("Cut short: waists not reached are missing.");
        }

        return text.Append(foot).ToString();
    }
}
