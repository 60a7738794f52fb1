using FeltNest.Numerics;

namespace FeltNest.Panel.Elastic;

/// <summary>An equilibrium in the polynomials of one degree.</summary>
/// <param name="Result">What Newton's method found.</param>
/// <param name="Held">Nodes of the edge held at the limit.</param>
/// <param name="Torque">Torque that holds the chord along u, counter-clockwise, at unit radius and the law's stiffness.</param>
internal sealed record ElasticState(NewtonResult Result, IReadOnlyList<int> Held, double Torque);
