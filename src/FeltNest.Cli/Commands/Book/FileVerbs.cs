using System.CommandLine;
using System.Text;
using FeltNest.Book;
using FeltNest.Runs.Book;

namespace FeltNest.Cli.Commands.Book;

/// <summary>Commands for the book itself: start, show, export, copy, check.</summary>
internal static class FileVerbs
{
    // Lines of a table that a person reads.
    private const int UsualLines = 200;

    /// <summary>The commands.</summary>
    public static IEnumerable<Command> All(Terminal terminal) =>
        [Start(terminal), Show(terminal), Export(terminal), Copy(terminal), Check(terminal)];

    private static Command Start(Terminal terminal)
    {
        BookVerb verb = new(terminal, "start", "Start an empty book.");
        verb.Command.SetAction(parse =>
        {
            using BookStore store = Books.Start(parse.GetValue(verb.Book)!, terminal.Say);
            terminal.Results.WriteLine($"{store.Name} is an empty book now");
            return ExitCode.Done;
        });
        return verb.Command;
    }

    private static Command Show(Terminal terminal)
    {
        BookVerb verb = new(terminal, "show", "What stands in the book: rolls, dies, orders, tickets, plans, or entries.");
        Argument<string> what = verb.Input("WHAT", $"One of {string.Join(", ", BookShow.Words)}.");
        what.Validators.Add(result =>
        {
            if (result.Tokens.Count > 0 && !BookShow.Words.Contains(result.Tokens[0].Value))
            {
                result.AddError($"'{result.Tokens[0].Value}' is not allowed: {string.Join(", ", BookShow.Words)}");
            }
        });
        what.CompletionSources.Add(_ => BookShow.Words.Select(word => new System.CommandLine.Completions.CompletionItem(word)));
        Argument<string?> name = verb.MaybeInput("NAME", "All entries about one of them.");
        Option<bool> open = verb.Flag("--open", "Only that of which work is still to come.");
        Option<bool> all = verb.Flag("--all", $"Every line, not the last {UsualLines} alone.");
        Option<bool> json = verb.Flag("--json", "Print JSON, with all that is known.");
        Option<bool> csv = verb.Flag("--csv", "Print CSV.");
        return verb.Does((parse, desk) =>
        {
            BookTable table = BookShow.Of(
                desk.Store, parse.GetValue(what)!, parse.GetValue(name), parse.GetValue(open),
                parse.GetValue(all) ? int.MaxValue : UsualLines, parse.GetValue(json));
            string shown = (parse.GetValue(json), parse.GetValue(csv)) switch
            {
                (true, _) => table.Json(),
                (_, true) => Encoding.UTF8.GetString(table.Csv()),
                _ => table.Text(),
            };
            terminal.Results.Write(shown);
            if (table.Hidden > 0)
            {
                terminal.Say($"note: {table.Hidden} lines before these are not shown: {all.Name} shows them");
            }

            return ExitCode.Done;
        });
    }

    private static Command Export(Terminal terminal)
    {
        BookVerb verb = new(
            terminal, "export", "The lists of the book as CSV files that go in again: stock, dies, open orders; and all tickets.");
        Argument<string> folder = verb.Input("FOLDER", "Where they are written.");
        Option<bool> force = verb.Flag("--force", "Overwrite existing files.");
        return verb.Does((parse, desk) =>
        {
            string to = parse.GetValue(folder)!;
            ResultFolder results = new(to, parse.GetValue(force));
            results.Prepare(BookExport.FileNames);
            IReadOnlyList<string> written = results.Write(BookExport.Of(desk.Store, to));
            terminal.Results.WriteLine($"wrote {string.Join(", ", written)}");
            return ExitCode.Done;
        });
    }

    private static Command Copy(Terminal terminal)
    {
        BookVerb verb = new(terminal, "copy", "A copy of the book as a file, sound though others write meanwhile.");
        Argument<string> file = verb.Input("FILE", "The copy; it must not be there yet.");
        return verb.Does((parse, desk) =>
        {
            desk.Store.CopyTo(parse.GetValue(file)!);
            terminal.Results.WriteLine($"copied to {parse.GetValue(file)}");
            return ExitCode.Done;
        });
    }

    private static Command Check(Terminal terminal)
    {
        BookVerb verb = new(
            terminal, "check", "Add up all entries anew: what is kept must follow from them, and felt, strikes and balls must add up.");
        return verb.Does((_, desk) =>
        {
            BookCheckRun run = new(desk.Store);
            terminal.Results.WriteLine(run.Line);
            foreach (string violation in run.Violations)
            {
                terminal.Say(violation);
            }

            return run.Violations.Count == 0 ? ExitCode.Done : ExitCode.Violation;
        });
    }
}
