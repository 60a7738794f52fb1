namespace FeltNest.Page.Inputs;

/// <summary>What is wrong with a field.</summary>
internal sealed record FieldFault
{
    /// <summary>Its name.</summary>
    public required string Field { get; init; }

    /// <summary>What is wrong, and what is allowed.</summary>
    public required string Problem { get; init; }
}
