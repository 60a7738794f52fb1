using System.CommandLine;
using System.CommandLine.Parsing;
using FeltNest.Layout;
using FeltNest.Layout.Limits;

namespace FeltNest.Cli.Options;

/// <summary>Options that say what the shop's cloth, dies and table allow.</summary>
internal sealed class ShopOptions
{
    private readonly Option<int> bands = new("--bands")
    {
        Description = "Most bands across the width that may have a repeat, and so a die, of their own.",
        HelpName = "n",
        DefaultValueFactory = _ => 1,
        CustomParser = NumberText.WholeWithin(1, LayoutLimits.MostBands),
    };

    private readonly Option<ForbiddenStrip[]> forbid = new("--forbid")
    {
        Description = "A stripe along the roll that no panel may touch, from and to across the roll (700:720); may be given again.",
        HelpName = "from:to",
        CustomParser = ParseStrips,
        DefaultValueFactory = _ => [],
    };

    private readonly Option<int?> diePanels = new("--die-panels")
    {
        Description = "Most panels one die cuts in a strike.",
        HelpName = "n",
        CustomParser = result => NumberText.WholeWithin(1, LayoutLimits.MostDiePanels)(result),
    };

    private readonly Option<(double Length, double Width)?> dieBed = new("--die-bed")
    {
        Description = "Room a die has for its cut edges, along and across the roll (600x400).",
        HelpName = "lengthxwidth",
        CustomParser = ParseBed,
    };

    private readonly Option<double> leastRepeat = new("--least-repeat")
    {
        Description = "Least length of a repeat; shorter ones are written several times over.",
        HelpName = "length",
        DefaultValueFactory = _ => 0,
        CustomParser = LengthText.OrZero,
    };

    private readonly Option<int> plies = new("--plies")
    {
        Description = "Plies of felt one strike cuts.",
        HelpName = "n",
        DefaultValueFactory = _ => 1,
        CustomParser = NumberText.WholeWithin(1, LayoutLimits.MostPlies),
    };

    private readonly Option<bool> faceToFace = new("--face-to-face")
    {
        Description = "Every second ply lies nap side down: its panels come out mirrored about the warp.",
    };

    private readonly Option<string?> second = new("--second")
    {
        Description = "A second ball or outline that shares the width, in a band of its own.",
        HelpName = "BALL|OUTLINE",
    };

    private readonly Option<double?> secondShare = new("--second-share")
    {
        Description = "Share of the second part among all panels, per cent, or fill: a band narrower than a row of the first part "
            + "(default: fill).",
        HelpName = "percent|fill",
        CustomParser = result => result.Tokens[0].Value == "fill" ? null : NumberText.Within(0.01, 99.99, "per cent, or fill")(result),
    };

    /// <summary>Adds the options to a command.</summary>
    /// <param name="command">The command.</param>
    /// <param name="takesSecond">False for a command that lays one part.</param>
    public ShopOptions(Command command, bool takesSecond = true)
    {
        foreach (Option option in (Option[])
        [
            bands, forbid, diePanels, dieBed, leastRepeat, plies, faceToFace,
            .. takesSecond ? [second, secondShare] : Array.Empty<Option>(),
        ])
        {
            command.Add(option);
        }
    }

    /// <summary>The request with these rules.</summary>
    /// <exception cref="InputException">Face to face with a single layer.</exception>
    public LayoutRequest Applied(ParseResult parse, LayoutRequest request)
    {
        (double Length, double Width)? bed = parse.GetValue(dieBed);
        int? most = parse.GetValue(diePanels);
        if (parse.GetValue(faceToFace) && parse.GetValue(plies) < 2)
        {
            throw new InputException(null, "--face-to-face", "needs at least two plies: give --plies 2 or more");
        }

        return request with
        {
            Rules = request.Rules with
            {
                Bands = parse.GetValue(bands),
                Forbidden = [.. (parse.GetValue(forbid) ?? []).OrderBy(s => s.YFromMm)],
                Die = most is null && bed is null
                    ? null
                    : new DieLimit { MostPanels = most, BedLengthMm = bed?.Length, BedWidthMm = bed?.Width },
                LeastRepeatMm = parse.GetValue(leastRepeat),
                Plies = new Plies(parse.GetValue(plies), parse.GetValue(faceToFace)),
            },
        };
    }

    /// <summary>File of the second part, or null.</summary>
    /// <exception cref="InputException">A share without a second part.</exception>
    public string? Second(ParseResult parse) =>
        parse.GetValue(second) is not { } file && parse.GetResult(secondShare) is { Implicit: false }
        ? throw new InputException(null, "--second-share", "needs a second part: give --second BALL or OUTLINE") : parse.GetValue(second);

    /// <summary>Wanted share of the second part, per cent, or null to fill.</summary>
    public double? SecondShare(ParseResult parse) => parse.GetValue(secondShare);

    private static ForbiddenStrip[] ParseStrips(ArgumentResult result)
    {
        List<ForbiddenStrip> strips = [];
        foreach (Token token in result.Tokens)
        {
            if (Two(token.Value, ':') is not { } ends || ends.Second <= ends.First)
            {
                result.AddError($"--forbid: '{token.Value}' is not allowed: two places across the roll, the lower first, as 700:720");
                return [];
            }

            strips.Add(new ForbiddenStrip { YFromMm = ends.First, YToMm = ends.Second });
        }

        return [.. strips];
    }

    private static (double Length, double Width)? ParseBed(ArgumentResult result)
    {
        string text = result.Tokens[0].Value;
        if (Two(text, 'x') is { } sides && sides.First > 0 && sides.Second > 0)
        {
            return (sides.First, sides.Second);
        }

        result.AddError($"--die-bed: '{text}' is not allowed: length along and width across the roll, as 600x400");
        return null;
    }

    private static (double First, double Second)? Two(string text, char between)
    {
        string[] parts = text.Split(between);
        return parts.Length == 2 && LengthText.Read(parts[0]) is { } first && LengthText.Read(parts[1]) is { } second && first >= 0
            ? (first, second)
            : null;
    }
}
