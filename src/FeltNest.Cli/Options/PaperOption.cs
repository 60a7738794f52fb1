using System.CommandLine;
using System.CommandLine.Parsing;

namespace FeltNest.Cli.Options;

/// <summary><c>--paper a3|a4</c>: what a print is printed on.</summary>
internal sealed class PaperOption
{
    private readonly Option<string> paper;

    /// <summary>Adds the option to a command.</summary>
    /// <param name="command">The command.</param>
    /// <param name="description">What is printed on it.</param>
    public PaperOption(Command command, string description)
    {
        paper = new Option<string>("--paper")
        {
            Description = description,
            HelpName = "a3|a4",
            DefaultValueFactory = _ => "a3",
            CustomParser = Parse,
        };
        command.Add(paper);
    }

    /// <summary>Name of the size.</summary>
    public string Of(ParseResult parse) => parse.GetValue(paper)!.ToUpperInvariant();

    private static string Parse(ArgumentResult result)
    {
        string word = result.Tokens[0].Value;
        if (word is not ("a3" or "a4"))
        {
            result.AddError($"--paper: '{word}' is not allowed: a3, a4");
        }

        return word;
    }
}
