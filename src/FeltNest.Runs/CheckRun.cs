using System.Text;
using FeltNest.Die.Check;
using FeltNest.Files;
using FeltNest.Files.Check;
using FeltNest.Files.Dies;
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
    private readonly StatedBoardCut? board;

    /// <summary>Reads a result.</summary>
    /// <param name="path">Its file.</param>
    /// <param name="boardFile">Board for the laser of a die, to be read back; null for none.</param>
    /// <exception cref="InputException">No result of this program, or one that cannot be read.</exception>
    public CheckRun(string path, string? boardFile = null)
    {
        this.path = path;
        read = CheckedReader.Read(path);
        board = boardFile is null ? null : BoardCutReader.Read(boardFile);
        if (board is not null && read is not CheckedInput.OfDie)
        {
            throw new InputException(path, null, "is no die: a board is read back against the die.json that it is of");
        }

        Verdict = Judged() with { NotChecked = read.File.NotSeen };
    }

    /// <summary>What was found.</summary>
    public CheckVerdict Verdict { get; }

    /// <summary>The verdict as JSON.</summary>
    public string Json => Encoding.UTF8.GetString(CheckWriter.Write(Verdict));

    /// <summary>The verdict to read.</summary>
    public string Table => CheckReport.Text(path, Layout?.Layout.GapMm, Verdict);

    private LayoutInput? Layout => read switch
    {
        CheckedInput.OfLayout lay => lay.Layout,
        CheckedInput.OfRollPlan roll => roll.Plan.Layout,
        CheckedInput.OfDie die => die.Die.Layout,
        _ => null,
    };

    private CheckVerdict Judged() => read switch
    {
        CheckedInput.OfLayout lay => WithYield(LayoutCheck.Verify(lay.Layout.Layout), lay.Layout),
        CheckedInput.OfRollPlan { Plan: var plan } =>
            WithYield(RollPlanCheck.Verify(plan.Layout.Layout, plan.Roll, plan.Plan), plan.Layout),
        CheckedInput.OfDie { Die: var die } => WithYield(DieCheck.Verify(die.Layout.Layout, die.Die, board), die.Layout),
        CheckedInput.OfOrders orders => Orders(orders),
        _ => Figures(read.File),
    };

    private static CheckVerdict Orders(CheckedInput.OfOrders orders)
    {
        OrdersFigures.Check(orders.File.Top, orders.File.Given);
        return CheckVerdict.WithoutCuts([.. OrderPlanCheck.Violations(orders.Orders), .. orders.File.Violations]);
    }

    private static CheckVerdict Figures(StatedFile file)
    {
        FigureCheck.Run(file);
        return CheckVerdict.WithoutCuts(file.Violations);
    }

    private static CheckVerdict WithYield(CheckVerdict geometry, LayoutInput input) => geometry with
    {
        Violations = [.. geometry.Violations, .. StatedYield.Contradictions(input, YieldAccount.Of(input.Layout))],
    };
}
