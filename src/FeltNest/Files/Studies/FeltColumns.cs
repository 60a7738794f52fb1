using FeltNest.Files.Fields;

namespace FeltNest.Files.Studies;

/// <summary>Columns of the felt for a thousand balls, as several CSV results have them.</summary>
internal static class FeltColumns
{
    public static readonly NumberField Metres = new("metresPerThousandBalls", "running metres of felt") { Unit = "m" };
    public static readonly NumberField SquareMetres = new("squareMetresPerThousandBalls", "of full roll width") { Unit = "m2" };
    public static readonly NumberField Kilograms = new("kilogramsPerThousandBalls", "blank where the mass per area is not known")
    {
        Unit = "kg",
        OrNull = true,
    };
}
