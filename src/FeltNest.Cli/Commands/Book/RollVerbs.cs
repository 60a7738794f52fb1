using System.CommandLine;
using FeltNest.Book;
using FeltNest.Files;
using FeltNest.Runs.Book;

namespace FeltNest.Cli.Commands.Book;

/// <summary>Commands for rolls.</summary>
internal static class RollVerbs
{
    /// <summary>The commands.</summary>
    public static IEnumerable<Command> All(Terminal terminal) =>
    [
        Measured(terminal, "measure", "A roll was measured: what is left, its width, its file of faults.", back: false),
        Measured(terminal, "return", "A roll goes back to stock, measured or not.", back: true),
        Cut(terminal), Scrap(terminal),
    ];

    private static Command Measured(Terminal terminal, string name, string description, bool back)
    {
        BookVerb verb = new(terminal, name, description);
        Argument<string> roll = verb.Input("ROLL", "Name of the roll.");
        Option<double?> left = verb.Number("--left", ShopRanges.MostRollM, "m", "What is left of it.");
        Option<double?> width = verb.Number("--width", ShopRanges.RollWidth.High, "mm", "Its least width.");
        Option<string?> file = verb.Text("--measured", "file", "The roll as measured (JSON).");
        Option<string?> why = verb.Text("--why", "text", "Why.");
        Option<bool> sure = verb.Flag("--sure", "Figures that look like a slip are meant so.");
        return verb.Writes((parse, desk) => RollEntries.Measured(desk, parse.GetValue(roll)!, new RollMeasure
        {
            LeftM = BookVerb.Exact(parse.GetValue(left)),
            WidthMm = BookVerb.Exact(parse.GetValue(width)),
            MeasuredFile = parse.GetValue(file),
            PutBack = back,
            MeantSo = parse.GetValue(sure),
            Why = parse.GetValue(why),
        }));
    }

    private static Command Cut(Terminal terminal)
    {
        BookVerb verb = new(terminal, "cut", "Felt was cut from a roll without a ticket.");
        Argument<string> roll = verb.Input("ROLL", "Name of the roll.");
        Option<double> length = new("--length")
        {
            Description = "How much.",
            HelpName = "m",
            Required = true,
            CustomParser = FeltNest.Cli.Options.NumberText.Within(0, ShopRanges.MostRollM, "m"),
        };
        verb.Command.Add(length);
        Option<double?> from = verb.Number("--from", ShopRanges.MostRollM, "m", "Where it began on the roll.");
        Option<string?> order = verb.Text("--order", "order", "For which order.");
        Option<int?> balls = verb.Count("--balls", "Good balls it gave.");
        Option<string?> die = verb.Text("--die", "die", "With which die.");
        Option<int?> strikes = verb.Count("--strikes", "Strikes made.");
        Option<string?> why = verb.Text("--why", "text", "Why.");
        return verb.Writes((parse, desk) =>
        {
            decimal cut = BookVerb.Exact(parse.GetValue(length))!.Value;
            decimal? begin = BookVerb.Exact(parse.GetValue(from));
            CutBody body = new()
            {
                FromM = begin,
                ToM = begin + cut,
                LengthM = cut,
                Order = parse.GetValue(order),
                Balls = parse.GetValue(balls),
                Die = parse.GetValue(die),
                Strikes = parse.GetValue(strikes),
            };
            return RollEntries.Cut(desk, parse.GetValue(roll)!, body, parse.GetValue(why));
        });
    }

    private static Command Scrap(Terminal terminal)
    {
        BookVerb verb = new(terminal, "scrap", "Felt of a roll was thrown away.");
        Argument<string> roll = verb.Input("ROLL", "Name of the roll.");
        Option<double?> length = verb.Number("--length", ShopRanges.MostRollM, "m", "How much (default: all that is left).");
        Option<string?> why = verb.Text("--why", "text", "Why.");
        return verb.Writes((parse, desk) =>
            RollEntries.Scrapped(desk, parse.GetValue(roll)!, BookVerb.Exact(parse.GetValue(length)), parse.GetValue(why)));
    }
}
