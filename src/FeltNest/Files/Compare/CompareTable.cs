using FeltNest.Cost.Compare;
using FeltNest.Cost.Sheet;
using FeltNest.Files.Csv;

namespace FeltNest.Files.Compare;

/// <summary>Writes the rows of a comparison as CSV.</summary>
internal static class CompareTable
{
    private static readonly string[] Names =
    [
        "rank", "name", "felt", "lot", "widthMm", "panelsPerMetre", "ballsPerMetre", "wastePercent", "metresPerThousandBalls",
        "squareMetresPerThousandBalls", "kilogramsPerThousandBalls",
        "netSquareMetresPerThousandBalls", "goodPanelsPercent", "betweenPanelsPercent", "unusedEdgePercent", "edgeTrimPercent",
        "rollEndsPercent", "remnantPercent", "faultsPercent",
        "rejectsPercent", "unpairedPercent", "felt10", "wasteSold11", "netMaterial12", "setUp13", "labourAndMachine14", "die15", "board16",
        "handling17", "overhead18",
        "costPerThousandBalls", "currency", "nominalWidthMm", "nominalCostPerThousandBalls", "keptDieRows", "keptDiePanelsPerMetre",
        "keptDieCostPerThousandBalls",
    ];

    /// <summary>The file's bytes: a line of names, then one line a row in the order given.</summary>
    public static byte[] Csv(Comparison comparison)
    {
        CsvText text = new CsvText().Line(Names);
        foreach (CompareRow row in comparison.Rows)
        {
            FeltAccount felt = row.Account;
            text.Line(
            [
                CsvText.Number(row.Rank), row.Case.Name, row.Case.Offer?.Felt ?? string.Empty, row.Case.Offer?.Lot ?? string.Empty,
                CsvText.Number(row.Case.WidthMm),
                CsvText.Number(row.Yield.PanelsPerMetre), CsvText.Number(row.Yield.BallsPerMetre), CsvText.Number(row.Yield.WastePercent),
                CsvText.Number(felt.PerThousandBalls.Metres),
                CsvText.Number(felt.PerThousandBalls.SquareMetres), CsvText.Number(felt.PerThousandBalls.Kilograms),
                CsvText.Number(felt.NetSquareMetres),
                .. felt.Shares.Named.Select(s => CsvText.Number(s.Percent)),
                .. Enumerable.Range(10, 9).Select(n => CsvText.Money(row.Sheet?.Lines[n - 1].Amount)),
                CsvText.Money(row.Total), row.Sheet?.Currency ?? string.Empty, CsvText.Number(row.Nominal?.WidthMm),
                CsvText.Money(row.Nominal?.Total),
                CsvText.Number(row.Kept?.Rows), CsvText.Number(row.Kept?.PanelsPerMetre), CsvText.Money(row.Kept?.Total),
            ]);
        }

        return text.Finish();
    }
}
