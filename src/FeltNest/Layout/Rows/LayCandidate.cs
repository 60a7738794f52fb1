namespace FeltNest.Layout.Rows;

/// <summary>A lay that a method found, before its check.</summary>
/// <param name="Method">What found it, in words.</param>
/// <param name="Bands">Its bands, lowest first.</param>
internal sealed record LayCandidate(string Method, IReadOnlyList<LayoutBand> Bands)
{
    /// <summary>Panels per mm of roll.</summary>
    internal double Density => Bands.Sum(b => b.Repeat.Panels.Count / b.Repeat.LengthMm);

    /// <summary>Area of panels per mm of roll, mm2.</summary>
    internal double AreaShare(IReadOnlyList<LayoutPart> parts) =>
        Bands.Sum(b => b.Repeat.Panels.Sum(p => parts[p.Part].AreaMm2) / b.Repeat.LengthMm);
}
