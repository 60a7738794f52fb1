using System.CommandLine;
using FeltNest.Ball.Passport;
using FeltNest.Ball.Ranges;
using FeltNest.Cli.Options;
using FeltNest.Runs;
using FeltNest.Runs.Felts;

namespace FeltNest.Cli.Commands;

/// <summary><c>felt READINGS</c>: a lot of felt measured; <c>felt --sheet</c>: the sheets for its tests.</summary>
internal sealed class FeltCommand
{
    // A common core with its cement, and a common felt, mm.
    private const double UsualCoreMm = 60.3;
    private const double UsualThicknessMm = 3.2;

    // Strains that laws of felt may be fitted to, per cent.
    private const double MostPercent = 30;

    private readonly Argument<string?> input = new("READINGS")
    {
        Description = "Readings of one lot (CSV, one line a reading): strips, wraps, discs, squares, thickness, mass.",
        HelpName = "READINGS",
        Arity = ArgumentArity.ZeroOrOne,
    };

    private readonly Option<bool> sheet = new("--sheet")
    {
        Description = "Write the sheets for the tests instead: what to cut, discs true to size, the record to fill in.",
    };

    private readonly Option<(double From, double To)?> strain = new("--strain")
    {
        Description = "Range of strain in which the strips are fitted, per cent. Usual: 1:8.",
        HelpName = "from:to",
        CustomParser = NumberRange.Within(0, MostPercent, "%", "1:8"),
    };

    private readonly Option<double?> core = new("--core-with-cement")
    {
        Description = "For the sheets: diameter of the cemented core. Usual: 60.3 mm.",
        HelpName = "length",
        CustomParser = result => LengthText.Positive(result),
    };

    private readonly Option<double?> thickness = new("--thickness")
    {
        Description = "For the sheets: thickness of the felt. Usual: 3.2 mm.",
        HelpName = "length",
        CustomParser = result => LengthText.Positive(result),
    };

    private readonly Terminal terminal;
    private readonly ListOptions lists;
    private readonly CommonOptions common;

    private FeltCommand(Terminal terminal, Command command)
    {
        this.terminal = terminal;
        command.Add(input);
        Option[] own = [sheet, strain, core, thickness];
        foreach (Option option in own)
        {
            command.Add(option);
        }

        lists = new ListOptions(command);
        common = new CommonOptions(command);
    }

    /// <summary>The command.</summary>
    public static Command Create(Terminal terminal)
    {
        Command command = new(
            "felt",
            "A lot of felt measured: moduli, bend, neutral layer, edge limit and shrinkage with their spread, as a file that a ball can "
                + "name; "
                + "or the sheets for its tests.");
        FeltCommand made = new(terminal, command);
        command.SetAction((parse, stop) => Task.Run(() => made.Run(parse, stop), CancellationToken.None));
        return command;
    }

    private int Run(ParseResult parse, CancellationToken stop)
    {
        (IRun run, string folder) = Asked(parse);
        return new Answer(terminal, parse, common)
            .Give(run, parse.GetValue(common.Out) ?? folder, parse.GetValue(common.Force), stop, stop);
    }

    private (IRun Run, string Folder) Asked(ParseResult parse)
    {
        string? file = parse.GetValue(input);
        if (parse.GetValue(sheet))
        {
            return file is null && parse.GetValue(strain) is null && !parse.GetValue(common.Json)
                ? (Sheets(parse), DefaultFolder.OfFeltTests())
                : throw new InputException(null, sheet.Name, $"takes no readings and no {strain.Name}, and gives no JSON");
        }

        if (file is null)
        {
            throw new InputException(null, input.Name, $"is missing: name the readings, or give {sheet.Name}");
        }

        Option? stray = new Option[] { core, thickness }.FirstOrDefault(option => parse.GetResult(option) is { Implicit: false });
        if (stray is not null)
        {
            throw new InputException(null, stray.Name, $"belongs to {sheet.Name}: give it too");
        }

        FitRange range =
            parse.GetValue(strain) is { } given ? new FitRange { FromPercent = given.From, ToPercent = given.To } : FitRange.Usual;
        return (new FeltRun { ReadingsFile = file, Range = range, Lists = lists.Asked(parse) }, DefaultFolder.OfFelt(file));
    }

    private FeltTestSheetsRun Sheets(ParseResult parse)
    {
        FeltTestSheetsRun run = new()
        {
            CoreDiameterMm = parse.GetValue(core) ?? UsualCoreMm,
            ThicknessMm = parse.GetValue(thickness) ?? UsualThicknessMm,
        };
        Within(core, run.CoreDiameterMm, BallRanges.CoreDiameter);
        Within(thickness, run.ThicknessMm, BallRanges.FeltThickness);
        return run;
    }

    private static void Within(Option option, double value, FieldRange range)
    {
        if (value < range.Low || value > range.High)
        {
            throw new InputException(
                null, option.Name,
                FormattableString.Invariant($"{value} mm is not allowed: {range.Low} to {range.High} mm; {range.Reason}"));
        }
    }
}
