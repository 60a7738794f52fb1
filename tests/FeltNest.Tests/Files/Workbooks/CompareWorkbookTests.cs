using System.Diagnostics;
using System.Globalization;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;
using DocumentFormat.OpenXml.Validation;
using FeltNest.Cost.Compare;
using FeltNest.Cost.Offers;
using FeltNest.Cost.Sheet;
using FeltNest.Files.Compare.Workbook;
using FeltNest.Tests.Cost.Compare;
using Xunit;

namespace FeltNest.Tests.Files.Workbooks;

/// <summary>A comparison as a workbook: a spreadsheet program works out what the tool does.</summary>
public sealed class CompareWorkbookTests : IDisposable
{
    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact, Trait("tier", "long")]
    public void A_spreadsheet_program_finds_every_total_and_line_of_the_tool()
    {
        Comparison comparison = HandoverCases.Of(HandoverCases.Costs, HandoverCases.Offers);

        Agree(comparison, CompareWorkbook.Xlsx(comparison));
    }

    [Fact, Trait("tier", "long")]
    public void Without_costs_and_with_few_of_them_the_workbook_agrees_too()
    {
        Comparison bare = HandoverCases.Of(null, [.. HandoverCases.Offers.Take(1)]);
        CostInputs few = HandoverCases.Costs with
        {
            AnnualBalls = null,
            InterestPercent = null,
            SurplusWorthPercent = null,
            CoatingPerSquareMetre = null,
            Die = null,
            Gang = null,
            SetUp = null,
            RecoveryPerKg = null,
            OverheadPercent = null,
        };
        Comparison some = HandoverCases.Of(few, HandoverCases.Offers);

        Agree(bare, CompareWorkbook.Xlsx(bare));
        Agree(some, CompareWorkbook.Xlsx(some));
    }

    // Each figure is changed by hand in the workbook, and put to the tool as an input.
    [Theory, Trait("tier", "long")]
    [InlineData("offers", "price0", "-kilograms", 4.4)]
    [InlineData("shop", "labour and machine", null, 0.41)]
    [InlineData("shop", "good balls the felt is bought for", null, 90)]
    [InlineData("shop", "lost at each end of a roll", null, 333)]
    [InlineData("shop", "price of the die", null, 90_000)]
    public void A_figure_changed_in_the_workbook_is_followed_as_the_tool_does(string sheet, string line, string? offer, double value)
    {
        byte[] workbook = CompareWorkbook.Xlsx(HandoverCases.Of(HandoverCases.Costs, HandoverCases.Offers));
        CostInputs costs = HandoverCases.Costs;
        costs = line switch
        {
            "labour and machine" => costs with { PerStrike = (decimal)value },
            "lost at each end of a roll" => costs with { Losses = costs.Losses with { EndLossMm = value } },
            "price of the die" => costs with { Die = costs.Die! with { Price = (decimal)value } },
            _ => costs,
        };
        FeltOffer[] offers = [.. HandoverCases.Offers.Select(
            o => o.Name == offer ? o with { Price = o.Price with { Amount = (decimal)value } } : o)];
        double? balls = line.StartsWith("good balls", StringComparison.Ordinal) ? value : null;
        Comparison changed = HandoverCases.Of(costs, offers, balls);
        int column = offer is null ? 0 : Array.FindIndex(offers, o => o.Name == offer);

        Agree(changed, Changed(workbook, sheet, line == "price0" ? "price from there" : line, column, value));
    }

    [Fact]
    public void The_same_comparison_gives_the_same_bytes_and_a_sound_file()
    {
        Comparison comparison = HandoverCases.Of(HandoverCases.Costs, HandoverCases.Offers);
        byte[] first = CompareWorkbook.Xlsx(comparison);
        using SpreadsheetDocument document = SpreadsheetDocument.Open(new MemoryStream(first), false);

        Assert.Equal(first, CompareWorkbook.Xlsx(comparison));
        Assert.Empty(new OpenXmlValidator().Validate(document, TestContext.Current.CancellationToken).Select(fault => fault.Description));
    }

    [Fact]
    public void A_name_that_begins_like_a_formula_is_text_and_every_other_figure_of_the_ranking_is_a_formula()
    {
        byte[] workbook = CompareWorkbook.Xlsx(HandoverCases.Of(HandoverCases.Costs, HandoverCases.Offers));
        using SpreadsheetDocument document = SpreadsheetDocument.Open(new MemoryStream(workbook), false);
        Cell[] names = [.. CellsOf(document, "offers").Where(c => c.InnerText is "=1+1" or "-kilograms")];
        CellFormat[] formats = [.. document.WorkbookPart!.WorkbookStylesPart!.Stylesheet!.CellFormats!.Elements<CellFormat>()];
        Cell[] ranked = [.. CellsOf(document, "ranking").Where(c => int.Parse(c.CellReference!.Value!.TrimStart([.. "ABCDEFGHI"]),
            CultureInfo.InvariantCulture) > 5)];

        Assert.Equal(2, names.Length);
        Assert.All(names, c => Assert.Equal(CellValues.InlineString, c.DataType!.Value));
        Assert.All(names, c => Assert.True(formats[(int)c.StyleIndex!.Value].QuotePrefix!.Value));
        Assert.Equal(24, ranked.Length);
        Assert.All(ranked, c => Assert.NotNull(c.CellFormula));
    }

    private void Agree(Comparison comparison, byte[] workbook)
    {
        Dictionary<string, string[][]> sheets = Recalculated(workbook);
        for (int i = 0; i < comparison.Rows.Count; i++)
        {
            CompareRow row = comparison.Rows[i];
            string[] ranked = sheets["ranking"][5 + i];

            Assert.Equal(row.Case.Name, ranked[0]);
            Assert.Equal(row.Account.PerThousandBalls.SquareMetres, Number(ranked[1]), 1e-9);
            Assert.Equal(row.Rank, Number(ranked[3]));
            Assert.Equal((double)row.Total!.Value, Number(ranked[2]), 1e-9);
            foreach (CostLine line in row.Sheet!.Lines)
            {
                string[] cells = Assert.Single(
                    sheets["cost"], c => c[0].StartsWith(FormattableString.Invariant($"{line.Number}  "), StringComparison.Ordinal));
                double? wanted = line.Number <= 9 ? line.Quantity : (double?)line.Amount;
                Assert.Equal(wanted is null, cells[2 + i] == "not given");
                Assert.Equal(wanted ?? 0, wanted is null ? 0 : Number(cells[2 + i]), 1e-9);
            }
        }

        Assert.Equal(comparison.Ranking.Select(r => r.Case.Name), sheets["ranking"].Skip(5).Select(cells => cells[7]));
    }

    // A line of a sheet is found by its name; the first one counts.
    private static byte[] Changed(byte[] workbook, string sheet, string line, int column, double value)
    {
        MemoryStream copy = new();
        copy.Write(workbook);
        using (SpreadsheetDocument document = SpreadsheetDocument.Open(copy, true))
        {
            Cell name = CellsOf(document, sheet).First(c => c.InnerText == line);
            string place = "CDE"[column] + name.CellReference!.Value![1..];
            Cell figure = CellsOf(document, sheet).Single(c => c.CellReference!.Value == place);
            Assert.Null(figure.CellFormula);
            figure.CellValue = new CellValue(value);
        }

        return copy.ToArray();
    }

    private static IEnumerable<Cell> CellsOf(SpreadsheetDocument document, string sheet)
    {
        string id = document.WorkbookPart!.Workbook!.Descendants<Sheet>().Single(s => s.Name == sheet).Id!;
        return ((WorksheetPart)document.WorkbookPart.GetPartById(id)).Worksheet!.Descendants<Cell>();
    }

    // All sheets as the program shows them after working them out, with every digit it holds.
    private Dictionary<string, string[][]> Recalculated(byte[] workbook)
    {
        const string program = "/usr/bin/soffice";
        const string allSheets = "csv:Text - txt - csv (StarCalc):9,34,76,1,,0,false,true,false,false,false,-1";
        Assert.SkipUnless(File.Exists(program), "soffice (libreoffice-calc) is not installed");
        File.WriteAllBytes(folder.Path("book.xlsx"), workbook);
        ProcessStartInfo start = new(program,
        [
            $"-env:UserInstallation=file://{folder.Path("settings")}", "--headless", "--convert-to", allSheets, "--outdir",
            folder.Path("tables"), folder.Path("book.xlsx"),
        ])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        using Process process = Process.Start(start)!;
        Task<string> output = process.StandardOutput.ReadToEndAsync();
        string errors = process.StandardError.ReadToEnd();
        process.WaitForExit();
        Assert.True(process.ExitCode == 0, errors + output.Result);
        return Directory.GetFiles(folder.Path("tables")).ToDictionary(
            path => Path.GetFileNameWithoutExtension(path)["book-".Length..],
            path => File.ReadAllLines(path).Select(line => line.Split('\t')).ToArray());
    }

    private static double Number(string cell) => double.Parse(cell, CultureInfo.InvariantCulture);
}
