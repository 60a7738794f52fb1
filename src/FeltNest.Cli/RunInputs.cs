using System.CommandLine;
using System.Reflection;
using System.Text;
using FeltNest.Book;
using FeltNest.Report;

namespace FeltNest.Cli;

/// <summary>What a report says of how a run was asked: its command line and the text of its input files.</summary>
internal sealed class RunInputs(ParseResult parse)
{
    // Texts longer than this, bytes, are named and not copied.
    private const int MostBytes = 200_000;

    private static readonly string[] Texts = [".json", ".csv", ".svg", ".dxf"];

    /// <summary>The report's bytes.</summary>
    public byte[] Report(IReadOnlyList<(string Name, byte[] Content)> files, string table, IReadOnlyList<string> messages)
    {
        string[] words = [.. parse.Tokens.Select(token => token.Value)];
        string version = Assembly.GetExecutingAssembly().GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion;
        IEnumerable<string> inputs =
            words.Where(word => Texts.Contains(Path.GetExtension(word).ToLowerInvariant()) && File.Exists(word)).Distinct();
        return new RunReport
        {
            Command = string.Join(' ', words.Select(Quoted).Prepend("feltnest")),
            Program = $"FeltNest {version}",
            Pictures = [.. files.Where(f => f.Name.EndsWith(".svg", StringComparison.Ordinal))],
            Table = table,
            Messages = messages,
            Inputs = [.. inputs.Select(path => (path, TextOf(path)))],
        }.Html();
    }

    private static string TextOf(string path) => new FileInfo(path) is { Length: > MostBytes } large
        ? $"({large.Length} bytes: not copied here)"
        : Encoding.UTF8.GetString(File.ReadAllBytes(path)).TrimStart('\uFEFF');

    // A connection string may hold a password: a report is handed over.
    private static string Quoted(string word) => (Books.IsDatabase(word), word.Contains(' ')) switch
    {
        (true, _) => "(a database)",
        (_, true) => $"\"{word}\"",
        _ => word,
    };
}
