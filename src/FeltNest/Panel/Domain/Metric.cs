namespace FeltNest.Panel.Domain;

/// <summary>A symmetric 2 x 2 tensor: squared lengths and their product.</summary>
internal readonly record struct Metric(double XX, double XY, double YY);
