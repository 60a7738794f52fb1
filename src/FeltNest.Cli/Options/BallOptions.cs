using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using FeltNest.Files;
using FeltNest.Files.Balls;
using FeltNest.Runs;

namespace FeltNest.Cli.Options;

/// <summary>What is covered: the ball or outline named first, and fields of the ball given on the line that go before its file.</summary>
internal sealed class BallOptions
{
    private readonly Argument<string?> input;

    private readonly Option<double?> core = new("--core")
    {
        Description = "Diameter of the core, instead of the ball file's.",
        HelpName = "length",
        CustomParser = result => LengthText.Positive(result),
    };

    private readonly Option<double?> waist = new("--waist")
    {
        Description = "Waist on the fitted sphere, instead of the ball file's.",
        HelpName = "length",
        CustomParser = result => LengthText.Positive(result),
    };

    private readonly Option<BallChange[]> with = new("--with")
    {
        Description = "Any field of the ball file, by its path (felt.thicknessMm=3.4); may be given again.",
        HelpName = "field=value",
        CustomParser = ParseFields,
    };

    private readonly ScanOption? dpi;

    /// <summary>Adds the argument and the options to a command.</summary>
    /// <param name="command">The command.</param>
    /// <param name="takesOutline">True where a flat outline may stand instead of a ball.</param>
    public BallOptions(Command command, bool takesOutline)
    {
        string name = takesOutline ? "BALL|OUTLINE" : "BALL";
        string what =
            takesOutline
                ? "Ball specification (JSON) or flat outline (JSON, CSV, SVG, DXF, PNG, JPEG, panel.json)"
                : "Ball specification (JSON)";
        input = new(name)
        {
            Description = $"{what}; without it the shipped example {ShippedBalls.Example} stands in.",
            HelpName = name,
            Arity = ArgumentArity.ZeroOrOne,
        };
        command.Add(input);
        command.Add(core);
        command.Add(waist);
        command.Add(with);
        dpi = takesOutline ? new ScanOption(command) : null;
    }

    /// <summary>Fields given on the line, in a fixed order.</summary>
    public IReadOnlyList<BallChange> Changes(ParseResult parse)
    {
        List<BallChange> changes = [];
        Add(BallChange.CoreField, parse.GetValue(core));
        Add(BallChange.WaistField, parse.GetValue(waist));
        return [.. changes, .. (parse.GetValue(with) ?? []).OrderBy(change => change.Field, StringComparer.Ordinal)];

        void Add(string field, double? value)
        {
            if (value is { } length)
            {
                changes.Add(new BallChange { Field = field, Value = Digits(length) });
            }
        }
    }

    /// <summary>The file that names the run's folder and messages; the example's where none is given.</summary>
    public string Path(ParseResult parse) => parse.GetValue(input) ?? ShippedBalls.Example + ".json";

    /// <summary>The same with what was given on the line: a name for the folder of the results.</summary>
    public string NamedPath(ParseResult parse)
    {
        string path = Path(parse);
        string words = string.Concat(Changes(parse).Select(change => "-" + Plain(change.FolderWord)));
        string folder = System.IO.Path.GetDirectoryName(path) ?? string.Empty;
        return words.Length == 0
            ? path
            : System.IO.Path.Combine(folder, System.IO.Path.GetFileNameWithoutExtension(path) + words + System.IO.Path.GetExtension(path));
    }

    /// <summary>The ball or outline.</summary>
    /// <exception cref="InputException">Names the file, the field, the value found and what is allowed.</exception>
    public PartInput Read(ParseResult parse) => parse.GetValue(input) is { } path
        ? PartReader.Read(path, Changes(parse), dpi?.Of(parse))
        : new PartInput(ShippedBalls.Read(ShippedBalls.Example, Changes(parse)), null);

    /// <summary>The resolution told, where a second file is a picture too.</summary>
    public double? SecondDpi(ParseResult parse, string file) =>
        System.IO.Path.GetExtension(file).ToLowerInvariant() is ".png" or ".jpg" or ".jpeg" ? dpi?.Of(parse) : null;

    /// <summary>The ball with its panel, or the outline, as a part to lay.</summary>
    /// <exception cref="InputException">As above, or the ball's values do not go together.</exception>
    /// <exception cref="NoAnswerException">No panel keeps the ball's limits.</exception>
    public LaidPart ReadPart(ParseResult parse) => LaidPart.Of(Read(parse), Path(parse));

    /// <summary>The ball.</summary>
    /// <exception cref="InputException">Names the file, the field, the value found and what is allowed.</exception>
    public BallInput ReadBall(ParseResult parse) => parse.GetValue(input) is { } path
        ? BallReader.Read(path, Changes(parse))
        : ShippedBalls.Read(ShippedBalls.Example, Changes(parse));

    /// <summary>What has to be said where no ball was given; nothing else.</summary>
    public IEnumerable<string> Assumed(ParseResult parse)
    {
        if (parse.GetValue(input) is null)
        {
            yield return $"note: no ball was given: the shipped example {ShippedBalls.Example} is assumed, its felt and seam with it";
        }
    }

    private static BallChange[] ParseFields(ArgumentResult result)
    {
        List<BallChange> changes = [];
        foreach (Token token in result.Tokens)
        {
            int at = token.Value.IndexOf('=');
            string field = at < 0 ? string.Empty : token.Value[..at].Trim();
            string value = token.Value[(at + 1)..].Trim();
            if (field.Length == 0 || value.Length == 0)
            {
                result.AddError($"--with: '{token.Value}' is not allowed: a field of the ball file and its value, as felt.thicknessMm=3.4");
                return [];
            }

            // A length may carry its unit here as everywhere.
            bool isLength = field.EndsWith("Mm", StringComparison.Ordinal);
            changes.Add(new BallChange
            {
                Field = field,
                Value = isLength && LengthText.Read(value) is { } length ? Digits(length) : value,
            });
        }

        return [.. changes];
    }

    // An inch has 25.4 mm exactly, its binary product has more digits than anybody typed.
    private static string Digits(double value) => Math.Round(value, 9).ToString("R", CultureInfo.InvariantCulture);

    // What a line gives leads nowhere outside the folder of results.
    private static string Plain(string word) =>
        string.Concat(word.Take(40).Select(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '.' ? c : '-'));
}
