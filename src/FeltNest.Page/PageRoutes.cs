using System.Reflection;
using FeltNest.Layout;
using FeltNest.Page.Answers;
using FeltNest.Page.Inputs;
using FeltNest.Page.Work;
using FeltNest.Runs;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;

namespace FeltNest.Page;

/// <summary>What the page can ask for, each by its address.</summary>
internal static class PageRoutes
{
    private static readonly (string Path, string Asset, string Kind)[] Assets =
        [
            ("/", "page.html", "text/html; charset=utf-8"), ("/page.css", "page.css", "text/css; charset=utf-8"),
            ("/page.js", "page.js", "text/javascript; charset=utf-8"),
        ];

    /// <summary>Maps them all.</summary>
    public static void Map(WebApplication application, PageWork work, BallShelf shelf)
    {
        foreach ((string path, string asset, string kind) in Assets)
        {
            byte[] content = Asset(asset);
            application.MapGet(path, context => Give(context, content, kind));
        }

        application.MapGet("/health", context => Give(context, "ready\n"u8.ToArray(), "text/plain; charset=utf-8"));
        application.MapGet("/fields", context => context.Response.WriteAsJsonAsync(
            new
            {
                balls = shelf.Names,
                numbers = AddressReader.Numbers,
                choices = AddressReader.Choices.Select(c => new { c.Name, c.Words }),
            }, context.RequestAborted));
        application.MapGet("/panel", context => Asked(context, shelf, inputs => Panel(context, work, inputs)));
        application.MapGet("/lay", context => Asked(context, shelf, inputs => Lay(context, work, inputs)));
        application.MapGet("/widths", context => Asked(context, shelf, inputs => Widths(context, work, inputs)));
        application.MapGet("/die", context => Asked(context, shelf, inputs => Die(context, work, inputs)));
        application.MapPost("/offers", context => Asked(context, shelf, inputs => Offers(context, work, inputs)));
        foreach (string name in PageFiles.Names)
        {
            application.MapGet($"/files/{name}", context => Asked(context, shelf, inputs => File(context, work, inputs, name)));
        }
    }

    private static async Task Asked(HttpContext context, BallShelf shelf, Func<PageInputs, Task> answer)
    {
        AddressReader reader = new(context.Request.Query, shelf);
        if (reader.Read() is { } inputs)
        {
            await answer(inputs);
            return;
        }

        await LineStream.Faults(context.Response, reader.Faults, context.RequestAborted);
    }

    private static async Task Panel(HttpContext context, PageWork work, PageInputs inputs)
    {
        PagePanel panel = await work.AtOnce(() => work.Panel(inputs), context.RequestAborted);
        await context.Response.WriteAsJsonAsync(PanelAnswer.Of(panel), context.RequestAborted);
    }

    // Parallel rows from kept tables at once, then searches of growing effort; each only if it is no worse than what is there.
    private static async Task Lay(HttpContext context, PageWork work, PageInputs inputs)
    {
        CancellationToken gone = context.RequestAborted;
        PagePanel panel = await work.AtOnce(() => work.Panel(inputs), gone);
        LayoutRequest request = PageWork.Request(inputs, panel.Part);
        RollLayout? best = await work.AtOnce(
            () => inputs.Rows == RowRule.Alternate && request.Rules.WarpAngleDeg is not null
                ? null
                : work.Scan(inputs, request).At(request.RollWidthMm), gone);
        LineStream.Begin(context.Response);
        if (best is not null)
        {
            await LineStream.Send(context.Response, Answer("first", best), gone);
        }

        foreach (int effort in inputs.Effort > 1 ? (int[])[1, inputs.Effort] : [1])
        {
            RollLayout found = await work.Searched(() => PageFiles.Layout(panel, request with { Effort = effort }).Lay(gone), gone);
            best = best is null || found.PanelsPerMetre >= best.PanelsPerMetre ? found : best;
            await LineStream.Send(context.Response, Answer(effort == inputs.Effort ? "done" : "better", best), gone);
        }

        LayAnswer Answer(string stage, RollLayout layout) => LayAnswer.Of(stage, layout, inputs.Money, panel.Part.MassPerAreaGsm);
    }

    private static async Task Widths(HttpContext context, PageWork work, PageInputs inputs)
    {
        CancellationToken gone = context.RequestAborted;
        LayoutRequest request = PageWork.Request(inputs, (await work.AtOnce(() => work.Panel(inputs), gone)).Part);
        ScanRun scan = await work.AtOnce(() => work.Scan(inputs, request), gone);
        LineStream.Begin(context.Response);

        // Whole millimetres, from the middle outwards, so that the neighbourhood of the width is there first.
        double[] widths = ChartWidths.Of(request.RollWidthMm);
        foreach (double width in widths.OrderBy(w => Math.Abs(w - request.RollWidthMm)))
        {
            double? waste = width <= request.Trims.TotalMm ? null : await work.AtOnce(() => scan.WasteAt(width), gone);
            SweepAnswer point = new() { WidthMm = width, WastePercent = waste, FromMm = widths[0], ToMm = widths[^1] };
            await LineStream.Send(context.Response, point, gone);
        }
    }

    private static async Task Die(HttpContext context, PageWork work, PageInputs inputs)
    {
        CancellationToken gone = context.RequestAborted;
        PagePanel panel = await work.AtOnce(() => work.Panel(inputs), gone);
        DieAnswer die = await work.Searched(
            () => DieAnswer.Of(
                PageFiles.Die(PageFiles.Layout(panel, PageWork.Request(inputs, panel.Part)).Lay(gone), inputs.Press).Design(gone)),
            gone);
        await context.Response.WriteAsJsonAsync(die, gone);
    }

    private static async Task Offers(HttpContext context, PageWork work, PageInputs inputs)
    {
        CancellationToken gone = context.RequestAborted;
        byte[] text = await PageFiles.Upload(context.Request, gone);
        PagePanel panel = await work.AtOnce(() => work.Panel(inputs), gone);
        OffersAnswer answer = await work.Searched(() => OffersAnswer.Of(PageFiles.Offers(text, panel, inputs, gone)), gone);
        await context.Response.WriteAsJsonAsync(answer, gone);
    }

    private static async Task File(HttpContext context, PageWork work, PageInputs inputs, string name)
    {
        CancellationToken gone = context.RequestAborted;
        PagePanel panel = await work.AtOnce(() => work.Panel(inputs), gone);
        (byte[] content, string kind) = await work.Searched(
            () =>
            {
                ResultFile file = PageFiles.Make(name, panel, inputs, gone);
                return (file.Content, file.Kind);
            },
            gone);
        context.Response.Headers.ContentDisposition = $"attachment; filename=\"{name}\"";
        await Give(context, content, kind);
    }

    private static async Task Give(HttpContext context, byte[] content, string kind)
    {
        context.Response.ContentType = kind;
        context.Response.ContentLength = content.Length;
        await context.Response.Body.WriteAsync(content, context.RequestAborted);
    }

    private static byte[] Asset(string name)
    {
        using Stream from = Assembly.GetExecutingAssembly().GetManifestResourceStream("assets/" + name)!;
        using MemoryStream to = new();
        from.CopyTo(to);
        return to.ToArray();
    }
}
