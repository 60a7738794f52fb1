using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;
using System.CommandLine.Parsing;

namespace FeltNest.Cli;

/// <summary>The usual help, followed by examples of the command asked about.</summary>
internal sealed class HelpWithExamples(HelpAction inner) : SynchronousCommandLineAction
{
    private static readonly Dictionary<string, string[]> Examples = new()
    {
        ["panel"] =
        [
            "feltnest panel shapes/balls/type-2.json", "feltnest panel shapes/balls/type-3.json --out output/trial --force",
            "feltnest panel shapes/balls/type-2.json --waist-range 22:34:1 --width 1500",
            "feltnest panel shapes/balls/type-2.json --proven shapes/outlines/traced-panel.dxf",
        ],
        ["layout"] =
        [
            "feltnest layout shapes/balls/type-2.json --width 1500",
            "feltnest layout shapes/balls/type-2.json --width 54in --gap 4 --edge 15mm",
            "feltnest layout shapes/outlines/dog-bone.json --width 137cm --rows alternate --effort 20",
        ],
        ["compare"] =
        [
            "feltnest compare shapes/balls/type-2.json --offers shapes/demo/offers.csv --costs shapes/demo/costs.json",
            "feltnest compare shapes/balls/type-2.json --width-range 1300:1600:5 --costs shapes/demo/costs.json",
            "feltnest compare shapes/outlines/dog-bone.json --widths 1370,54in,1.5m --keep-die output/today/layout.json",
        ],
        ["felt"] = ["feltnest felt shapes/demo/felt-readings.csv", "feltnest felt --sheet"],
        ["family"] =
        [
            "feltnest family shapes/demo/family.csv --width-range 1300:1600:10 --costs shapes/demo/costs.json",
            "feltnest family designs.csv --offers shapes/demo/offers.csv --costs shapes/demo/costs.json --most-widths 2",
        ],
        ["trace"] = ["feltnest trace panels.png --dpi 200", "feltnest trace --sheet", "feltnest trace photo.jpg"],
        ["usage"] = ["feltnest usage output/type-2-w1500-g4/layout.json --actuals shapes/demo/actuals.csv --costs shapes/demo/costs.json"],
        ["roll"] =
        [
            "feltnest roll output/type-2-w1500-g4/layout.json --roll shapes/demo/rolls/roll-a17.json --repeats-per-strike 3 --side-shift 5",
        ],
        ["die"] =
        [
            "feltnest die output/type-2-w1500-g4/layout.json --order shapes/demo/dies/gang-die.json --press "
                + "shapes/demo/presses/beam-press.json",
            "feltnest die output/die/die.json --measured points.csv",
            "feltnest die output/die/die.json --readings readings.csv --newer output/die-b/die.json",
        ],
        ["page"] = ["feltnest page", "feltnest page shapes/balls/type-2-woven.json --port 8123"],
        ["completion"] = ["source <(feltnest completion bash)"],
        ["orders"] =
        [
            "feltnest orders shapes/demo/orders.csv --stock shapes/demo/stock.csv --dies shapes/demo/dies.csv --press "
                + "shapes/demo/presses/beam-press.json --start 2026-03-02",
        ],
        ["book"] =
        [
            "feltnest book start --book room.db", "feltnest book receive shapes/demo/stock.csv --book room.db",
            "feltnest book ticket 12 --strikes 118 --good 1840 --operator anna --book room.db",
            "feltnest book correct 41 --set strikes=119 --why miscounted --book room.db", "feltnest book show orders --open --book room.db",
        ],
        ["check"] = ["feltnest check output/type-2-w1500-g4/layout.json"],
    };

    /// <inheritdoc/>
    public override int Invoke(ParseResult parseResult)
    {
        int code = inner.Invoke(parseResult);
        CommandResult asked = parseResult.CommandResult;
        string name = (asked.Parent is CommandResult { Command: not RootCommand } above ? above : asked).Command.Name;
        string[] lines = Examples.TryGetValue(name, out string[]? own) ? own : [.. Examples.Values.Select(all => all[0])];
        TextWriter output = parseResult.InvocationConfiguration.Output;
        output.WriteLine("Examples:");
        foreach (string line in lines)
        {
            output.WriteLine($"  {line}");
        }

        return code;
    }
}
