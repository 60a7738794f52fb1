using System.Diagnostics;
using FeltNest.Tests.Cli.Faults;

namespace FeltNest.Tests.Endurance;

/// <summary>The page's program in a process of its own, and questions to it.</summary>
internal sealed class PageClient : IDisposable
{
    private readonly HttpClient client;

    private PageClient(Process program, string address)
    {
        Program = program;
        client = new HttpClient { BaseAddress = new Uri(address), Timeout = TimeSpan.FromMinutes(5) };
    }

    /// <summary>The program.</summary>
    internal Process Program { get; }

    internal static async Task<PageClient> Start(CancellationToken stop)
    {
        Process program = ProgramProcess.Start(ProgramProcess.Program, ["page", "--port", "0"]);
        return new PageClient(program, (await program.StandardOutput.ReadLineAsync(stop))!);
    }

    /// <summary>A whole answer.</summary>
    internal async Task<string> Whole(string question, CancellationToken stop)
    {
        using HttpResponseMessage answer = await client.GetAsync(new Uri(question, UriKind.Relative), stop);
        return $"{answer.StatusCode} {await answer.Content.ReadAsStringAsync(stop)}";
    }

    /// <summary>The first line of an answer; then the client goes.</summary>
    internal async Task<string> FirstLine(string question, CancellationToken stop)
    {
        using HttpResponseMessage answer =
            await client.GetAsync(new Uri(question, UriKind.Relative), HttpCompletionOption.ResponseHeadersRead, stop);
        using StreamReader lines = new(await answer.Content.ReadAsStreamAsync(stop));
        return (await lines.ReadLineAsync(stop))!;
    }

    /// <summary>Share of one core that the program uses while nobody asks anything, over half a second.</summary>
    internal async Task<double> IdleShare(CancellationToken stop)
    {
        Program.Refresh();
        TimeSpan before = Program.TotalProcessorTime;
        Stopwatch watch = Stopwatch.StartNew();
        await Task.Delay(500, stop);
        Program.Refresh();
        return (Program.TotalProcessorTime - before) / watch.Elapsed;
    }

    public void Dispose()
    {
        client.Dispose();
        Program.Kill();
        Program.WaitForExit();
        Program.Dispose();
    }
}
