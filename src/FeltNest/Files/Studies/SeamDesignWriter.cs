using FeltNest.Design;
using FeltNest.Files.Json;
using static FeltNest.Files.Studies.SeamDesignDocument;

namespace FeltNest.Files.Studies;

/// <summary>Writes seams designed for least felt as JSON (schema feltnest/seam-design/1) and as CSV.</summary>
internal static class SeamDesignWriter
{
    /// <summary>The JSON file's bytes.</summary>
    public static byte[] Json(SeamFront front)
    {
        SeamQuestion asked = front.Question;
        using JsonOutput json = new(SeamDesignDocument.Document);
        json.Text(SeamDesignDocument.Ball, asked.Ball.Name)
            .Text(SeamDesignDocument.Edge, EnumWord.Of(asked.Ball.Panel.Edge))
            .Object(SeamDesignDocument.Limits, limits => limits
                .Number(LimitsFields.MaxEdgeCompressionPercent, asked.Ball.Felt.MaxEdgeCompressionPercent)
                .Number(LimitsFields.MaxCompressionPercent, asked.Limits.CompressionPercent)
                .Number(LimitsFields.LeastRadiusMm, asked.Limits.LeastRadiusMm)
                .Number(LimitsFields.LeastRunMm, asked.Limits.LeastRunMm)
                .Number(LimitsFields.MostGapMm, asked.Limits.MostGapMm))
            .Object(SeamDesignDocument.Roll, fields => StudyJson.Roll(fields, front.Roll))
            .Number(SeamDesignDocument.Waves, asked.Waves)
            .Flag(SeamDesignDocument.Unmirrored, asked.Unmirrored)
            .Flag(SeamDesignDocument.TurnsWarp, asked.TurnsWarp)
            .Number(SeamDesignDocument.Solves, front.Solves)
            .Flag(SeamDesignDocument.CutShort, front.CutShort)
            .Text(SeamDesignDocument.Caution, SeamFront.Caution)
            .Object(SeamDesignDocument.Given, fields => Choice(fields, front.Given))
            .Objects(SeamDesignDocument.Marks, front.Marks, (item, mark) => item
                .Number(MarkFields.StretchLimitPercent, mark.StretchLimitPercent)
                .Text(MarkFields.Curve, EnumWord.Of(mark.Curve))
                .Object(MarkFields.Plane, fields => Choice(fields, mark.Plane))
                .Object(MarkFields.Roll, fields => Choice(fields, mark.Roll)))
            .Objects(SeamDesignDocument.Unanswered, front.Unanswered, (item, none) => item
                .Number(UnansweredFields.StretchLimitPercent, none.StretchLimitPercent)
                .Text(UnansweredFields.Curve, EnumWord.Of(none.Curve))
                .Text(UnansweredFields.Reason, none.Reason));
        return json.Finish();
    }

    /// <summary>The CSV file's bytes: a line of names, then two lines a mark.</summary>
    public static byte[] Csv(SeamFront front) => SeamDesignListing.Columns.Csv(front.Marks.SelectMany(mark => new[]
    {
        new SeamDesignListing.Line(mark, "plane", mark.Plane), new SeamDesignListing.Line(mark, "roll", mark.Roll),
    }));

    private static void Choice(JsonOutput json, SeamChoice choice)
    {
        json.Number(ChoiceFields.SeamWaistMm, choice.Panel.Sphere.WaistMm)
            .Rows(ChoiceFields.Offsets, choice.Ball.Seam.Offsets ?? [], wave => [wave.Order, wave.AmountMm])
            .Number(ChoiceFields.WarpAngleDeg, choice.Ball.Panel.WarpAngleDeg)
            .Number(ChoiceFields.SeamLengthMm, choice.Panel.Sphere.SeamLengthMm)
            .Number(ChoiceFields.LeastRadiusMm, choice.Panel.Sphere.LeastRadiusMm)
            .Number(ChoiceFields.LeastRunMm, choice.LeastRunMm)
            .Number(ChoiceFields.MaxStretchPercent, choice.Panel.Strain.MaxStretchPercent)
            .Number(ChoiceFields.MaxCompressionPercent, choice.Panel.Strain.MaxCompressionPercent)
            .Number(ChoiceFields.EdgeMaxCompressionPercent, choice.Panel.Strain.EdgeMaxCompressionPercent)
            .Number(ChoiceFields.EdgeHeldPercent, choice.Panel.EdgeLimit?.SharePercent ?? 0)
            .Number(ChoiceFields.LargestGapMm, choice.Panel.Fit?.LargestGapMm)
            .Number(ChoiceFields.PanelAreaMm2, choice.Panel.AreaMm2)
            .Number(ChoiceFields.PlaneSquareMetres, choice.PlaneSquareMetres);
        StudyJson.Yield(json, choice.Yield);
        json.Outline(ChoiceFields.Outline, choice.Panel.Outline);
    }
}
