namespace FeltNest.Page.Inputs;

/// <summary>What is wrong with a field.</summary>
/// <param name="Field">Its name.</param>
/// <param name="Problem">What is wrong, and what is allowed.</param>
internal sealed record FieldFault(string Field, string Problem);
