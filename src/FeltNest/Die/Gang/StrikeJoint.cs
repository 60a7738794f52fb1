using FeltNest.Geometry;

namespace FeltNest.Die.Gang;

/// <summary>What stays between the cuts of two strikes.</summary>
/// <param name="NominalMm">Least gap between two strikes exactly in place, mm; infinite where strikes stand clear of each other.</param>
/// <param name="WorstMm">Least gap when feed and guide err as far as they may and both edges lie at the rim of their tolerance, mm: 0 or less means that a strike can cut into the last one.</param>
/// <param name="FeedToleranceMm">Play of one feed to either side, mm.</param>
/// <param name="GuideToleranceMm">Play of the side guide to either side, mm.</param>
/// <param name="EdgeProfileMm">Profile tolerance of the edge, mm.</param>
/// <param name="Place">Where it is least, in the die's frame.</param>
public sealed record StrikeJoint(double NominalMm, double WorstMm, double FeedToleranceMm, double GuideToleranceMm, double EdgeProfileMm, Point2 Place);
