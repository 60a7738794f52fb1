using System.Collections;
using System.CommandLine;
using System.Globalization;
using System.Text;

namespace FeltNest.Tests.Readme;

/// <summary>Writes the page of all commands from the tree that reads the command line, so that the two cannot differ.</summary>
internal static class CommandPage
{
    private const string Head = """
        # Commands and options

        This page is made from the options of the program. A test keeps it in step: do not edit it by hand.
        What the files are, what each command writes and what the exit codes mean stands in [README.md](README.md) beside it.
        Lengths are in mm or carry their unit: `1370`, `1370mm`, `137cm`, `1.37m`, `54in`. The decimal mark is the point.
        "Must be given" means that the command refuses to run without it.


        """;

    /// <summary>The page.</summary>
    /// <param name="root">The command line.</param>
    public static string Of(RootCommand root)
    {
        Command[] commands = [.. root.Subcommands.Where(command => !command.Hidden)];
        Option[] common = [.. Shown(commands[0]).Where(option => commands.Count(command => Has(command, option)) > commands.Length / 2)];
        StringBuilder page = new(Head.ReplaceLineEndings("\n"));
        page.Append("| command | job |\n|---|---|\n");
        foreach (Command command in commands)
        {
            page.Append(CultureInfo.InvariantCulture, $"| [`{command.Name}`](#{command.Name}) | {Cell(command.Description)} |\n");
        }

        page.Append("\n## Options of every command that writes results\n\n");
        AddOptions(page, common);
        foreach (Command command in commands)
        {
            Add(page, command, common, string.Empty);
            foreach (Command verb in command.Subcommands.Where(verb => !verb.Hidden))
            {
                Add(page, verb, common, $"{command.Name} ");
            }
        }

        return page.ToString();
    }

    // A command below another is told below it, with its name before.
    private static void Add(StringBuilder page, Command command, Option[] common, string above)
    {
        string heading = above.Length == 0 ? "##" : "###";
        page.Append(CultureInfo.InvariantCulture, $"\n{heading} {above}{command.Name}\n\n{Cell(command.Description)}\n\n");
        page.Append(CultureInfo.InvariantCulture, $"```\n{Usage(command, above)}\n```\n\n");
        if (command.Arguments.Count > 0)
        {
            page.Append("| input | meaning |\n|---|---|\n");
            foreach (Argument argument in command.Arguments)
            {
                page.Append(CultureInfo.InvariantCulture, $"| {Code(Word(argument))} | {Cell(argument.Description)} |\n");
            }

            page.Append('\n');
        }

        Option[] own = [.. Shown(command).Where(option => !common.Any(shared => Same(shared, option)))];
        AddOptions(page, own);
        if (common.All(option => Has(command, option)))
        {
            page.Append(own.Length > 0 ? "\n" : string.Empty).Append("The options of every command that writes results go with it too.\n");
        }
    }

    private static void AddOptions(StringBuilder page, Option[] options)
    {
        if (options.Length == 0)
        {
            return;
        }

        page.Append("| option | meaning | default |\n|---|---|---|\n");
        foreach (Option option in options)
        {
            string names = string.Join(", ", option.Aliases.Order(StringComparer.Ordinal).Prepend(option.Name));
            page.Append(
                CultureInfo.InvariantCulture, $"| {Code(names + Value(option))} | {Cell(option.Description)} | {Default(option)} |\n");
        }
    }

    // What must be typed, in order, and a word that more may follow.
    private static string Usage(Command command, string above) => string.Join(' ', (string[])
    [
        "feltnest",
        above + command.Name,
        .. command.Subcommands.Count > 0 ? ["VERB"] : Array.Empty<string>(),
        .. command.Arguments.Select(Word),
        .. Shown(command).Where(option => option.Required).Select(option => option.Name + Value(option)),
        .. Shown(command).All(option => option.Required) ? Array.Empty<string>() : ["[options]"],
    ]);

    private static string Value(Option option) => option.HelpName is { } help ? $" <{help}>" : string.Empty;

    private static IEnumerable<Option> Shown(Command command) => command.Options.Where(option => !option.Hidden);

    private static bool Has(Command command, Option option) => Shown(command).Any(own => Same(own, option));

    private static bool Same(Option one, Option other) => one.Name == other.Name && one.Description == other.Description;

    private static string Word(Argument argument)
    {
        string name = argument.HelpName ?? argument.Name;
        string many = argument.Arity.MaximumNumberOfValues > 1 ? $"{name}..." : name;
        return argument.Arity.MinimumNumberOfValues == 0 ? $"[{many}]" : many;
    }

    private static string Default(Option option) => option switch
    {
        { Required: true } => "must be given",
        { HasDefaultValue: true } => Text(option.GetDefaultValue()),
        _ => string.Empty,
    };

    private static string Text(object? value) => value switch
    {
        null or bool => string.Empty,
        string text => text,
        IEnumerable many => string.Join(", ", many.Cast<object>()),
        _ => Convert.ToString(value, CultureInfo.InvariantCulture)!,
    };

    private static string Code(string text) => $"`{text.Replace("|", "\\|", StringComparison.Ordinal)}`";

    private static string Cell(string? text) =>
        (text ?? string.Empty).Replace("|", "\\|", StringComparison.Ordinal).Replace("<", "&lt;", StringComparison.Ordinal);
}
