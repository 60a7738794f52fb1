using FeltNest.Geometry;

namespace FeltNest.Die.Make;

/// <summary>Where the rule of one cavity closes on itself and where the board bridges its slot.</summary>
/// <param name="Joint">Place of the rule joint in the part's frame, at a corner where there is one, else on the flattest run.</param>
/// <param name="JointRadiusMm">Radius of the edge there; infinite on a straight run, 0 at a corner.</param>
/// <param name="Bridges">Middles of the bridges with the direction of the edge, in the part's frame.</param>
public sealed record RulePlaces(Point2 Joint, double JointRadiusMm, IReadOnlyList<(Point2 Place, Point2 Direction)> Bridges);
