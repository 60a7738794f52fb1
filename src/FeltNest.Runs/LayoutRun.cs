using FeltNest.Ball;
using FeltNest.Design;
using FeltNest.Drawing.Sheets;
using FeltNest.Drawing.Writers;
using FeltNest.Files.Layouts;
using FeltNest.Layout;
using FeltNest.Panel;
using FeltNest.Panel.Wrap;
using FeltNest.Report;
using FeltNest.Runs.Panels;
using FeltNest.Runs.Rolls;
using FeltNest.Yield;

namespace FeltNest.Runs;

/// <summary>A part laid over a roll width, with the account of the felt; a ball's panel is written too.</summary>
internal sealed class LayoutRun : IRun
{
    /// <summary>Names of the files of a layout.</summary>
    public static IReadOnlyList<string> Names { get; } = ["layout.json", "layout.svg", "layout.png"];

    // The prints: whole on a page, and true to size on many.
    private static readonly string[] Prints = ["layout.pdf", "layout-tiles.pdf"];

    /// <summary>What is laid.</summary>
    public required LaidPart Input { get; init; }

    /// <summary>The question to the layout engine.</summary>
    public required LayoutRequest Request { get; init; }

    /// <summary>The measured roll that the width is taken from, or null where it is said.</summary>
    public MeasuredWidth? Measured { get; init; }

    /// <summary>True where panel and tilt are to be found together; needs a ball.</summary>
    public bool Joint { get; init; }

    /// <summary>What was assumed before the part was there; kept in the JSON.</summary>
    public IReadOnlyList<string> Assumed { get; init; } = [];

    /// <summary>Paper of the prints: <c>A3</c> or <c>A4</c>.</summary>
    public string Paper { get; init; } = "A3";

    /// <summary>Told how far the search is, or null.</summary>
    public IProgress<SearchProgress>? Progress { get; init; }

    /// <summary>Told each design where panel and tilt are found together, or null.</summary>
    public IProgress<DesignChoice>? Choices { get; init; }

    /// <inheritdoc/>
    public IReadOnlyList<string> FileNames => [.. Names, .. Prints, .. Input.Panel is null ? [] : PanelRun.Names];

    /// <inheritdoc/>
    public IReadOnlyList<string> Notes => Measured is null ? Input.NamedNotes : [.. Input.NamedNotes, Measured.Note];

    /// <inheritdoc/>
    public Outcome Execute(Action? resultThere, CancellationToken search, CancellationToken interrupt)
    {
        // The search lets nothing through that the independent check does not pass.
        JointResult? together = Joint ? JointDesign.Run(Input.Ball!, Asked, Input.Panel, Choices, search) : null;
        BallSpec? ball = together?.Ball ?? Input.Ball;
        FlatPanel? panel = together?.Panel ?? Input.Panel;

        // The panel's pictures need nothing from the search: they are drawn beside it.
        Task<IReadOnlyList<ResultFile>>? drawn =
            panel is null ? null : Task.Run(() => Made(PanelRun.Files(ball!, PanelFit.Felt(ball!, panel))), CancellationToken.None);
        RollLayout layout = together?.Layout ?? Lay(search);
        resultThere?.Invoke();
        YieldFigures yields = YieldAccount.Of(layout);
        IReadOnlyList<LaidStrain> laid = panel is null || search.IsCancellationRequested ? [] : LaidStrain.Of(ball!, panel, layout);
        return new Outcome
        {
            Files = [.. Files(layout, yields, laid), .. drawn is null ? [] : PanelRun.Names.Select((name, i) => Drawn(name, drawn, i))],
            Table = LayoutReport.Text(layout, yields) + (together is null ? string.Empty : DesignReport.Joint(together))
                + (panel is null ? string.Empty : DesignReport.Laid(ball!, laid)),
            Remarks = panel is null
                ? []
                : [.. PanelRun.Warnings(ball!, panel), .. DesignReport.Warnings(ball!, laid).Select(Remark.Warning)],
            CutShort = layout.Search.CutShort,
        };
    }

    /// <summary>The layout alone, without its files.</summary>
    /// <exception cref="NoAnswerException">The part does not fit; says what would.</exception>
    public RollLayout Lay(CancellationToken search) => LayoutSearch.Run(Request, Progress, search);

    private LayoutRequest Asked(LayoutPart part, double? angleDeg) =>
        Request with { Part = part, Rules = Request.Rules with { WarpAngleDeg = angleDeg } };

    private List<ResultFile> Files(RollLayout layout, YieldFigures yields, IReadOnlyList<LaidStrain> laid) =>
    [
        new(Names[0], () => LayoutWriter.Write(layout, yields, Input.Panel is null ? Input.Notes : Assumed, laid)),
        .. ResultFile.Pictures(Names.Skip(1), () => LayoutSheet.Draw(layout, yields)),
        new(Prints[0], () => PdfWriter.Write(LayoutPrint.Draw(layout, yields, Paper))),
        new(Prints[1], () => PdfWriter.Write(LayoutTiles.Draw(layout, Paper))),
    ];

    private static ResultFile Drawn(string name, Task<IReadOnlyList<ResultFile>> drawn, int place) =>
        new(name, () => drawn.GetAwaiter().GetResult()[place].Content);

    private static IReadOnlyList<ResultFile> Made(IReadOnlyList<ResultFile> files)
    {
        foreach (ResultFile file in files)
        {
            _ = file.Content;
        }

        return files;
    }
}
