namespace FeltNest.Layout.Quality;

/// <summary>What one way of searching reached.</summary>
/// <param name="Method">Rows, bands, free search: in words.</param>
/// <param name="PanelsPerMetre">Its best layout, panels per metre of roll.</param>
/// <param name="Bands">Bands with a repeat of their own.</param>
public sealed record MethodReach(string Method, double PanelsPerMetre, int Bands);
