using System.CommandLine;
using FeltNest.Cli.Options;
using FeltNest.Files;
using FeltNest.Files.Csv;
using FeltNest.Runs.Book;

namespace FeltNest.Cli.Commands.Book;

/// <summary>A command of the book: it opens the book, does one thing, and says what was written.</summary>
internal sealed class BookVerb
{
    private readonly Terminal terminal;
    private readonly DeskOptions options = new();
    private ListOptions? lists;
    private ListReading? reading;

    /// <summary>A command.</summary>
    public BookVerb(Terminal terminal, string name, string description)
    {
        this.terminal = terminal;
        Command = new Command(name, description) { options.Book };
    }

    /// <summary>The command.</summary>
    public Command Command { get; }

    /// <summary>Where it speaks.</summary>
    public Terminal Terminal => terminal;

    /// <summary>Place of the book.</summary>
    public Option<string> Book => options.Book;

    /// <summary>Makes it a command that writes.</summary>
    public Command Writes(Func<ParseResult, BookDesk, BookSaid> work)
    {
        Command.Add(options.By);
        Command.Add(options.At);
        return Does((parse, desk) =>
        {
            terminal.HandOver.Begin();
            BookSaid said = work(parse, desk);
            terminal.Results.WriteLine(PlainLine.Of(said.Line));
            foreach (string note in said.Notes.Concat(reading?.Notes ?? []))
            {
                terminal.Say($"note: {note}");
            }

            return ExitCode.Done;
        });
    }

    /// <summary>Makes it a command that reads.</summary>
    public Command Does(Func<ParseResult, BookDesk, int> work)
    {
        Command.SetAction((parse, stop) => Task.Run(
            () =>
            {
                using BookDesk desk = options.Desk(parse, terminal);
                return work(parse, desk);
            },
            CancellationToken.None));
        return Command;
    }

    /// <summary>An input of the command.</summary>
    public Argument<string> Input(string name, string description)
    {
        Argument<string> input = new(name) { Description = description, HelpName = name };
        Command.Add(input);
        return input;
    }

    /// <summary>An input that may be left out.</summary>
    public Argument<string?> MaybeInput(string name, string description)
    {
        Argument<string?> input = new(name) { Description = description, HelpName = name, Arity = ArgumentArity.ZeroOrOne };
        Command.Add(input);
        return input;
    }

    /// <summary>Makes it a command that takes a list.</summary>
    public void TakesList() => lists = new ListOptions(Command);

    /// <summary>The text of a list, to be read as its options say.</summary>
    /// <exception cref="InputException">Missing, a folder, not readable, empty or too large.</exception>
    public InputText Opened(ParseResult parse, string path)
    {
        reading = lists!.Asked(parse);
        return reading.Open(path);
    }

    /// <summary>A text.</summary>
    public Option<string?> Text(string name, string help, string description)
    {
        Option<string?> option = new(name) { Description = description, HelpName = help };
        Command.Add(option);
        return option;
    }

    /// <summary>A yes.</summary>
    public Option<bool> Flag(string name, string description)
    {
        Option<bool> option = new(name) { Description = description };
        Command.Add(option);
        return option;
    }

    /// <summary>A number.</summary>
    public Option<double?> Number(string name, double high, string unit, string description)
    {
        Option<double?> option = new(name)
        {
            Description = description,
            HelpName = unit,
            CustomParser = result => NumberText.Within(0, high, unit)(result),
        };
        Command.Add(option);
        return option;
    }

    /// <summary>A count.</summary>
    public Option<int?> Count(string name, string description)
    {
        Option<int?> option = new(name)
        {
            Description = description,
            HelpName = "n",
            CustomParser = result => NumberText.WholeWithin(0, FeltNest.Files.ShopRanges.MostCount)(result),
        };
        Command.Add(option);
        return option;
    }

    /// <summary>A number as the book keeps it: to a millionth.</summary>
    public static decimal? Exact(double? value) => value is { } number ? Math.Round((decimal)number, 6) : null;
}
