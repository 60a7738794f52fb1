using System.CommandLine;
using FeltNest.Files;

namespace FeltNest.Cli;

/// <summary>The one line that says what is wrong with a command line, with the word that was probably meant.</summary>
internal static class UsageFault
{
    // Longest word quoted back, letters.
    private const int Longest = 80;

    /// <summary>The line for the first fault of a parse.</summary>
    public static string Of(ParseResult parse, RootCommand root)
    {
        Command command = parse.CommandResult.Command;
        string help = $"(feltnest{(command == root ? string.Empty : $" {command.Name}")} --help shows what is allowed)";
        string? strange = parse.UnmatchedTokens.Count > 0 ? parse.UnmatchedTokens[0] : null;
        string fault = parse.Errors[0].Message.TrimEnd('.');
        if (strange is null)
        {
            return $"{fault} {help}";
        }

        bool option = strange.StartsWith('-');
        string[] known = option
            ? [.. command.Options.SelectMany(o => o.Aliases.Prepend(o.Name)).Where(name => name.StartsWith("--", StringComparison.Ordinal))]
            : [.. command.Subcommands.Select(c => c.Name)];
        string shown = strange.Length <= Longest ? strange : strange[..Longest];
        return command == root && !option
            ? $"'{shown}' is no command{NearestWord.Hint(shown, known)} {help}"
            : $"'{shown}' is not known here{NearestWord.Hint(shown, known)} {help}";
    }
}
