using System.Diagnostics;
using FeltNest.Cli;
using FeltNest.Tests.Files;
using Xunit;

namespace FeltNest.Tests.Cli;

public sealed class CommandLineTests : IDisposable
{
    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    private static string Ball { get; } = RepositoryFile.PathOf("shapes", "balls", "type-2.json");

    private static string DogBone { get; } = RepositoryFile.PathOf("shapes", "outlines", "dog-bone.json");

    [Theory]
    [InlineData("--help", "feltnest layout shapes/balls/type-2.json --width 1500")]
    [InlineData("layout --help", "feltnest layout shapes/balls/type-2.json --width 54in --gap 4 --edge 15mm")]
    [InlineData("check --help", "feltnest check output/type-2-w1500-g4/layout.json")]
    public async Task Help_goes_to_stdout_and_ends_with_examples(string args, string example)
    {
        CommandRun run = await CommandRun.Of(args.Split(' '));

        Assert.Equal((0, string.Empty), (run.Code, run.Err));
        Assert.Contains("Examples:\n", run.Out, StringComparison.Ordinal);
        Assert.Contains(example, run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Version_goes_to_stdout()
    {
        CommandRun run = await CommandRun.Of("--version");

        Assert.Equal((0, string.Empty), (run.Code, run.Err));
        Assert.StartsWith("0.", run.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("lay")]
    [InlineData("check")]
    [InlineData("panel a.json --colour red")]
    [InlineData("layout a.json")]
    [InlineData("layout a.json --width")]
    [InlineData("layout a.json --width wide")]
    [InlineData("layout a.json --width 1,5m")]
    [InlineData("layout a.json --width -1500")]
    [InlineData("layout a.json --width 0")]
    [InlineData("layout a.json --width 101m")]
    [InlineData("layout a.json --width NaN")]
    [InlineData("layout a.json --width 1500 --gap -1")]
    [InlineData("layout a.json --width 1500 --effort 0")]
    [InlineData("layout a.json --width 1500 --effort 1.5")]
    [InlineData("layout a.json --width 1500 --rows some")]
    [InlineData("layout a.json --width 1500 --warp-angle up")]
    [InlineData("layout a.json --width 1500 --warp-tolerance 91")]
    [InlineData("layout a.json --width 1500 --seconds 0")]
    [InlineData("layout a.json --width 1500 --width 1600")]
    [InlineData("layout no-such-file.json --width 1500")]
    [InlineData("panel no-such-file.json")]
    [InlineData("panel @no-such-file.json")]
    [InlineData("panel /")]
    [InlineData("check no-such-file.json")]
    public async Task Bad_usage_gives_one_line_on_stderr_nothing_on_stdout_and_code_2(string args)
    {
        CommandRun run = await CommandRun.Of(args.Split(' ', StringSplitOptions.RemoveEmptyEntries));

        Assert.Equal((2, string.Empty), (run.Code, run.Out));
        Assert.StartsWith("feltnest: ", Assert.Single(run.Messages), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_bad_field_is_told_with_file_field_value_and_range()
    {
        string path = folder.Write(
            "huge.json",
            File.ReadAllText(Ball).Replace("\"outerDiameterMm\": 60.0", "\"outerDiameterMm\": 6000", StringComparison.Ordinal));

        CommandRun run = await CommandRun.Of("panel", path, "--out", folder.Path("out"));

        Assert.Equal((2, string.Empty), (run.Code, run.Out));
        Assert.StartsWith(
            $"feltnest: {path}: core.outerDiameterMm: 6000 mm is outside 20 to 200 mm: ", Assert.Single(run.Messages),
            StringComparison.Ordinal);
        Assert.False(Directory.Exists(folder.Path("out")));
    }

    [Fact]
    public async Task A_plain_outline_has_no_design_angle()
    {
        CommandRun run = await CommandRun.Of("layout", DogBone, "--width", "600", "--warp-angle", "design", "--out", folder.Path("out"));

        Assert.Equal((2, string.Empty), (run.Code, run.Out));
        Assert.StartsWith("feltnest: --warp-angle: 'design' needs a ball", Assert.Single(run.Messages), StringComparison.Ordinal);
    }

    [Fact]
    public void A_failure_of_the_program_itself_is_one_line_without_a_stack()
    {
        using StringWriter results = new(), messages = new() { NewLine = "\n" };

        int code = FaultLine.Tell(
            new InvalidOperationException("first\nsecond"), new Terminal { Results = results, Messages = messages },
            CancellationToken.None);

        Assert.Equal((1, string.Empty), (code, results.ToString()));
        Assert.Equal(
            "feltnest: internal error (InvalidOperationException: first second); please report it with the command and the input\n",
            messages.ToString());
    }

    [Theory]
    [InlineData("layuot x", "'layuot' is no command; did you mean 'layout'? (feltnest --help shows what is allowed)")]
    [InlineData(
        "layout x --widht 3", "'--widht' is not known here; did you mean '--width'? (feltnest layout --help shows what is allowed)")]
    [InlineData("compare x --zzzzzz", "'--zzzzzz' is not known here (feltnest compare --help shows what is allowed)")]
    public async Task A_word_mistyped_is_told_with_the_one_meant(string line, string told)
    {
        CommandRun run = await CommandRun.Of(line.Split(' '));

        Assert.Equal((2, string.Empty), (run.Code, run.Out));
        Assert.Equal("feltnest: " + told, Assert.Single(run.Messages));
    }

    [Fact]
    public async Task The_shell_completes_options_through_the_lines_it_is_given()
    {
        const string shell = "/bin/bash";
        Assert.SkipUnless(File.Exists(shell), "bash is not installed");
        CommandRun script = await CommandRun.Of("completion", "bash");
        string program = typeof(FeltNest.Cli.Commands.CompletionCommand).Assembly.Location;
        ProcessStartInfo start = new(shell) { RedirectStandardOutput = true, ArgumentList = { "-c", $$"""
            feltnest() { dotnet "{{program}}" "$@"; }
            {{script.Out}}
            COMP_LINE='feltnest layout --wid'; COMP_POINT=${#COMP_LINE}; COMP_WORDS=(feltnest layout --wid); COMP_CWORD=2
            _feltnest_words; printf '%s\n' "${COMPREPLY[@]}"
            """ } };
        using Process process = Process.Start(start)!;

        Assert.Equal("--width", (await process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken)).Trim());
    }
}
