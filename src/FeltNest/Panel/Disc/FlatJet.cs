using FeltNest.Geometry;

namespace FeltNest.Panel.Disc;

/// <summary>A place in the flat with the derivatives of both coordinates by the disc's.</summary>
internal readonly record struct FlatJet(Point2 Place, double Ux, double Uy, double Vx, double Vy);
