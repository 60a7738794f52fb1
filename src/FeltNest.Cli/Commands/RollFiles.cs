using FeltNest.Drawing;
using FeltNest.Drawing.Sheets.Rolls;
using FeltNest.Drawing.Writers;
using FeltNest.Files.Rolls;
using FeltNest.Rolls.Plan;

namespace FeltNest.Cli.Commands;

/// <summary>Files that a roll plan writes.</summary>
internal static class RollFiles
{
    /// <summary>Their names.</summary>
    public static IReadOnlyList<string> Names { get; } = ["roll.json", "roll.csv", "roll.svg", "roll.png", "ticket.svg", "ticket.png"];

    /// <summary>Their contents.</summary>
    public static IReadOnlyList<(string Name, byte[] Content)> Make(RollPlan plan)
    {
        Sheet map = RollMapSheet.Draw(plan);
        Sheet ticket = TicketSheet.Draw(plan);
        return
        [
            (Names[0], RollPlanWriter.Json(plan)), (Names[1], RollPlanWriter.Csv(plan)), (Names[2], SvgWriter.Write(map)),
            (Names[3], PngWriter.Write(map)),
            (Names[4], SvgWriter.Write(ticket)), (Names[5], PngWriter.Write(ticket)),
        ];
    }
}
