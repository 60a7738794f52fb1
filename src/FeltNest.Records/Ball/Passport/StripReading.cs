namespace FeltNest.Ball.Passport;

/// <summary>A place of the curve of force against extension of one strip.</summary>
internal sealed record StripReading
{
    /// <summary>Name of the strip.</summary>
    public required string Specimen { get; init; }

    /// <summary>Direction in which it is pulled.</summary>
    public required FeltDirection Direction { get; init; }

    /// <summary>Length between the jaws under the pretension, mm.</summary>
    public required double GaugeMm { get; init; }

    /// <summary>Width of the strip, mm.</summary>
    public required double WidthMm { get; init; }

    /// <summary>Force, N; below 0 a push.</summary>
    public required double ForceN { get; init; }

    /// <summary>Extension from the pretension on, mm; below 0 it is compressed.</summary>
    public required double ExtensionMm { get; init; }

    /// <summary>How much narrower the strip is in its middle, mm; null where it was not read.</summary>
    public double? NarrowingMm { get; init; }

    /// <summary>Strain.</summary>
    public double Strain => ExtensionMm / GaugeMm;

    /// <summary>Force for a mm of width, N/mm.</summary>
    public double NPerMm => ForceN / WidthMm;
}
