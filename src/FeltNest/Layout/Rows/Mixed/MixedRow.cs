using FeltNest.Geometry;

namespace FeltNest.Layout.Rows.Mixed;

/// <summary>One row of a lay whose rows move on their own.</summary>
/// <param name="Tilt">Which tilt parameter turns it.</param>
/// <param name="Factor">Factor of that parameter: -1 for a mirrored tilt.</param>
/// <param name="Turn">Fixed turn added, radians.</param>
/// <param name="At">Where its first panel starts, mm.</param>
/// <param name="Copies">Panels of the row in a repeat, evenly spaced.</param>
internal sealed record MixedRow(int Tilt, double Factor, double Turn, Point2 At, int Copies);
