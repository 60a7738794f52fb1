using System.Text.RegularExpressions;
using System.Xml.Linq;
using FeltNest.Tests.Files;
using Xunit;

namespace FeltNest.Tests;

/// <summary>Who may know whom: a stage knows the stages before it and the two floors; heavy packages are named where they belong and
/// nowhere else.</summary>
public sealed partial class ArchitectureTests
{
    private static readonly string[] Stages = ["Ball", "Seam", "Panel", "Layout", "Yield", "Design", "Cost", "Rolls", "Die"];
    private static readonly string[] Floors = ["Geometry", "Numerics"];
    private static readonly string[] Surfaces = ["Drawing", "Report", "Files"];

    // The library's three projects: records, checks, and the work itself. Their folders are the same rooms.
    private static readonly string[] Projects = ["FeltNest.Records", "FeltNest.Verify", "FeltNest"];

    [Fact]
    public void A_stage_knows_only_the_stages_before_it_and_the_floors()
    {
        foreach ((string file, string folder, string used) in References())
        {
            bool allowed = folder == used || used.Length == 0 || Floors.Contains(used)
                || (Stages.Contains(folder) && Stages.Contains(used) && Array.IndexOf(Stages, used) < Array.IndexOf(Stages, folder))
                || (Surfaces.Contains(folder) && Stages.Contains(used));
            Assert.True(allowed, $"{file} ({folder}) names {used}");
        }
    }

    [Fact]
    public void Every_type_lives_in_the_namespace_of_its_folder()
    {
        foreach (string file in Sources())
        {
            string expected = $"FeltNest.{Path.GetDirectoryName(InProject(file))!.Replace('/', '.')}";
            Assert.Contains($"namespace {expected.TrimEnd('.')};", File.ReadAllText(file), StringComparison.Ordinal);
        }
    }

    // A check that shares no code with the work it checks: its project cannot reach any.
    [Fact]
    public void The_checks_know_the_records_and_one_geometry_engine_alone()
    {
        Assert.Equal(["FeltNest.Records", "NetTopologySuite"], Known("FeltNest.Verify"));
        Assert.Equal(["NetTopologySuite"], Known("FeltNest.Records"));
        Assert.DoesNotContain(Sources(RepositoryFile.PathOf("src", "FeltNest.Records")), file => Solvers().IsMatch(File.ReadAllText(file)));
    }

    [Fact]
    public void Every_check_of_a_result_stands_among_the_checks()
    {
        string[] elsewhere = [.. Sources()
            .Where(file => ProjectOf(file) != "FeltNest.Verify" && Path.GetFileName(file).EndsWith("Check.cs", StringComparison.Ordinal))
            .Select(InProject)];

        // These two judge a ball that is asked for, not a result.
        Assert.Equal(["Ball/Rules/RuleCheck.cs", "Ball/Tolerance/ToleranceCheck.cs"], elsewhere.Order());
    }

    [Theory]
    [InlineData("SkiaSharp", "Drawing,Files")]
    [InlineData("Google.OrTools", "Layout,Cost,Rolls,Die")]
    [InlineData("NetTopologySuite", "Geometry")]
    [InlineData("MathNet.Numerics", "Numerics")]
    [InlineData("DocumentFormat.OpenXml", "Files")]
    [InlineData("ExcelDataReader", "Files")]
    public void A_heavy_package_is_named_only_where_it_belongs(string package, string folders)
    {
        string[] named = [.. Sources()
            .Where(file => File.ReadAllText(file).Contains($"using {package}", StringComparison.Ordinal))
            .Where(file => !(package == "NetTopologySuite" && ProjectOf(file) == "FeltNest.Verify"))
            .Select(FolderOf)];

        Assert.NotEmpty(named);
        Assert.All(named, folder => Assert.Contains(folder, folders.Split(',')));
    }

    [Fact]
    public void The_library_knows_no_console_no_clock_and_no_current_folder()
    {
        foreach (string file in Sources())
        {
            Assert.DoesNotMatch(
                @"\bConsole\.|\bDateTime\.|\bDateTimeOffset\.|\bStopwatch\b|CurrentDirectory|\bEnvironment\.GetCommandLineArgs",
                File.ReadAllText(file));
        }
    }

    // A clock that is set back must not matter: progress is timed by the steady clock alone, and a cap in seconds ends a search by a timer.
    [Fact]
    public void No_code_reads_the_time_of_day_and_only_the_progress_line_and_the_cap_in_seconds_read_a_clock()
    {
        foreach (string file in Sources(RepositoryFile.PathOf("src")))
        {
            // Whose hand wrote in the book, and when: asked of the machine where nobody states it.
            if (InProject(file) == "DeskClock.cs")
            {
                continue;
            }

            string text = File.ReadAllText(file);
            Assert.DoesNotMatch(
                @"\bDateTime(Offset)?\.|\bTimeProvider\b|\bTickCount|\bDateOnly\.FromDateTime|\bGetLastWriteTime|\bGetCreationTime", text);
            Assert.True(
                !text.Contains("Stopwatch", StringComparison.Ordinal) || Path.GetFileName(file) is "ProgressLine.cs" or "RunClock.cs",
                file);
            Assert.True(!ClockTimers().IsMatch(text) || Path.GetFileName(file) is "RunClock.cs" or "StopSignals.cs", file);
        }
    }

    // The book knows the records alone; the runs and the command line know the book. Its stores are named there and nowhere else.
    [Fact]
    public void The_book_knows_the_records_alone_and_its_stores_are_named_nowhere_else()
    {
        Assert.Equal(["FeltNest.Records", "Microsoft.Data.Sqlite", "Npgsql"], Known("FeltNest.Book"));
        Assert.DoesNotContain("FeltNest.Book", Known("FeltNest").Concat(Known("FeltNest.Verify")).Concat(Known("FeltNest.Records")));
        foreach (string file in Sources(RepositoryFile.PathOf("src")).Where(file => ProjectOf(file) != "FeltNest.Book"))
        {
            Assert.DoesNotMatch(@"\busing (Microsoft\.Data\.Sqlite|Npgsql)\b", File.ReadAllText(file));
        }

        foreach (string file in Sources(RepositoryFile.PathOf("src", "FeltNest.Book")))
        {
            Assert.DoesNotMatch(@"\bConsole\.|\bStopwatch\b|CurrentDirectory", File.ReadAllText(file));
        }
    }

    // The library says what a fault is about, a front end how that is asked for.
    [Theory]
    [InlineData("FeltNest")]
    [InlineData("FeltNest.Book")]
    [InlineData("FeltNest.Records")]
    [InlineData("FeltNest.Runs")]
    [InlineData("FeltNest.Verify")]
    public void Nothing_below_the_command_line_knows_an_option(string project)
    {
        foreach (string file in Sources(RepositoryFile.PathOf("src", project)))
        {
            Assert.DoesNotMatch("\"[^\"\\n]*--[a-z]", File.ReadAllText(file));
        }
    }

    [Fact]
    public void No_front_end_reads_the_text_of_a_fault()
    {
        Assert.Matches(ReadsText(), "catch (InputException error) when (error.Field == \"bands\")");
        Assert.Matches(ReadsText(), "error.Message.Contains(\"gap\")");
        foreach (string file in Sources(RepositoryFile.PathOf("src", "FeltNest.Cli"))
            .Concat(Sources(RepositoryFile.PathOf("src", "FeltNest.Page"))))
        {
            Assert.DoesNotMatch(ReadsText(), File.ReadAllText(file));
        }
    }

    [Fact]
    public void No_line_is_longer_than_a_hundred_and_forty_columns_and_none_declares_several_variables()
    {
        foreach (string file in Sources(RepositoryFile.PathOf("src")).Concat(Sources(RepositoryFile.PathOf("tests"))))
        {
            string[] lines = File.ReadAllLines(file);
            Assert.DoesNotContain(lines, line => line.Length > 140);
            Assert.DoesNotContain(lines, line => SeveralVariables().IsMatch(line));
        }
    }

    // Coordinates and derivatives have their order from mathematics; all other values are written with their names.
    [Fact]
    public void No_record_takes_more_than_five_values_by_place_or_two_neighbours_of_one_type()
    {
        string[] coordinates =
        [
            "Point2", "SpherePoint", "ArcVertex", "CurvePoint", "SeamPoint", "SvgTransform", "Colour", "Metric", "SeamJet", "DomainJet",
            "FlatJet", "ChartJet",
        ];
        int seen = 0;
        foreach (string file in Sources(RepositoryFile.PathOf("src")))
        {
            foreach (Match record in Records().Matches(File.ReadAllText(file)))
            {
                seen++;
                string[] types = [.. TopLevel(record.Groups[2].Value).Select(TypeOf)];
                bool swappable = types.Zip(types.Skip(1)).Any(pair => pair.First == pair.Second);
                Assert.True(
                    (types.Length <= 5 && !swappable) || coordinates.Contains(record.Groups[1].Value),
                    $"{file}: {record.Groups[1].Value}({string.Join(", ", types)})");
            }
        }

        Assert.True(seen > 50);
    }

    [Fact]
    public void No_value_turns_into_another_by_itself()
    {
        foreach (string file in Sources(RepositoryFile.PathOf("src")))
        {
            Assert.DoesNotContain("implicit operator", File.ReadAllText(file), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void The_library_has_one_front_door()
    {
        Type[] open = [.. typeof(FeltCovers).Assembly.GetExportedTypes()];

        Assert.Equal([typeof(FeltCovers)], open.Where(type => type is { IsAbstract: true, IsSealed: true }));
        Assert.Empty(typeof(FeltNest.Layout.Check.LayoutCheck).Assembly.GetExportedTypes());
    }

    private static string TypeOf(string parameter)
    {
        string[] words = parameter.Split('=')[0].Trim().Split(' ');
        return string.Join(' ', words[..^1]);
    }

    private static IEnumerable<string> TopLevel(string parameters)
    {
        int depth = 0;
        int from = 0;
        for (int i = 0; i < parameters.Length; i++)
        {
            depth += parameters[i] is '<' or '(' or '[' ? 1 : 0;
            depth -= parameters[i] is '>' or ')' or ']' ? 1 : 0;
            if (parameters[i] == ',' && depth == 0)
            {
                yield return Regex.Replace(parameters[from..i], @"\s+", " ");
                from = i + 1;
            }
        }

        yield return Regex.Replace(parameters[from..], @"\s+", " ");
    }

    private static IEnumerable<string> Sources() => Projects.SelectMany(project => Sources(RepositoryFile.PathOf("src", project)));

    private static IEnumerable<string> Sources(string root) => Directory.EnumerateFiles(root, "*.cs", SearchOption.AllDirectories)
        .Where(file => !file.Contains("/obj/", StringComparison.Ordinal) && !file.Contains("/bin/", StringComparison.Ordinal));

    private static string ProjectOf(string file) => Path.GetRelativePath(RepositoryFile.PathOf("src"), file).Split('/')[0];

    private static string InProject(string file) => Path.GetRelativePath(RepositoryFile.PathOf("src", ProjectOf(file)), file);

    private static string FolderOf(string file) => InProject(file).Split('/') is { Length: > 1 } parts ? parts[0] : string.Empty;

    // Projects and packages that a project file names.
    private static string[] Known(string project) =>
        [
            .. Items(project, "ProjectReference").Select(Path.GetFileNameWithoutExtension)
                .Concat(Items(project, "PackageReference"))
                .Order()!,
        ];

    private static string[] Items(string project, string kind) =>
        [.. XDocument.Load(RepositoryFile.PathOf("src", project, $"{project}.csproj")).Descendants(kind)
            .Select(item => item.Attribute("Include")!.Value)];

    private static IEnumerable<(string File, string Folder, string Used)> References() =>
        from file in Sources()
        from Match match in Names().Matches(File.ReadAllText(file))
        let used = match.Groups[1].Value
        where FolderOf(file).Length > 0 && (Stages.Contains(used) || Floors.Contains(used) || Surfaces.Contains(used))
        select (file, FolderOf(file), used);

    [GeneratedRegex(@"^\s*(private |static |const |readonly )*(double|int|bool|long|decimal|Point2) \w+ = [^(){}<>""]*, \w+ = ")]
    private static partial Regex SeveralVariables();

    [GeneratedRegex(@"\bCancelAfter\b|\bPeriodicTimer\b|\bThreading\.Timer\b|\bThread\.Sleep\b")]
    private static partial Regex ClockTimers();

    [GeneratedRegex(@"\brecord (?:struct |class )?(\w+)(?:<[^(]*>)?\(((?:[^()]|\([^()]*\))*)\)")]
    private static partial Regex Records();

    [GeneratedRegex("""\.(Message|Problem|Field)(\.(Contains|StartsWith|EndsWith)\(|\s*(==|is)\s*(not\s+)?")""")]
    private static partial Regex ReadsText();

    [GeneratedRegex(@"\b(Google\.OrTools|LayoutSearch|PanelFlattener|StrikePlanner|OrderPlanner|DieDesigner|YieldAccount)\b\s*[.(;]")]
    private static partial Regex Solvers();

    [GeneratedRegex(@"\bFeltNest\.(\w+)")]
    private static partial Regex Names();
}
