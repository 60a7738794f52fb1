namespace FeltNest.Ball.Passport;

/// <summary>A disc pressed on a cemented core.</summary>
internal sealed record DiscReading
{
    /// <summary>Name of the disc.</summary>
    public required string Specimen { get; init; }

    /// <summary>Diameter of the flat disc, mm.</summary>
    public required double DiscDiameterMm { get; init; }

    /// <summary>Diameter of the core, cement included, mm.</summary>
    public required double CoreDiameterMm { get; init; }

    /// <summary>Thickness of the disc, mm.</summary>
    public required double ThicknessMm { get; init; }

    /// <summary>Whether its edge puckered.</summary>
    public required bool Puckered { get; init; }

    /// <summary>Radius of the neutral layer on the core, mm.</summary>
    /// <param name="neutralLayer">Where that layer lies, 0 to 1.</param>
    public double RadiusMm(double neutralLayer) => (CoreDiameterMm / 2) + (neutralLayer * ThicknessMm);

    /// <summary>Compression along the edge, per cent of flat length: a2/8R2 of a disc of radius a, for small a/R.</summary>
    /// <param name="neutralLayer">Where the neutral layer lies, 0 to 1.</param>
    public double EdgePercent(double neutralLayer)
    {
        double share = DiscDiameterMm / 2 / RadiusMm(neutralLayer);
        return 100 * share * share / 8;
    }
}
