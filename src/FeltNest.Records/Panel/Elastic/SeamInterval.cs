namespace FeltNest.Panel.Elastic;

/// <summary>A piece of the seam by its parameter.</summary>
public readonly record struct SeamInterval
{
    /// <summary>Where it begins, radians, 0 to below 2 pi.</summary>
    public required double FromS { get; init; }

    /// <summary>Where it ends, radians, above <see cref="FromS"/>; may pass 2 pi where it runs over the start.</summary>
    public required double ToS { get; init; }
}
