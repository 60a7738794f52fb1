using FeltNest.Rolls.Orders.Model.Mixed;

namespace FeltNest.Rolls.Orders.Model;

/// <summary>The work of a die in the model.</summary>
internal sealed class DieRun(
    CutDie die, IReadOnlyList<(CoverOrder Order, LinearSum Strikes, double Most)> cuts, IReadOnlyList<PressSpec> presses)
{
    /// <summary>The die.</summary>
    public CutDie Die { get; } = die;

    /// <summary>Orders it may cut in the order of their days, with their strikes.</summary>
    public IReadOnlyList<(CoverOrder Order, LinearSum Strikes, double Most)> Cuts { get; } = [.. cuts.OrderBy(c => c.Order.Due)];

    /// <summary>Presses that take it.</summary>
    public IReadOnlyList<PressSpec> Presses { get; } = presses;

    /// <summary>Whether it is made, for a die not there yet.</summary>
    public Unknown? Make { get; set; }

    /// <summary>How often it is ruled again.</summary>
    public Unknown? ReRules { get; set; }

    /// <summary>Whether it stands on each press.</summary>
    public Unknown[] On { get; set; } = [];

    /// <summary>Hours it takes on each press, a mounting included.</summary>
    public LinearSum[] OnPress { get; set; } = [];
}
