namespace FeltNest.Die.Order;

/// <summary>How the board is cut on a laser.</summary>
public sealed record BoardLaser
{
    /// <summary>Width of what the beam burns away in this board's material, mm; measured on the shop's own laser.</summary>
    public required double KerfMm { get; init; }

    /// <summary>Width of a slot when cut, mm; null for the thickness of the rule.</summary>
    public double? SlotMm { get; init; }

    /// <summary>Bed of the laser, its longer side, mm; null where any board goes on it.</summary>
    public double? BedLengthMm { get; init; }

    /// <summary>Its shorter side, mm.</summary>
    public double? BedWidthMm { get; init; }

    /// <summary>Diameter of the holes for register pins, mm; 0 for none.</summary>
    public required double PinMm { get; init; }

    /// <summary>Diameter of the holes for screws, mm; 0 for none.</summary>
    public required double ScrewMm { get; init; }

    /// <summary>Diameter of air holes, mm.</summary>
    public required double AirHoleMm { get; init; }

    /// <summary>Air holes in each cavity.</summary>
    public required int AirHoles { get; init; }

    /// <summary>Diameter of the dowels across a split, mm.</summary>
    public required double DowelMm { get; init; }

    /// <summary>Height of engraved letters, mm.</summary>
    public required double LettersMm { get; init; }

    /// <summary>Sheet that the ejection is cut from, along and across, mm; null where none is stated.</summary>
    public (double LengthMm, double WidthMm)? EjectionSheet { get; init; }
}
