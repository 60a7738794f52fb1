using FeltNest.Die.Check;
using FeltNest.Drawing.Sheets.Rolls;
using FeltNest.Drawing.Writers;
using FeltNest.Files.Dies;
using FeltNest.Files.Layouts;
using FeltNest.Files.Rolls;
using FeltNest.Layout;
using FeltNest.Report;
using FeltNest.Rolls;
using FeltNest.Rolls.Plan;
using FeltNest.Rolls.Plan.Chain;

namespace FeltNest.Runs.Rolls;

/// <summary>Where to strike one real roll.</summary>
internal sealed class RollRun : IRun
{
    private readonly RollAsk question;
    private readonly RollLayout layout;
    private readonly FeltRoll roll;

    /// <summary>Reads what is asked about.</summary>
    /// <exception cref="InputException">A file that cannot be used, or a die of another layout.</exception>
    public RollRun(RollAsk question)
    {
        this.question = question;
        Repeats = RepeatsOf(question);
        RollLayout read = LayoutReader.Read(question.LayoutFile).Layout;
        layout = question.Band is { } band ? BandLayout.Of(read, band) : read;
        roll = RollReader.Read(question.RollFile);
    }

    /// <summary>Repeats one strike cuts.</summary>
    public int Repeats { get; }

    /// <inheritdoc/>
    public IReadOnlyList<string> FileNames { get; } =
    [
        "roll.json", "roll.csv", "roll.svg", "roll.png", "ticket.svg", "ticket.png", "roll.pdf",
    ];

    /// <inheritdoc/>
    public IReadOnlyList<string> Notes => [];

    /// <inheritdoc/>
    public Outcome Execute(Action? resultThere, CancellationToken search, CancellationToken interrupt)
    {
        RollRequest request = new()
        {
            Layout = layout,
            Roll = roll,
            RepeatsPerStrike = Repeats,
            GuidePlayMm = question.SideShiftMm,
            FromMm = question.FromMm,
            PastEnd = question.PastEnd,
        };
        RollPlan plan = NamedInput.Of(question.LayoutFile, () =>
        {
            RollRoom.Require(request);
            return StrikePlanner.Run(request);
        });
        plan = plan with { Better = question.Band is null ? LayoutForRoll.Of(plan, search) : null };
        return new Outcome
        {
            Files =
            [
                new(FileNames[0], () => RollPlanWriter.Json(plan)), new(FileNames[1], () => RollPlanWriter.Csv(plan)),
                .. ResultFile.Pictures(FileNames.Skip(2).Take(2), () => RollMapSheet.Draw(plan)),
                .. ResultFile.Pictures(FileNames.Skip(4).Take(2), () => TicketSheet.Draw(plan)),
                new(FileNames[6], () => PdfWriter.Write([TicketSheet.Draw(plan), .. RollMapSheet.Pages(plan, question.Paper)])),
            ],
            Table = RollReport.Text(plan),
            Remarks = [.. RollReport.Warnings(plan).Select(Remark.Warning)],
        };
    }

    // Repeats as the die has them, where one is given: it must be a die of the very layout.
    private static int RepeatsOf(RollAsk question)
    {
        if (question.DieFile is not { } path)
        {
            return question.Repeats ?? 1;
        }

        if (question.Band is not null)
        {
            throw new InputException(AskedFor.RollDie, "is of a whole layout: of one band give the repeats that its die cuts");
        }

        if (question.Repeats is not null)
        {
            throw new InputException(AskedFor.RollDie, "says how many repeats a strike cuts: do not give their number too");
        }

        DieInput read = DieReader.Read(path);
        return SameLay.Are(read.Layout.Layout, LayoutReader.Read(question.LayoutFile).Layout)
            ? read.Repeats
            : throw new InputException(
                path, "layout", $"is not the layout of {question.LayoutFile}: its die cuts other panels or other places");
    }
}
