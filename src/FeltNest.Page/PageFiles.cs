using FeltNest.Cost;
using FeltNest.Cost.Compare;
using FeltNest.Cost.Offers;
using FeltNest.Cost.Sheet;
using FeltNest.Die;
using FeltNest.Die.Gang;
using FeltNest.Drawing.Sheets;
using FeltNest.Drawing.Sheets.Dies;
using FeltNest.Drawing.Writers;
using FeltNest.Files;
using FeltNest.Files.Compare;
using FeltNest.Files.Dies;
using FeltNest.Files.Layouts;
using FeltNest.Files.Offers;
using FeltNest.Files.Panels;
using FeltNest.Layout;
using FeltNest.Page.Inputs;
using FeltNest.Page.Work;
using FeltNest.Panel;
using FeltNest.Panel.Wrap;
using FeltNest.Report.Compare;
using FeltNest.Rolls.Presses;
using FeltNest.Yield;
using Microsoft.AspNetCore.Http;

namespace FeltNest.Page;

/// <summary>Files that the page gives, the same bytes as the command line writes, and those it takes.</summary>
internal static class PageFiles
{
    // Offers of one upload: each is searched.
    private const int MostOffers = 12;

    private const string UploadName = "offers.csv";

    /// <summary>Names of the files that can be saved.</summary>
    public static IReadOnlyList<string> Names { get; } =
    [
        "panel.json", "panel.svg", "panel.png", "layout.json", "layout.svg", "layout.png", "die.json", "die.pdf", "die.dxf", "cavity.dxf",
        "board.dxf", "widths.json", "widths.csv", "widths.svg", "widths.png", "widths.html",
    ];

    /// <summary>A file's bytes and kind.</summary>
    /// <exception cref="NoAnswerException">The part does not fit the roll.</exception>
    public static (byte[] Content, string Kind) Make(string name, PagePanel panel, PageInputs inputs, CancellationToken gone)
    {
        LayoutRequest request = PageWork.Request(inputs, panel.Part);
        string kind = Path.GetExtension(name) switch
        {
            ".svg" => "image/svg+xml",
            ".png" => "image/png",
            ".pdf" => "application/pdf",
            ".dxf" => "image/vnd.dxf",
            ".csv" => "text/csv",
            ".html" => "text/html",
            _ => "application/json",
        };
        if (name.StartsWith("panel", StringComparison.Ordinal))
        {
            FlatPanel flat = PanelFit.Felt(panel.Ball, panel.Flat);
            return (kind switch
            {
                "image/svg+xml" => SvgWriter.Write(PanelSheet.Draw(panel.Ball, flat)),
                "image/png" => PngWriter.Write(PanelSheet.Draw(panel.Ball, flat)),
                _ => PanelWriter.Write(panel.Ball, flat),
            }, kind);
        }

        if (name.StartsWith("widths", StringComparison.Ordinal))
        {
            return (CompareFile(
                name,
                Compared(
                    request,
                    ChartWidths.Of(inputs.WidthMm)
                        .Where(width => width > request.Trims.TotalMm)
                        .Select(width => CompareCase.Of(width, request.Trims)), true, inputs.Money.Costs, gone)), kind);
        }

        RollLayout layout = LayoutSearch.Run(request, null, gone);
        if (!name.StartsWith("layout", StringComparison.Ordinal))
        {
            return (DieFile(name, Die(layout, inputs.Press, gone)), kind);
        }

        YieldFigures yields = YieldAccount.Of(layout);
        return (kind switch
        {
            "image/svg+xml" => SvgWriter.Write(LayoutSheet.Draw(layout, yields)),
            "image/png" => PngWriter.Write(LayoutSheet.Draw(layout, yields)),
            _ => LayoutWriter.Write(layout, yields, [], LaidStrain.Of(panel.Ball, panel.Flat, layout)),
        }, kind);
    }

    /// <summary>The die of a layout, by the figures that are usual where the shop has written no order.</summary>
    /// <exception cref="NoAnswerException">No die of those figures can be made for it, or none that the press takes.</exception>
    public static DieDesign Die(RollLayout layout, PressSpec? press, CancellationToken gone) =>
        DieDesigner.Run(new GangRequest(layout, 0, UsualOrder.Of(layout), press, null), gone);

    private static byte[] DieFile(string name, DieDesign design) => name switch
    {
        "die.pdf" => PdfWriter.Write([.. DieSheets.Draw(design)]),
        "die.dxf" => DieDxf.Gang(design),
        "cavity.dxf" => DieDxf.Cavity(design, design.Parts[0]),
        "board.dxf" => DieDxf.Board(design),
        _ => DieWriter.Write(design),
    };

    /// <summary>A file of a comparison, by its ending.</summary>
    public static byte[] CompareFile(string name, Comparison comparison) => Path.GetExtension(name) switch
    {
        ".csv" => CompareTable.Csv(comparison),
        ".svg" => SvgWriter.Write(CompareSheet.Draw(comparison)),
        ".png" => PngWriter.Write(CompareSheet.Draw(comparison)),
        ".html" => ComparePage.Html(comparison, SvgWriter.Write(CompareSheet.Draw(comparison))),
        _ => CompareWriter.Json(comparison),
    };

    /// <summary>The body of an upload; the server's limit on its size holds.</summary>
    public static async Task<byte[]> Upload(HttpRequest request, CancellationToken gone)
    {
        using MemoryStream body = new();
        await request.Body.CopyToAsync(body, gone);
        return body.ToArray();
    }

    /// <summary>Offers side by side.</summary>
    /// <exception cref="InputException">The list is unsound; names the line and the column.</exception>
    public static Comparison Compared(byte[] list, LayoutRequest lay, PageMoney money, CancellationToken gone)
    {
        CompareCase[] cases = [.. Offers(list).Select(offer => CompareCase.Of(offer, lay.Trims))];
        return cases.Length <= MostOffers
            ? Compared(lay, cases, false, money.Costs with { Currency = cases[0].Offer!.Price.Currency, Felt = null }, gone)
            : throw new InputException(
                UploadName, null, $"holds {cases.Length} offers: the page compares up to {MostOffers}, the command line more");
    }

    // The page has one field for the list, so a fault is told there, whatever name the upload had.
    private static IReadOnlyList<FeltOffer> Offers(byte[] list)
    {
        try
        {
            return OffersReader.Read(InputText.Of(UploadName, list));
        }
        catch (InputException error)
        {
            string place = error.Field is null ? string.Empty : error.Field + ": ";
            throw new InputException(null, "offers", place + error.Problem, error);
        }
    }

    // A comparison cut short is of no use to anyone: who asked is gone.
    private static Comparison Compared(
        LayoutRequest lay, IEnumerable<CompareCase> cases, bool scan, CostInputs costs, CancellationToken gone)
    {
        LayoutRules rules = scan ? lay.Rules with { Rows = RowRule.Same } : lay.Rules;
        Comparison comparison =
            CompareStudy.Run(new CompareQuestion(lay with { Effort = 1, Rules = rules }, [.. cases], scan, costs, null), null, gone);
        gone.ThrowIfCancellationRequested();
        return comparison;
    }
}
