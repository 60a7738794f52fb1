using System.CommandLine;
using FeltNest.Ball;
using FeltNest.Runs;
using FeltNest.Runs.Panels;

namespace FeltNest.Cli.Options;

/// <summary>Options of a trial wrap: its record sheet, and its readings.</summary>
internal sealed class TrialOptions
{
    private readonly Option<bool> sheet = new("--trial-sheet")
    {
        Description = "Draw the record sheet of a trial wrap instead: numbered places round the seam on the ball and on the flat panel.",
    };

    private readonly Option<string?> readings = new("--trial")
    {
        Description = "Study these readings of a trial wrap instead (CSV: ball, place, gapMm, waistMm): what they show, and the corrected "
            + "panel where the drawing can mend it.",
        HelpName = "READINGS",
    };

    private readonly ListOptions lists;

    /// <summary>Adds the options to a command.</summary>
    public TrialOptions(Command command)
    {
        command.Add(sheet);
        command.Add(readings);
        lists = new ListOptions(command);
    }

    /// <summary>The two jobs.</summary>
    public IReadOnlyList<Option> Jobs => [sheet, readings];

    /// <summary>The run asked for and its folder, or null.</summary>
    /// <param name="parse">What was given.</param>
    /// <param name="ball">The ball.</param>
    /// <param name="path">Its file.</param>
    /// <param name="json">The option that wants JSON on the output, which the sheet has not.</param>
    public (IRun Run, string Folder)? Asked(ParseResult parse, BallSpec ball, string path, Option<bool> json)
    {
        if (parse.GetValue(readings) is { } file)
        {
            return (new TrialRun
            {
                Ball = ball,
                ReadingsFile = file,
                Lists = lists.Asked(parse),
            }, DefaultFolder.OfOutline(path, "trial", file));
        }

        if (!parse.GetValue(sheet))
        {
            return null;
        }

        return parse.GetValue(json)
            ? throw new InputException(null, json.Name, $"does not go with {sheet.Name}: a sheet to print has no JSON")
            : (new TrialSheetRun { Ball = ball }, DefaultFolder.OfTrialSheet(path));
    }
}
