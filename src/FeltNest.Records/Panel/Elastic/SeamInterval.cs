namespace FeltNest.Panel.Elastic;

/// <summary>A piece of the seam by its parameter.</summary>
/// <param name="FromS">Where it begins, radians, 0 to below 2 pi.</param>
/// <param name="ToS">Where it ends, radians, above <paramref name="FromS"/>; may pass 2 pi where it runs over the start.</param>
public readonly record struct SeamInterval(double FromS, double ToS);
