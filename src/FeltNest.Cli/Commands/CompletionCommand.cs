using System.CommandLine;
using FeltNest.Files;

namespace FeltNest.Cli.Commands;

/// <summary><c>completion SHELL</c>: the lines that teach a shell to complete commands and options.</summary>
internal static class CompletionCommand
{
    // The word [suggest:place] asks the program itself what may follow; files are left to the shell.
    private const string Bash = """
        _feltnest_words() {
            local line="${COMP_LINE#* }"
            local place=$((COMP_POINT - ${#COMP_LINE} + ${#line}))
            COMPREPLY=( $(compgen -W "$(feltnest "[suggest:${place}]" "${line}" 2>/dev/null)" -- "${COMP_WORDS[COMP_CWORD]}") )
        }
        complete -o default -F _feltnest_words feltnest
        """;

    private const string Zsh = """
        _feltnest_words() {
            local line="${BUFFER#* }"
            local -a words_found
            words_found=("${(@f)$(feltnest "[suggest:${#line}]" "${line}" 2>/dev/null)}")
            compadd -a words_found
            _files
        }
        compdef _feltnest_words feltnest
        """;

    private const string PowerShell = """
        Register-ArgumentCompleter -Native -CommandName feltnest -ScriptBlock {
            param($word, $line, $place)
            $text = "$line" -replace '^\S+\s', ''
            feltnest "[suggest:$($text.Length)]" $text | Where-Object { $_ -like "$word*" }
        }
        """;

    private static readonly (string Name, string Script)[] Shells = [("bash", Bash), ("zsh", Zsh), ("pwsh", PowerShell)];

    /// <summary>The command.</summary>
    public static Command Create(Terminal terminal)
    {
        Argument<string> shell = new("SHELL")
        {
            Description = $"One of {string.Join(", ", Shells.Select(s => s.Name))}.",
            HelpName = "SHELL",
        };
        shell.CompletionSources.Add(_ => Shells.Select(s => new System.CommandLine.Completions.CompletionItem(s.Name)));
        Command command = new("completion", "Lines for a shell's start-up file that complete commands and options.") { shell };
        command.SetAction(parse =>
        {
            string name = parse.GetValue(shell)!;
            string script = Shells.FirstOrDefault(s => s.Name == name).Script
                ?? throw new InputException(
                    null, "SHELL",
                    $"'{name}' is not known; allowed: {string.Join(", ", Shells.Select(s => s.Name))}"
                        + $"{NearestWord.Hint(name, [.. Shells.Select(s => s.Name)])}");
            terminal.Results.WriteLine(script);
            return ExitCode.Done;
        });
        return command;
    }
}
