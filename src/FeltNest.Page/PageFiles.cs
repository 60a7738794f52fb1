using FeltNest.Cost.Compare;
using FeltNest.Cost.Offers;
using FeltNest.Files;
using FeltNest.Files.Offers;
using FeltNest.Layout;
using FeltNest.Page.Inputs;
using FeltNest.Page.Work;
using FeltNest.Rolls;
using FeltNest.Runs;
using FeltNest.Runs.Dies;
using FeltNest.Runs.Panels;
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

    /// <summary>A file of the run it belongs to.</summary>
    /// <exception cref="NoAnswerException">The part does not fit the roll.</exception>
    public static ResultFile Make(string name, PagePanel panel, PageInputs inputs, CancellationToken gone)
    {
        LayoutRequest request = PageWork.Request(inputs, panel.Part);
        if (PanelRun.Names.Contains(name))
        {
            return new PanelRun { Ball = panel.Ball, Made = panel.Flat }.Execute(null, gone, gone).File(name);
        }

        if (name.StartsWith("widths", StringComparison.Ordinal))
        {
            CompareRun widths = Widths(panel, request, inputs);
            return Renamed(widths.Told(Compared(widths, gone)), name);
        }

        LayoutRun layout = Layout(panel, request);
        return LayoutRun.Names.Contains(name)
            ? layout.Execute(null, gone, gone).File(name)
            : Die(layout.Lay(gone), inputs.Press).Execute(null, gone, gone).File(name);
    }

    /// <summary>The run of a layout.</summary>
    public static LayoutRun Layout(PagePanel panel, LayoutRequest request) =>
        new() { Input = LaidPart.Of(panel.Ball, panel.Flat), Request = request };

    /// <summary>The die of a layout, by the figures that are usual where the shop has written no order.</summary>
    public static DieRun Die(RollLayout layout, PressSpec? press) => new(layout, 0, null, press, null);

    /// <summary>A file of a comparison under the page's own name for it, told by its ending.</summary>
    public static ResultFile Renamed(Outcome comparison, string name) =>
        new(name, () => comparison.Files.First(file => Path.GetExtension(file.Name) == Path.GetExtension(name)).Content);

    /// <summary>The body of an upload; the server's limit on its size holds.</summary>
    public static async Task<byte[]> Upload(HttpRequest request, CancellationToken gone)
    {
        using MemoryStream body = new();
        await request.Body.CopyToAsync(body, gone);
        return body.ToArray();
    }

    /// <summary>Offers side by side.</summary>
    /// <exception cref="InputException">The list is unsound; names the line and the column.</exception>
    public static (Comparison Comparison, Outcome Files) Offers(byte[] list, PagePanel panel, PageInputs inputs, CancellationToken gone)
    {
        IReadOnlyList<FeltOffer> offers = Read(list);
        CompareRun run = new(new CompareAsk
        {
            Part = LaidPart.Of(panel.Ball, panel.Flat),
            Lay = PageWork.Request(inputs, panel.Part) with { Effort = 1 },
            Offers = offers,
            Costs = inputs.Money.Costs with { Currency = offers[0].Price.Currency, Felt = null },
        });
        Comparison comparison = Compared(run, gone);
        return (comparison, run.Told(comparison));
    }

    private static CompareRun Widths(PagePanel panel, LayoutRequest request, PageInputs inputs) => new(new CompareAsk
    {
        Part = LaidPart.Of(panel.Ball, panel.Flat),
        Lay = request with { Effort = 1, Rules = request.Rules with { Rows = RowRule.Same } },
        WidthsMm = [.. ChartWidths.Of(inputs.WidthMm).Where(width => width > request.Trims.TotalMm)],
        Scanned = true,
        Costs = inputs.Money.Costs,
    });

    // A comparison cut short is of no use to anyone: who asked is gone.
    private static Comparison Compared(CompareRun run, CancellationToken gone)
    {
        Comparison comparison = run.Compare(gone);
        gone.ThrowIfCancellationRequested();
        return comparison;
    }

    // The page has one field for the list, so a fault is told there, whatever name the upload had.
    private static IReadOnlyList<FeltOffer> Read(byte[] list)
    {
        try
        {
            IReadOnlyList<FeltOffer> offers = OffersReader.Read(InputText.Of(UploadName, list));
            return offers.Count <= MostOffers
                ? offers
                : throw new InputException(
                    UploadName, null, $"holds {offers.Count} offers: the page compares up to {MostOffers}, the command line more");
        }
        catch (InputException error)
        {
            string field = error.Field is null ? string.Empty : error.Field + ": ";
            throw new InputException(AskedFor.Offers, field + error.Problem, error);
        }
    }
}
