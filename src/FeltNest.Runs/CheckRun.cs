using System.Text;
using FeltNest.Die.Check;
using FeltNest.Files;
using FeltNest.Files.Check;
using FeltNest.Files.Layouts;
using FeltNest.Layout.Check;
using FeltNest.Report;
using FeltNest.Rolls.Check;
using FeltNest.Rolls.Orders.Check;
using FeltNest.Yield;

namespace FeltNest.Runs;

/// <summary>Verifies a result from its file alone. It writes no file.</summary>
internal sealed class CheckRun
{
    private readonly string path;
    private readonly CheckedInput read;

    /// <summary>Reads a result.</summary>
    /// <param name="path">Its file.</param>
    /// <exception cref="InputException">No result of this program, or one that cannot be read.</exception>
    public CheckRun(string path)
    {
        this.path = path;
        read = CheckedReader.Read(path);
        Verdict = Judged(read) with { NotChecked = read.File.NotSeen };
    }

    /// <summary>What was found.</summary>
    public LayoutVerdict Verdict { get; }

    /// <summary>The verdict as JSON.</summary>
    public string Json => Encoding.UTF8.GetString(CheckWriter.Write(Verdict));

    /// <summary>The verdict to read.</summary>
    public string Table => CheckReport.Text(path, read.Layout?.Layout.GapMm, Verdict);

    private static LayoutVerdict Judged(CheckedInput read)
    {
        if (read.Layout is { } layout)
        {
            return Geometry(layout, read);
        }

        if (read.Orders is { } orders)
        {
            return new LayoutVerdict(null, 0, OrderPlanCheck.Violations(orders));
        }

        FigureCheck.Run(read.File);
        return new LayoutVerdict(null, 0, read.File.Violations);
    }

    private static LayoutVerdict Geometry(LayoutInput input, CheckedInput read)
    {
        LayoutVerdict geometry;
        if (read.Plan is { } plan)
        {
            geometry = RollPlanCheck.Verify(input.Layout, plan.Roll, plan.Plan);
        }
        else if (read.Die is { } die)
        {
            geometry = DieCheck.Verify(input.Layout, die.Die);
        }
        else
        {
            geometry = LayoutCheck.Verify(input.Layout);
        }

        return geometry with { Violations = [.. geometry.Violations, .. StatedYield.Contradictions(input, YieldAccount.Of(input.Layout))] };
    }
}
