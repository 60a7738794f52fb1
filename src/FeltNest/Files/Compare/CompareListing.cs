using FeltNest.Cost.Compare;
using FeltNest.Files.Csv;
using FeltNest.Files.Fields;
using FeltNest.Files.Studies;
using static FeltNest.Files.Compare.CompareDocument;

namespace FeltNest.Files.Compare;

/// <summary>Columns of <c>compare.csv</c>: a line a width or offer.</summary>
internal static class CompareListing
{
    public static readonly ResultColumns<CompareRow> Columns = new ResultColumns<CompareRow>("compare.csv")
        .Whole(RowFields.Rank, row => row.Rank)
        .Text(RowFields.Name, row => row.Case.Name)
        .Text(RowFields.Felt, row => row.Case.Offer?.Felt)
        .Text(RowFields.Lot, row => row.Case.Offer?.Lot)
        .Number(RowFields.WidthMm, row => row.Case.WidthMm)
        .Number(RowFields.PanelsPerMetre, row => row.Yield.PanelsPerMetre)
        .Number(RowFields.BallsPerMetre, row => row.Yield.BallsPerMetre)
        .Number(RowFields.WastePercent, row => row.Yield.WastePercent)
        .Number(FeltColumns.Metres, row => row.Account.PerThousandBalls.Metres)
        .Number(FeltColumns.SquareMetres, row => row.Account.PerThousandBalls.SquareMetres)
        .Number(FeltColumns.Kilograms, row => row.Account.PerThousandBalls.Kilograms)
        .Number(NetSquareMetres, row => row.Account.NetSquareMetres)
        .Number(AccountFields.GoodPanelsPercent, row => row.Account.Shares.Good)
        .Number(AccountFields.BetweenPanelsPercent, row => row.Account.Shares.BetweenPanels)
        .Number(AccountFields.UnusedEdgePercent, row => row.Account.Shares.UnusedEdge)
        .Number(AccountFields.EdgeTrimPercent, row => row.Account.Shares.EdgeTrim)
        .Number(AccountFields.RollEndsPercent, row => row.Account.Shares.RollEnds)
        .Number(AccountFields.RemnantPercent, row => row.Account.Shares.Remnant)
        .Number(AccountFields.FaultsPercent, row => row.Account.Shares.Faults)
        .Number(AccountFields.RejectsPercent, row => row.Account.Shares.Rejects)
        .Number(AccountFields.UnpairedPercent, row => row.Account.Shares.Unpaired)
        .Money(SheetLine("felt10", 10), row => AmountOf(row, 10))
        .Money(SheetLine("feltAtItsPrice20", 20), row => AmountOf(row, 20))
        .Money(SheetLine("freight21", 21), row => AmountOf(row, 21))
        .Money(SheetLine("duty22", 22), row => AmountOf(row, 22))
        .Money(SheetLine("credit23", 23), row => AmountOf(row, 23))
        .Money(SheetLine("surplus24", 24), row => AmountOf(row, 24))
        .Money(SheetLine("coating25", 25), row => AmountOf(row, 25))
        .Money(SheetLine("wasteSold11", 11), row => AmountOf(row, 11))
        .Money(SheetLine("netMaterial12", 12), row => AmountOf(row, 12))
        .Money(SheetLine("setUp13", 13), row => AmountOf(row, 13))
        .Money(SheetLine("labourAndMachine14", 14), row => AmountOf(row, 14))
        .Money(SheetLine("die15", 15), row => AmountOf(row, 15))
        .Money(SheetLine("board16", 16), row => AmountOf(row, 16))
        .Money(SheetLine("handling17", 17), row => AmountOf(row, 17))
        .Money(SheetLine("overhead18", 18), row => AmountOf(row, 18))
        .Money(RowFields.CostPerThousandBalls, row => row.Total)
        .Text(RowFields.Currency, row => row.Sheet?.Currency)
        .Number(Or("nominalWidthMm", "nominal width, blank where that is the planned one"), row => row.Nominal?.WidthMm)
        .Money(Or("nominalCostPerThousandBalls", "at the nominal width"), row => row.Nominal?.Total)
        .Whole(KeptRows, row => row.Kept?.Rows)
        .Number(Or("keptDiePanelsPerMetre", "of the kept die"), row => row.Kept?.PanelsPerMetre)
        .Money(Or("keptDieCostPerThousandBalls", "with the kept die"), row => row.Kept?.Total);

    private static NumberField NetSquareMetres => new("netSquareMetresPerThousandBalls", PerThousandBallsFields.NetSquareMetres.Meaning)
    {
        Unit = "m2",
    };

    private static WholeField KeptRows => new("keptDieRows", "rows of the kept die that fit; blank without one") { OrNull = true };

    private static NumberField SheetLine(string name, int line) => Or(name, $"line {line} of the cost sheet, per thousand balls");

    private static NumberField Or(string name, string meaning) => new(name, meaning) { OrNull = true };

    private static decimal? AmountOf(CompareRow row, int line) => row.Sheet?.Lines[line - 1].Amount;
}
