using System.Net;
using FeltNest.Page.Answers;
using FeltNest.Page.Guard;
using FeltNest.Page.Inputs;
using FeltNest.Page.Work;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;

namespace FeltNest.Page;

/// <summary>The local page: the same work as the command line, on 127.0.0.1 alone.</summary>
public sealed class PageServer : IAsyncDisposable
{
    // Greatest upload, bytes: an offers list of sixty lines has a few thousand.
    private const int MostUpload = 256 * 1024;

    // How long answers under way may take after the page is told to close.
    private static readonly TimeSpan StopTime = TimeSpan.FromSeconds(0.5);

    private readonly WebApplication application;
    private readonly PageWork work;

    private PageServer(WebApplication application, PageWork work)
    {
        this.application = application;
        this.work = work;
    }

    /// <summary>Port it listens on.</summary>
    public int Port { get; private set; }

    /// <summary>Address of the page.</summary>
    public string Address => FormattableString.Invariant($"http://127.0.0.1:{Port}/");

    /// <summary>Starts a page.</summary>
    /// <param name="port">Port on 127.0.0.1; 0 for any free one.</param>
    /// <param name="balls">Files of balls to offer; those that come with the program where there are none.</param>
    /// <param name="stop">Ends the start.</param>
    /// <exception cref="InputException">A file is no sound ball, or the port is taken.</exception>
    public static async Task<PageServer> Start(int port, IReadOnlyList<string> balls, CancellationToken stop)
    {
        BallShelf shelf = balls.Count > 0 ? BallShelf.Of(balls) : BallShelf.Shipped();
        WebApplicationBuilder builder = WebApplication.CreateEmptyBuilder(new WebApplicationOptions());
        builder.Logging.ClearProviders();
        builder.Services.AddRoutingCore();
        builder.WebHost.UseKestrelCore().ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = MostUpload;
            kestrel.Limits.MaxRequestLineSize = 8 * 1024;
            kestrel.Limits.MaxConcurrentConnections = 256;
            kestrel.Listen(IPAddress.Loopback, port);
        });
        builder.Services.Configure<HostOptions>(host => host.ShutdownTimeout = StopTime);
        PageWork work = new(shelf);
        PageServer server = new(builder.Build(), work);
        server.application.Use(server.Guarded);
        server.application.UseRouting();
        PageRoutes.Map(server.application, work, shelf);
        try
        {
            await server.application.StartAsync(stop);
        }
        catch (IOException error)
        {
            await server.DisposeAsync();
            throw new InputException(null, "--port", $"{port} cannot be listened on ({error.Message}): choose another --port", error);
        }

        string address =
            server.application.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First();
        server.Port = new Uri(address).Port;
        return server;
    }

    /// <summary>Runs until it is stopped.</summary>
    public async Task Run(CancellationToken stop)
    {
        try
        {
            await Task.Delay(Timeout.Infinite, stop);
        }
        catch (OperationCanceledException)
        {
            await application.StopAsync(CancellationToken.None);
        }
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        await application.DisposeAsync();
        work.Dispose();
    }

    // Refuses what is not the page's own, and turns every failure into an answer without a stack trace.
    private async Task Guarded(HttpContext context, RequestDelegate next)
    {
        SafeHeaders.Set(context.Response.Headers);
        if (LocalRequests.Refusal(context.Request, Port) is { } refusal)
        {
            context.Response.StatusCode = StatusCodes.Status403Forbidden;
            await context.Response.WriteAsync(refusal + "\n", context.RequestAborted);
            return;
        }

        try
        {
            await next(context);
        }
        catch (OperationCanceledException) when (context.RequestAborted.IsCancellationRequested)
        {
            // The client is gone: nobody waits for an answer.
        }
        catch (FeltNestException error) when (!context.Response.HasStarted)
        {
            await LineStream.Faults(context.Response, [PageFault.Of(error)], context.RequestAborted);
        }
        catch (BadHttpRequestException error) when (!context.Response.HasStarted)
        {
            context.Response.StatusCode = error.StatusCode;
            await context.Response.WriteAsync(
                (error.StatusCode == StatusCodes.Status413PayloadTooLarge
                    ? $"more than {MostUpload / 1024} kB are not taken"
                    : "the request is malformed")
                    + "\n", context.RequestAborted);
        }
    }
}
