using System.CommandLine;
using FeltNest.Cli.Options;
using FeltNest.Cost.Usage;
using FeltNest.Files;
using FeltNest.Files.Costs;
using FeltNest.Files.Layouts;
using FeltNest.Files.Usage;
using FeltNest.Report.Usage;

namespace FeltNest.Cli.Commands;

/// <summary><c>usage LAYOUT --actuals FILE</c>: why a shift used more or less felt than standard.</summary>
internal static class UsageCommand
{
    private static readonly string[] Names = ["usage.json", "usage.csv"];

    /// <summary>The command.</summary>
    public static Command Create(Terminal terminal)
    {
        Argument<string> layout = new("LAYOUT") { Description = "The layout.json that was cut.", HelpName = "LAYOUT" };
        Option<string> actuals = new("--actuals")
        {
            Description = "What the rolls gave (CSV): the filled-in cutting tickets.",
            HelpName = "FILE",
            Required = true,
        };
        Option<string?> costs = new("--costs") { Description = "Normal losses and the standard price (JSON).", HelpName = "FILE" };
        Command command = new("usage", "Why a shift used more or less felt than standard, cause by cause.") { layout, actuals, costs };
        CommonOptions common = new(command);
        command.SetAction((parse, stop) =>
            Task.Run(() => Run(terminal, parse, parse.GetValue(layout)!, parse.GetValue(actuals)!, parse.GetValue(costs), common), stop));
        return command;
    }

    private static int Run(Terminal terminal, ParseResult parse, string layout, string actuals, string? costs, CommonOptions common)
    {
        Answer answer = new(terminal, parse, common);
        UsageQuestion question = new(
            LayoutReader.Read(layout).Layout, ActualsReader.Read(actuals), costs is null ? null : CostsReader.Read(costs));
        ResultFolder results = new(
            parse.GetValue(common.Out) ?? DefaultFolder.OfUsage(layout, actuals, costs), parse.GetValue(common.Force));
        results.Prepare(answer.Named(Names));
        UsageVariance variance = Split(question, layout, actuals);
        return answer.Give(
            results, [(Names[0], UsageWriter.Json(variance)), (Names[1], UsageWriter.Csv(variance))], UsageReport.Text(variance),
            UsageReport.Notes(variance).Select(note => $"note: {note}"));
    }

    private static UsageVariance Split(UsageQuestion question, string layout, string actuals)
    {
        try
        {
            return UsageStudy.Run(question);
        }
        catch (InputException error) when (error.File is null)
        {
            throw error.InFile(error.Field == "panels" ? layout : actuals);
        }
    }
}
