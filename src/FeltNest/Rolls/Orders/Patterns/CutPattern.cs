namespace FeltNest.Rolls.Orders.Patterns;

/// <summary>A way to cut one roll for orders.</summary>
/// <param name="Kind">The kind of roll.</param>
/// <param name="Pieces">Order and die by their places in the question, and strikes.</param>
/// <param name="Cost">Felt of the roll less what goes back to stock, and the work of its strikes.</param>
internal sealed record CutPattern(FeltKind Kind, IReadOnlyList<(int Order, int Die, int Strikes)> Pieces, double Cost)
{
    /// <summary>Words that tell it from every other.</summary>
    public string Key => $"{Kind.Index}: {string.Join(' ', Pieces.Select(p => $"{p.Order}/{p.Die}/{p.Strikes}"))}";
}
