using Microsoft.AspNetCore.Http;

namespace FeltNest.Page.Guard;

/// <summary>Lets through what comes from the page itself, and whoever opens it: another site's page, a fetch ahead, or a name made to point
/// here, is refused.</summary>
internal static class LocalRequests
{
    private static readonly string[] Hosts = ["127.0.0.1", "localhost", "[::1]"];

    /// <summary>Why a request is refused, or null.</summary>
    public static string? Refusal(HttpRequest request, int port)
    {
        if (!Hosts.Contains(request.Host.Host) || request.Host.Port != port)
        {
            return "this address is not the page's own";
        }

        string? origin = request.Headers.Origin;
        if (origin is not null && !Hosts.Any(host => origin == $"http://{host}:{port}"))
        {
            return "another site's page may not use this one";
        }

        // A browser that fetches ahead of a click works for nobody yet: any page can ask it to.
        if (request.Headers["Sec-Purpose"].Count > 0 || request.Headers["Purpose"].Count > 0)
        {
            return "the page is not fetched ahead";
        }

        // Browsers say where a request comes from. An address typed, kept or sent opens the page itself and nothing else: what it shows
        // asks from there.
        bool opensPage = request.Path == "/" && request.Headers["Sec-Fetch-Dest"] == "document";
        return request.Headers["Sec-Fetch-Site"].ToString() switch
        {
            "" or "same-origin" => null,
            "none" when opensPage => null,
            "cross-site"
                or "same-site" when opensPage && HttpMethods.IsGet(request.Method) && request.Headers["Sec-Fetch-Mode"] == "navigate" =>
                null,
            _ => "another site's page may not use this one",
        };
    }
}
