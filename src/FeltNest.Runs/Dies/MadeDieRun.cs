using FeltNest.Die.Proof;
using FeltNest.Drawing.Sheets.Dies;
using FeltNest.Files.Csv;
using FeltNest.Files.Dies;
using FeltNest.Report;

namespace FeltNest.Runs.Dies;

/// <summary>A die as it was made, held against its drawing.</summary>
internal sealed class MadeDieRun : IRun
{
    private readonly MadeDieAsk question;
    private readonly DieInput die;
    private readonly IReadOnlyList<MeasuredRing> rings;
    private readonly ListReading lists;

    /// <summary>Reads what is asked about.</summary>
    /// <exception cref="InputException">A file that cannot be used.</exception>
    public MadeDieRun(MadeDieAsk question, ListReading lists)
    {
        this.question = question;
        this.lists = lists;
        die = DieReader.Read(question.DieFile);
        rings = RingsReader.Read(lists.Open(question.MeasuredFile) with { Dpi = question.Dpi }, die.Die.Cavities.Count);
    }

    /// <inheritdoc/>
    public IReadOnlyList<string> FileNames { get; } = ["made.json", "made.svg", "made.png"];

    /// <inheritdoc/>
    public IReadOnlyList<string> Notes => lists.Notes;

    /// <inheritdoc/>
    public Outcome Execute(Action? resultThere, CancellationToken search, CancellationToken interrupt)
    {
        ProfileRule rule = new()
        {
            ToleranceMm = question.ProfileMm ?? die.Die.EdgeProfileMm,
            UncertaintyMm = question.UncertaintyMm,
            Steepness = question.Steepness ?? ProfileRule.UsualSteepness,
            InFrame = question.InFrame,
        };
        double position = question.PositionMm ?? Stated();
        MadeDie made =
            NamedInput.Of(question.MeasuredFile, () => MadeDieJudge.Of(die.Die, rings, rule, position));
        return new Outcome
        {
            Files =
            [
                new(FileNames[0], () => MadeDieWriter.Write(made)),
                .. ResultFile.Pictures(FileNames.Skip(1), () => MadeDieSheet.Draw(made, die.Die)),
            ],
            Table = MadeDieReport.Text(made),
            Remarks = [.. MadeDieReport.Warnings(made).Select(Remark.Warning)],
            Refused = made.Verdict == Conformity.DoesNotConform,
        };
    }

    // A die's file may be older than this field, and no place is ever exact.
    private double Stated() => die.Die.PositionMm > 0
        ? die.Die.PositionMm
        : throw new InputException(
            question.DieFile, DieDocument.PositionMm.Name, "is not stated: give the position tolerance with the question");
}
