using System.Text.Json;
using FeltNest.Page.Inputs;
using Microsoft.AspNetCore.Http;

namespace FeltNest.Page.Answers;

/// <summary>Answers one JSON object a line, each sent as soon as it is there.</summary>
internal static class LineStream
{
    private static readonly JsonSerializerOptions Form = new(JsonSerializerDefaults.Web);

    /// <summary>Begins a stream.</summary>
    public static void Begin(HttpResponse response) => response.ContentType = "application/x-ndjson; charset=utf-8";

    /// <summary>Sends a line.</summary>
    public static async Task Send<T>(HttpResponse response, T line, CancellationToken gone)
    {
        await JsonSerializer.SerializeAsync(response.Body, line, Form, gone);
        await response.Body.WriteAsync("\n"u8.ToArray(), gone);
        await response.Body.FlushAsync(gone);
    }

    /// <summary>Answers with faults of fields.</summary>
    public static Task Faults(HttpResponse response, IReadOnlyList<FieldFault> faults, CancellationToken gone)
    {
        response.StatusCode = StatusCodes.Status400BadRequest;
        return response.WriteAsJsonAsync(new { faults }, Form, gone);
    }
}
