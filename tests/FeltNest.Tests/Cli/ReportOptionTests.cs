using System.Xml.Linq;
using FeltNest.Tests.Files;
using Xunit;

namespace FeltNest.Tests.Cli;

public sealed class ReportOptionTests : IDisposable
{
    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task A_report_holds_picture_table_command_and_inputs_and_needs_no_other_file()
    {
        string bone = RepositoryFile.PathOf("shapes", "outlines", "dog-bone.json");
        CommandRun run = await CommandRun.Of("layout", bone, "--width", "400", "--effort", "1", "--report", "--out", folder.Path("out"));

        Assert.Equal(0, run.Code);
        string page = File.ReadAllText(folder.Path("out/report.html"));
        Assert.Contains("src=\"data:image/svg+xml;base64,", page, StringComparison.Ordinal);
        Assert.Contains($"feltnest layout {bone} --width 400 --effort 1 --report", page, StringComparison.Ordinal);
        Assert.Contains(System.Net.WebUtility.HtmlEncode(File.ReadAllText(bone).TrimEnd()), page, StringComparison.Ordinal);
        Assert.Contains(System.Net.WebUtility.HtmlEncode(run.Out.Split('\n')[5]), page, StringComparison.Ordinal);
        Assert.DoesNotContain("src=\"http", page, StringComparison.Ordinal);
        Assert.NotNull(XDocument.Parse(page
            .Replace("<!DOCTYPE html>", string.Empty, StringComparison.Ordinal)
            .Replace("<meta charset=\"utf-8\">", string.Empty, StringComparison.Ordinal)
            .Replace("<meta name=\"viewport\" content=\"width=device-width\">", string.Empty, StringComparison.Ordinal)
            .Replace("\"><figcaption>", "\"/><figcaption>", StringComparison.Ordinal)));
    }

    [Fact]
    public async Task A_report_that_is_there_is_not_overwritten_unasked()
    {
        folder.Write("report.html", "mine");
        CommandRun run = await CommandRun.Of(
            "layout", RepositoryFile.PathOf("shapes", "outlines", "dog-bone.json"), "--width", "400", "--effort", "1", "--report", "--out",
            folder.Path("."));

        Assert.Equal((2, string.Empty), (run.Code, run.Out));
        Assert.Contains("report.html: exists already", Assert.Single(run.Messages), StringComparison.Ordinal);
        Assert.Equal("mine", File.ReadAllText(folder.Path("report.html")));
    }
}
