namespace FeltNest.Panel.Domain;

/// <summary>Angles along and across the panel at a place of the disc, radians, with their derivatives.</summary>
internal readonly record struct ChartJet(double Along, double AlongDx, double AlongDy, double Across, double AcrossDx, double AcrossDy);
