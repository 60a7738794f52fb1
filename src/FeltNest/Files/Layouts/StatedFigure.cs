namespace FeltNest.Files.Layouts;

/// <summary>A figure a layout file states about itself, to be held against the geometry it also holds.</summary>
/// <param name="Field">Path of the field.</param>
/// <param name="Value">Value stated; infinite where the file says null.</param>
internal readonly record struct StatedFigure(string Field, double Value);
