namespace FeltNest.Panel.Budget;

/// <summary>A tolerance of the ball that moves the gap round the seam.</summary>
/// <param name="Field">Field of the ball file.</param>
/// <param name="Words">What is off, in words.</param>
/// <param name="Unit">Unit of the tolerance; empty for a share.</param>
/// <param name="PlusMinus">The tolerance.</param>
internal sealed record GapSource(string Field, string Words, string Unit, double PlusMinus);
