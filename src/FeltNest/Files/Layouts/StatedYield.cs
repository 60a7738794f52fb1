using FeltNest.Files.Fields;
using FeltNest.Files.Json;
using FeltNest.Layout;
using FeltNest.Yield;
using static FeltNest.Files.Layouts.LayoutDocument;

namespace FeltNest.Files.Layouts;

/// <summary>Holds the figures a layout file states about itself against those that follow from its geometry.</summary>
internal static class StatedYield
{
    // Stated and computed figures this near to each other, as a share, differ only by rounding.
    private const double Rounding = 1e-4;

    /// <summary>One line for each figure of the file that its own geometry contradicts; empty for a sound file.</summary>
    public static IReadOnlyList<string> Contradictions(LayoutInput input, YieldFigures yields)
    {
        Dictionary<string, double> computed = Computed(input.Layout, yields);
        List<string> lines = [];
        foreach (StatedFigure figure in input.Stated)
        {
            double value = computed[figure.Field];
            bool agrees = figure.Value == value || Math.Abs(figure.Value - value) <= Rounding * Math.Max(1, Math.Abs(value));
            if (!agrees)
            {
                lines.Add(FormattableString.Invariant($"{figure.Field} says {figure.Value:0.######}, the geometry gives {value:0.######}"));
            }
        }

        return lines;
    }

    /// <summary>Reads the stated figures of <c>yield</c> where the file has them.</summary>
    internal static void Collect(JsonFields top, List<StatedFigure> stated)
    {
        if (top.OptionalObject(LayoutDocument.Yield) is not { } yields)
        {
            return;
        }

        Add(
            yields, stated, YieldFields.PanelsPerMetre, YieldFields.BallsPerMetre, YieldFields.UtilisationPercent,
            YieldFields.WastePercent);
        JsonFields usage = yields.Object(YieldFields.PerThousandBalls);
        // Felt per thousand balls has no value where no panel finds its partner.
        foreach (NumberField field in (NumberField[])[PerThousandBallsFields.Metres, PerThousandBallsFields.SquareMetres])
        {
            stated.Add(new(usage.PathOf(field), usage.OptionalNumber(field) ?? double.PositiveInfinity));
        }

        if (usage.Has(PerThousandBallsFields.Kilograms))
        {
            Add(usage, stated, PerThousandBallsFields.Kilograms);
        }

        Add(
            yields.Object(YieldFields.Account), stated, AccountFields.GoodPanelsPercent, AccountFields.BetweenPanelsPercent,
            AccountFields.UnusedEdgePercent, AccountFields.EdgeTrimPercent);
    }

    private static void Add(JsonFields fields, List<StatedFigure> stated, params NumberField[] figures) =>
        stated.AddRange(figures.Select(figure => new StatedFigure(fields.PathOf(figure), fields.Number(figure))));

    private static Dictionary<string, double> Computed(RollLayout layout, YieldFigures yields)
    {
        Dictionary<string, double> values = new()
        {
            ["roll.usableWidthMm"] = layout.UsableWidthMm,
            ["yield.panelsPerMetre"] = yields.PanelsPerMetre,
            ["yield.ballsPerMetre"] = yields.BallsPerMetre,
            ["yield.utilisationPercent"] = yields.UtilisationPercent,
            ["yield.wastePercent"] = yields.WastePercent,
            ["yield.perThousandBalls.metres"] = yields.PerThousandBalls.Metres,
            ["yield.perThousandBalls.squareMetres"] = yields.PerThousandBalls.SquareMetres,
            ["yield.perThousandBalls.kilograms"] = yields.PerThousandBalls.Kilograms ?? double.PositiveInfinity,
            ["yield.account.goodPanelsPercent"] = yields.Account.GoodPanelsPercent,
            ["yield.account.betweenPanelsPercent"] = yields.Account.BetweenPanelsPercent,
            ["yield.account.unusedEdgePercent"] = yields.Account.UnusedEdgePercent,
            ["yield.account.edgeTrimPercent"] = yields.Account.EdgeTrimPercent,
        };
        for (int i = 0; i < layout.Parts.Count; i++)
        {
            values[$"panels[{i}].areaMm2"] = layout.Parts[i].AreaMm2;
            values[$"panels[{i}].perimeterMm"] = layout.Parts[i].PerimeterMm;
        }

        return values;
    }
}
