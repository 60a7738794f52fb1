using Microsoft.AspNetCore.Http;

namespace FeltNest.Page.Guard;

/// <summary>Lets through what comes from this machine's own page alone: another site's page, or a name made to point here, is refused.</summary>
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

        // Browsers say where a request comes from; a link typed or followed by hand has none or 'none'.
        return request.Headers["Sec-Fetch-Site"].ToString() is "" or "same-origin" or "none" ? null : "another site's page may not use this one";
    }
}
