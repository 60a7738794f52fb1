using Microsoft.AspNetCore.Http;

namespace FeltNest.Page.Guard;

/// <summary>Headers of every answer: nothing from outside, no framing, nothing kept.</summary>
internal static class SafeHeaders
{
    /// <summary>Sets them.</summary>
    public static void Set(IHeaderDictionary headers)
    {
        headers.ContentSecurityPolicy = "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data: blob:; "
            + "connect-src 'self'; form-action 'none'; base-uri 'none'; frame-ancestors 'none'";
        headers.XContentTypeOptions = "nosniff";
        headers["Referrer-Policy"] = "no-referrer";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers.CacheControl = "no-store";
    }
}
