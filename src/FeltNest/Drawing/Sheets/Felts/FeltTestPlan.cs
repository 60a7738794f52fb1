namespace FeltNest.Drawing.Sheets.Felts;

/// <summary>What is cut for the tests of a lot: sizes that hang on core and felt.</summary>
/// <param name="coreDiameterMm">Diameter of the core, mm.</param>
/// <param name="thicknessMm">Thickness of the felt, mm.</param>
internal sealed class FeltTestPlan(double coreDiameterMm, double thicknessMm)
{
    /// <summary>Width of a wrapped strip, mm.</summary>
    public const double WrapWidthMm = 10;

    /// <summary>Side of the square for the cure, and the distance of its marks, mm (ISO 3759).</summary>
    public const double SquareMm = 500;

    /// <summary>Least distance of two marks on it, mm.</summary>
    public const double MarksMm = 350;

    // Strains of the discs' edges that are tried, per cent: below, at and above what panels ask of their edge.
    private static readonly double[] Tried = [2, 4, 6, 8, 10, 12];

    // Left over at the end of a wrapped strip, to be cut back until it just closes, mm.
    private const double Spare = 20;

    /// <summary>Diameter of the core, mm.</summary>
    public double CoreDiameterMm => coreDiameterMm;

    /// <summary>Thickness of the felt, mm.</summary>
    public double ThicknessMm => thicknessMm;

    /// <summary>Length to which a wrapped strip is cut at first, mm: round its outer face, and some over.</summary>
    public double WrapLengthMm => Math.Ceiling((Math.PI * (coreDiameterMm + (2 * thicknessMm))) + Spare);

    /// <summary>Diameters of the discs, whole mm, with the compression of their edge, per cent, where the neutral layer is in the
    /// middle.</summary>
    public IReadOnlyList<(double DiameterMm, double EdgePercent)> Discs
    {
        get
        {
            double radius = (coreDiameterMm + thicknessMm) / 2;
            return
            [
                .. Tried.Select(percent => Math.Round(2 * radius * Math.Sqrt(8 * percent / 100)))
                    .Select(diameter => (diameter, 100 * diameter * diameter / (32 * radius * radius))),
            ];
        }
    }
}
