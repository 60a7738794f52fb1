namespace FeltNest.Panel.Wrap;

/// <summary>A flat piece laid on a sphere, with its edge free and with its edge drawn to the seam.</summary>
/// <param name="EdgeFree">Edge free.</param>
/// <param name="EdgeHeld">Edge on the seam; null where the piece cannot be drawn to it.</param>
/// <param name="WhyNotHeld">Why not, in one line; null where it can.</param>
internal sealed record WrapResult(EdgeFreeWrap EdgeFree, EdgeHeldWrap? EdgeHeld, string? WhyNotHeld);
