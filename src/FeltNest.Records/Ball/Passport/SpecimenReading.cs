namespace FeltNest.Ball.Passport;

/// <summary>A figure read of one specimen, such as its thickness.</summary>
/// <param name="Specimen">Name of the specimen.</param>
/// <param name="Value">The figure.</param>
internal readonly record struct SpecimenReading(string Specimen, double Value);
