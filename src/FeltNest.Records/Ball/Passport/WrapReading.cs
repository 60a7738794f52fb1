namespace FeltNest.Ball.Passport;

/// <summary>A slack strip that just closes round a core.</summary>
internal sealed record WrapReading
{
    /// <summary>Name of the strip.</summary>
    public required string Specimen { get; init; }

    /// <summary>Length at which its ends just meet, mm, measured flat.</summary>
    public required double LengthMm { get; init; }

    /// <summary>Width of the strip, mm.</summary>
    public required double WidthMm { get; init; }

    /// <summary>What it goes round.</summary>
    public required CoreShape Shape { get; init; }

    /// <summary>Diameter of that, cement included, mm.</summary>
    public required double CoreDiameterMm { get; init; }

    /// <summary>Thickness of the strip, mm.</summary>
    public required double ThicknessMm { get; init; }

    /// <summary>Layer that keeps its length, 0 on the core to 1 outside: n = (L/2 pi - R)/t, where a strip of width w on a ball closes at
    /// 1 - w2/24R2 of that length.</summary>
    public double NeutralLayer
    {
        get
        {
            double radius = CoreDiameterMm / 2;
            double shortened = Shape == CoreShape.Ball ? 1 - (WidthMm * WidthMm / (24 * radius * radius)) : 1;
            return ((LengthMm / (2 * Math.PI * shortened)) - radius) / ThicknessMm;
        }
    }
}
