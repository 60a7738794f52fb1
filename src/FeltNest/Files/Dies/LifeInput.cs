namespace FeltNest.Files.Dies;

/// <summary>How long a die lasts, as its readings show.</summary>
/// <param name="Die">Name and revision of the die.</param>
/// <param name="LifeStrikes">Strikes at which to rule it again, whole.</param>
/// <param name="SupersededBy">The die that takes its place, or null.</param>
internal sealed record LifeInput(string Die, int LifeStrikes, string? SupersededBy);
