using FeltNest.Files.Check;
using FeltNest.Files.Dies;
using FeltNest.Files.Layouts;
using FeltNest.Files.Rolls;
using FeltNest.Rolls.Orders.Check;

namespace FeltNest.Files;

/// <summary>A file to be verified, as read: one kind for each way to check it.</summary>
internal abstract record CheckedInput
{
    private CheckedInput(StatedFile file) => File = file;

    /// <summary>The file as it states itself.</summary>
    public StatedFile File { get; }

    /// <summary>A layout.</summary>
    /// <param name="File">The file as it states itself.</param>
    /// <param name="Layout">Its layout.</param>
    internal sealed record OfLayout(StatedFile File, LayoutInput Layout) : CheckedInput(File);

    /// <summary>The strikes of a roll.</summary>
    /// <param name="File">The file as it states itself.</param>
    /// <param name="Plan">Its plan, with the layout.</param>
    internal sealed record OfRollPlan(StatedFile File, RollPlanInput Plan) : CheckedInput(File);

    /// <summary>A die.</summary>
    /// <param name="File">The file as it states itself.</param>
    /// <param name="Die">The die, with the layout.</param>
    internal sealed record OfDie(StatedFile File, DieInput Die) : CheckedInput(File);

    /// <summary>A plan of orders.</summary>
    /// <param name="File">The file as it states itself.</param>
    /// <param name="Orders">The plan.</param>
    internal sealed record OfOrders(StatedFile File, StatedOrders Orders) : CheckedInput(File);

    /// <summary>A result of figures alone.</summary>
    /// <param name="File">The file as it states itself.</param>
    internal sealed record OfFigures(StatedFile File) : CheckedInput(File);
}
