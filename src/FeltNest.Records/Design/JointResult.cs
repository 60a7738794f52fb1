using FeltNest.Ball;
using FeltNest.Layout;
using FeltNest.Panel;

namespace FeltNest.Design;

/// <summary>A panel designed for the tilt it is laid at.</summary>
/// <param name="Ball">The ball with the design angle found.</param>
/// <param name="Panel">Its panel.</param>
/// <param name="Layout">Its layout, at exactly that angle.</param>
/// <param name="Choices">What each way of going about it gives, in the order tried.</param>
internal sealed record JointResult(BallSpec Ball, FlatPanel Panel, RollLayout Layout, IReadOnlyList<DesignChoice> Choices);
