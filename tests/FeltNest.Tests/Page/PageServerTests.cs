using System.Diagnostics;
using System.Net;
using System.Text;
using System.Text.Json;
using System.Xml.Linq;
using FeltNest.Files.Layouts;
using FeltNest.Layout;
using FeltNest.Layout.Check;
using FeltNest.Page;
using FeltNest.Tests.Files;
using Xunit;

namespace FeltNest.Tests.Page;

/// <summary>The page's server as a client that is not its page would meet it.</summary>
public sealed class PageServerTests : IAsyncLifetime
{
    private readonly TempFolder folder = new();
    private readonly HttpClient client = new();
    private PageServer server = null!;

    public async ValueTask InitializeAsync()
    {
        server = await PageServer.Start(0, [], TestContext.Current.CancellationToken);
        client.BaseAddress = new Uri(server.Address);
    }

    public async ValueTask DisposeAsync()
    {
        client.Dispose();
        await server.DisposeAsync();
        folder.Dispose();
    }

    [Fact]
    public async Task Health_answers_200_on_127_0_0_1_alone()
    {
        Assert.Equal(HttpStatusCode.OK, (await Get("health")).StatusCode);
        Assert.StartsWith("http://127.0.0.1:", server.Address, StringComparison.Ordinal);
        await Assert.ThrowsAnyAsync<HttpRequestException>(() =>
            client.GetAsync(new Uri($"http://[::1]:{server.Port}/health"), TestContext.Current.CancellationToken));
    }

    [Theory]
    [InlineData("Origin", "http://evil.example")]
    [InlineData("Origin", "null")]
    [InlineData("Host", "evil.example")]
    [InlineData("Host", "127.0.0.1:1")]
    [InlineData("Sec-Fetch-Site", "cross-site")]
    public async Task Another_site_cannot_drive_the_server(string header, string value)
    {
        using HttpRequestMessage request = new(HttpMethod.Get, "lay?width=500");
        request.Headers.TryAddWithoutValidation(header, value);
        using HttpResponseMessage answer = await client.SendAsync(request, TestContext.Current.CancellationToken);

        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
        Assert.DoesNotContain(
            "panelsPerMetre", await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("lay?width=500&effort=60", "Sec-Fetch-Site", "none", "Sec-Purpose", "prefetch")]
    [InlineData("lay?width=500&effort=60", "Sec-Fetch-Site", "none", "Sec-Fetch-Dest", "document")]
    [InlineData("", "Sec-Fetch-Site", "none", "Sec-Purpose", "prefetch;prerender")]
    [InlineData("", "Sec-Fetch-Site", "cross-site", "Sec-Fetch-Dest", "iframe")]
    [InlineData("", "Sec-Fetch-Site", "cross-site", "Sec-Fetch-Mode", "no-cors")]
    [InlineData("die", "Sec-Fetch-Site", "cross-site", "Sec-Fetch-Mode", "navigate")]
    public async Task Nothing_is_fetched_ahead_and_another_site_starts_no_work(
        string path, string header, string value, string other, string word)
    {
        Assert.Equal(HttpStatusCode.Forbidden, await Asked(path, (header, value), (other, word)));
    }

    [Theory]
    [InlineData("cross-site")]
    [InlineData("same-site")]
    [InlineData("none")]
    [InlineData("same-origin")]
    public async Task A_kept_or_sent_address_opens_the_page(string from) => Assert.Equal(
        HttpStatusCode.OK,
        await Asked("?width=1372", ("Sec-Fetch-Site", from), ("Sec-Fetch-Mode", "navigate"), ("Sec-Fetch-Dest", "document")));

    private async Task<HttpStatusCode> Asked(string path, params (string Name, string Value)[] headers)
    {
        using HttpRequestMessage request = new(HttpMethod.Get, path);
        foreach ((string name, string value) in headers)
        {
            request.Headers.TryAddWithoutValidation(name, value);
        }

        using HttpResponseMessage answer = await client.SendAsync(request, TestContext.Current.CancellationToken);
        return answer.StatusCode;
    }

    [Fact]
    public async Task Every_answer_forbids_what_is_not_the_pages_own()
    {
        using HttpResponseMessage answer = await Get(string.Empty);
        string policy = Assert.Single(answer.Headers.GetValues("Content-Security-Policy"));

        Assert.Contains("default-src 'none'", policy, StringComparison.Ordinal);
        Assert.Contains("frame-ancestors 'none'", policy, StringComparison.Ordinal);
        Assert.Equal("nosniff", Assert.Single(answer.Headers.GetValues("X-Content-Type-Options")));
        string page = await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        Assert.DoesNotContain(
            "http://", page.Replace("http://www.w3.org", string.Empty, StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.DoesNotContain("https://", page, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("files/..%2f..%2fetc%2fpasswd")]
    [InlineData("files/../layout.json/x")]
    [InlineData("assets/page.js")]
    [InlineData("balls/type-2.json")]
    public async Task There_is_no_way_to_a_file_of_the_machine(string path) =>
        Assert.Equal(HttpStatusCode.NotFound, (await Get(path)).StatusCode);

    [Theory]
    [InlineData("lay?width=9", "width", "9 is outside 10 to 10000 mm")]
    [InlineData("lay?width=1e999", "width", "is not a number")]
    [InlineData("lay?gap=", "gap", "is empty")]
    [InlineData("lay?ball=../../secret", "ball", "is not on the shelf")]
    [InlineData("lay?rows=sideways", "rows", "'sideways' is not allowed: same, alternate, any")]
    [InlineData("lay?effort=2.5", "effort", "is a whole number")]
    [InlineData("lay?width=20", "width", "is used up by the two edge trims")]
    [InlineData("lay?waist=199", "waist", "")]
    [InlineData("lay?core=5", "core", "")]
    [InlineData("panel?felt=20", "felt", "")]
    [InlineData("panel?cement=-1", "cement", "")]
    [InlineData("lay?width=45&effort=1", "page", "")]
    public async Task A_bad_field_is_refused_with_its_reason(string path, string field, string problem)
    {
        using HttpResponseMessage answer = await Get(path);
        string text = await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);

        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        JsonElement fault = JsonDocument.Parse(text).RootElement.GetProperty("faults")[0];
        Assert.Equal(field, fault.GetProperty("field").GetString());
        Assert.Contains(problem, fault.GetProperty("problem").GetString(), StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Answers_come_as_they_are_found_and_never_get_worse()
    {
        string[] lines = (await Text("lay?width=520&effort=2")).Split('\n', StringSplitOptions.RemoveEmptyEntries);
        JsonElement[] answers = [.. lines.Select(l => JsonDocument.Parse(l).RootElement)];

        Assert.Equal(["first", "better", "done"], answers.Select(a => a.GetProperty("stage").GetString()));
        double[] panels = [.. answers.Select(a => a.GetProperty("panelsPerMetre").GetDouble())];
        Assert.Equal(panels.Order(), panels);
        Assert.All(
            answers,
            a => Assert.Equal(100, a.GetProperty("account").EnumerateArray().Sum(s => s.GetProperty("percent").GetDouble()), 1e-9));
    }

    [Fact]
    public async Task A_saved_lay_passes_the_check_and_is_what_was_shown()
    {
        JsonElement shown =
            JsonDocument.Parse((await Text("lay?width=520&effort=1")).Split('\n', StringSplitOptions.RemoveEmptyEntries)[^1]).RootElement;
        string path = folder.Write("layout.json", await Text("files/layout.json?width=520&effort=1"));
        RollLayout layout = LayoutReader.Read(path).Layout;

        Assert.True(LayoutCheck.Verify(layout).Passed);
        Assert.Equal(shown.GetProperty("panelsPerMetre").GetDouble(), layout.PanelsPerMetre, 1e-9);
    }

    [Fact, Trait("tier", "long")]
    public async Task The_die_of_the_lay_is_told_and_its_files_are_those_of_the_command_line()
    {
        JsonElement die = JsonDocument.Parse(await Text("die?width=520&effort=1")).RootElement;
        JsonElement saved = JsonDocument.Parse(await Text("files/die.json?width=520&effort=1")).RootElement;
        string dxf = await Text("files/cavity.dxf?width=520&effort=1");
        string pdf = await Text("files/die.pdf?width=520&effort=1");

        Assert.Equal(saved.GetProperty("cavities").GetArrayLength(), die.GetProperty("cavities").GetInt32());
        Assert.Equal(saved.GetProperty("forceKn").GetDouble(), die.GetProperty("forceKn").GetDouble());
        Assert.Contains(die.GetProperty("notes").EnumerateArray(), n => n.GetString()!.Contains("NOT MEASURED", StringComparison.Ordinal));
        Assert.Contains("EDGE", dxf, StringComparison.Ordinal);
        Assert.EndsWith("EOF", dxf.TrimEnd(), StringComparison.Ordinal);
        Assert.StartsWith("%PDF-", pdf, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_stated_press_takes_as_many_cavities_as_its_bed_holds_or_says_what_it_lacks()
    {
        const string lay = "width=300&effort=1";
        JsonElement alone = JsonDocument.Parse(await Text($"die?{lay}")).RootElement;
        JsonElement gang = JsonDocument.Parse(await Text($"die?{lay}&bedLength=1000&bedWidth=600&pressForce=250")).RootElement;
        using HttpResponseMessage small =
            await Get($"die?{lay}&bedLength=100&bedWidth=100&pressForce=250"), half = await Get($"die?{lay}&bedLength=1000");

        Assert.True(gang.GetProperty("cavities").GetInt32() > alone.GetProperty("cavities").GetInt32());
        Assert.InRange(gang.GetProperty("boardLengthMm").GetDouble(), alone.GetProperty("boardLengthMm").GetDouble() + 1, 960);
        Assert.InRange(gang.GetProperty("boardWidthMm").GetDouble(), 1, 560);
        Assert.Equal((HttpStatusCode.BadRequest, HttpStatusCode.BadRequest), (small.StatusCode, half.StatusCode));
        Assert.Contains(
            "is too small for the smallest die", await small.Content.ReadAsStringAsync(TestContext.Current.CancellationToken),
            StringComparison.Ordinal);
        Assert.Contains(
            "\"field\":\"bedWidth\",\"problem\":\"is missing", await half.Content.ReadAsStringAsync(TestContext.Current.CancellationToken),
            StringComparison.Ordinal);
    }

    [Fact, Trait("tier", "long")]
    public async Task The_chart_is_saved_as_a_comparison_of_the_widths_it_shows()
    {
        const string asked = "width=300&price=12&effort=1";
        JsonElement saved = JsonDocument.Parse(await Text($"files/widths.json?{asked}")).RootElement;
        string table = await Text($"files/widths.csv?{asked}");
        string picture = await Text($"files/widths.svg?{asked}");
        string report = await Text($"files/widths.html?{asked}");

        Assert.Equal("feltnest/compare/1", saved.GetProperty("schema").GetString());
        Assert.Equal(57, table.Split('\n', StringSplitOptions.RemoveEmptyEntries).Length - 1);
        Assert.Equal("svg", XDocument.Parse(picture).Root!.Name.LocalName);
        Assert.Contains("</html>", report, StringComparison.Ordinal);

        // What is saved is what the chart shows.
        string[] points = (await Text("widths?width=300")).Split('\n', StringSplitOptions.RemoveEmptyEntries);
        double shown = JsonDocument.Parse(points[0]).RootElement.GetProperty("wastePercent").GetDouble();
        Assert.Contains(
            saved.GetProperty("rows").EnumerateArray(),
            r => r.GetProperty("widthMm").GetDouble() == 300 && Math.Abs(r.GetProperty("wastePercent").GetDouble() - shown) < 1e-9);
    }

    [Fact]
    public async Task The_chart_is_of_whole_widths_around_the_one_asked()
    {
        JsonElement[] points =
        [
            .. (await Text("widths?width=300"))
                .Split('\n', StringSplitOptions.RemoveEmptyEntries)
                .Select(l => JsonDocument.Parse(l).RootElement),
        ];

        Assert.Equal(300, points[0].GetProperty("widthMm").GetDouble());
        Assert.Equal(
            (258, 342), (points.Min(p => p.GetProperty("widthMm").GetDouble()), points.Max(p => p.GetProperty("widthMm").GetDouble())));
        Assert.All(points, p => Assert.InRange(p.GetProperty("wastePercent").GetDouble(), 5, 60));
    }

    [Fact]
    public async Task An_upload_too_large_is_refused()
    {
        using ByteArrayContent large = new(new byte[300 * 1024]);
        using HttpResponseMessage answer = await client.PostAsync("offers?width=500", large, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, answer.StatusCode);
    }

    [Fact]
    public async Task A_list_of_offers_is_refused_by_line_and_leaves_no_file_behind()
    {
        int before = Directory.GetDirectories(Path.GetTempPath(), "feltnest-upload-*").Length;
        using StringContent list = new(
            "name,felt,widthMm,lengthM,price,priceUnit,currency\nA,f,500,50,1,yd,EUR\n", Encoding.UTF8, "text/csv");
        using HttpResponseMessage answer = await client.PostAsync("offers?width=500&effort=1", list, TestContext.Current.CancellationToken);
        string text = await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);

        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Contains("line 2, priceUnit: \\u0027yd\\u0027 is not allowed: m, m2, kg", text, StringComparison.Ordinal);
        Assert.DoesNotContain(Path.GetTempPath().TrimEnd('/') + "/", text, StringComparison.Ordinal);
        Assert.Equal(before, Directory.GetDirectories(Path.GetTempPath(), "feltnest-upload-*").Length);
    }

    [Fact, Trait("tier", "long")]
    public async Task Work_ends_when_its_client_is_gone()
    {
        using CancellationTokenSource gone = new();

        // As many as there are cores, each in a search of a minute: were they not ended, the small question would wait for one of them.
        await Task.WhenAll(
            Enumerable.Range(0, Environment.ProcessorCount).Select(i => Begun($"lay?width={1500 + i}&effort=60&rows=any", gone.Token)));
        await gone.CancelAsync();
        Stopwatch watch = Stopwatch.StartNew();
        await Text("lay?width=300&effort=1");
        Assert.InRange(watch.Elapsed.TotalSeconds, 0, 30);
    }

    [Fact, Trait("tier", "long")]
    public async Task The_first_answer_never_waits_for_the_searches_of_others()
    {
        using CancellationTokenSource gone = new();
        await Task.WhenAll(
            Enumerable.Range(0, Environment.ProcessorCount).Select(i => Begun($"lay?width={1500 + i}&effort=60&rows=any", gone.Token)));

        // Every core is in a search of a minute; more stand behind them.
        Task<HttpResponseMessage>[] behind =
        [
            .. Enumerable.Range(0, 4).Select(i => client.GetAsync($"files/layout.json?width={1400 + i}&effort=60", gone.Token)),
        ];
        using HttpResponseMessage answer = await client.GetAsync(
            "lay?width=300&effort=1", HttpCompletionOption.ResponseHeadersRead, TestContext.Current.CancellationToken);
        using StreamReader lines = new(await answer.Content.ReadAsStreamAsync(TestContext.Current.CancellationToken));
        string first = (await lines.ReadLineAsync(TestContext.Current.CancellationToken))!;

        Assert.Contains("\"stage\":\"first\"", first, StringComparison.Ordinal);
        Assert.All(behind, waiting => Assert.False(waiting.IsCompleted));
        await gone.CancelAsync();
    }

    [Fact]
    public async Task A_port_that_is_taken_is_said_in_one_line()
    {
        InputException error =
            await Assert.ThrowsAsync<InputException>(() => PageServer.Start(server.Port, [], TestContext.Current.CancellationToken));
        Assert.Contains($"--port: {server.Port} cannot be listened on", error.Message, StringComparison.Ordinal);
    }

    // Reads until the second search, the one of the effort asked, has begun; the token ends it.
    private async Task Begun(string path, CancellationToken gone)
    {
        HttpResponseMessage answer = await client.GetAsync(path, HttpCompletionOption.ResponseHeadersRead, gone);
        StreamReader lines = new(await answer.Content.ReadAsStreamAsync(gone));
        while (!(await lines.ReadLineAsync(gone))!.Contains("\"stage\":\"better\"", StringComparison.Ordinal))
        {
        }

        gone.Register(answer.Dispose);
    }

    private Task<HttpResponseMessage> Get(string path) => client.GetAsync(path, TestContext.Current.CancellationToken);

    private async Task<string> Text(string path)
    {
        using HttpResponseMessage answer = await Get(path);
        string text = await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        Assert.True(answer.IsSuccessStatusCode, text);
        return text;
    }
}
