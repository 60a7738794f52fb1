using System.Globalization;
using System.Text;
using FeltNest.Ball;
using FeltNest.Design;
using FeltNest.Panel;

namespace FeltNest.Report;

/// <summary>The table of seams designed for least felt.</summary>
internal static class SeamDesignReport
{
    /// <summary>The text, lines ending in a line feed.</summary>
    public static string Text(SeamFront front)
    {
        StringBuilder text = new();
        string head = string.Create(
            CultureInfo.InvariantCulture,
            $"{front.Question.Ball.Name}: seams for least felt, roll {front.Roll.RollWidthMm:0.##} mm, gap {front.Roll.GapMm:0.##} mm");
        text.Append(head).Append('\n').Append('-', head.Length).Append('\n');
        text.Append("limit  seam            waist  radius stretch compr.  gap   plane    roll  waste\n");
        text.Append("    %                     mm      mm       %      %   mm  m2/1000 balls      %\n");
        text.Append(Line("     ", "as given", front.Given, front.Given));
        foreach (SeamMark mark in front.Marks)
        {
            text.Append(Line(
                mark.StretchLimitPercent.ToString("0.##", CultureInfo.InvariantCulture).PadLeft(5), EnumWord.Of(mark.Curve), mark.Roll,
                mark.Plane));
        }

        return text.Append(Foot(front)).ToString();
    }

    private static string Line(string limit, string name, SeamChoice roll, SeamChoice plane)
    {
        FlatPanel p = roll.Panel;
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{limit}  {name,-13}{p.Sphere.WaistMm,8:0.00}{p.Sphere.LeastRadiusMm,8:0.00}{p.Strain.MaxStretchPercent,8:0.00}"
                + $"{p.Strain.MaxCompressionPercent,7:0.00}{p.Fit?.LargestGapMm,5:0.00}{plane.PlaneSquareMetres,8:0.00}"
                + $"{roll.RollSquareMetres,8:0.00}{roll.Yield.WastePercent,7:0.0}\n");
    }

    private static TextTable Foot(SeamFront front)
    {
        TextTable foot = new();
        foot.Note(
            "Felt before losses. Each line is the seam with the least felt on the roll; the column plane is the least felt of a seam "
                + "designed for the endless plane. Radius: least of the seam; gap: what the fitter feels with the edge free.");
        if (front.Question.TurnsWarp)
        {
            string angles = string.Join(", ", front.Of(SeamFamily.Shaped).Select(mark => string.Create(
                CultureInfo.InvariantCulture, $"{mark.Roll.Ball.Panel.WarpAngleDeg:0.0} at {mark.StretchLimitPercent:0.##} %")));
            foot.Note($"Angle of the shaped panels to the warp, degrees: {angles}. They lie on the roll at that angle.");
        }

        if (Flat(front) is { } range)
        {
            foot.Note(range);
        }

        foreach ((double limit, SeamFamily curve, string reason) in front.Unanswered)
        {
            foot.Note(string.Create(CultureInfo.InvariantCulture, $"{limit:0.##} %, {EnumWord.Of(curve)}: no answer: {reason}."));
        }

        if (front.CutShort)
        {
            foot.Note("Cut short: marks not reached are missing.");
        }

        foot.Note($"Before you believe it: {SeamFront.Caution}.");
        return foot;
    }

    // Limits above the one from which the shaped seam's felt no longer falls.
    private static string? Flat(SeamFront front)
    {
        // Felt that differs by less, in parts, is the same: a tenth of a per cent is less than one roll differs from the next.
        const double same = 1e-3;
        SeamMark[] marks = [.. front.Of(SeamFamily.Shaped)];
        SeamMark from = marks.First(mark => mark.Roll.RollSquareMetres <= marks[^1].Roll.RollSquareMetres * (1 + same));
        return from.StretchLimitPercent < marks[^1].StretchLimitPercent
            ? string.Create(
                CultureInfo.InvariantCulture,
                $"Flat from {from.StretchLimitPercent:0.##} % on: greater limits of stretch save less than 0.1 % of the felt.") : null;
    }
}
