using FeltNest.Ball;

namespace FeltNest.Files.Balls;

/// <summary>A ball file as read.</summary>
/// <param name="Ball">The specification.</param>
/// <param name="Assumed">Fields the file itself lists as assumed, in its order.</param>
internal sealed record BallInput(BallSpec Ball, IReadOnlyList<string> Assumed);
