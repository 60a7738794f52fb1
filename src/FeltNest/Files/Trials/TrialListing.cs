using FeltNest.Files.Fields;
using FeltNest.Panel.Trial;

namespace FeltNest.Files.Trials;

/// <summary>Columns of the readings of a trial wrap.</summary>
internal static class TrialListing
{
    // A gap or lap beyond this is no reading of a seam, mm.
    private const double MostGapMm = 3;

    private static readonly FieldSet Columns = new();

    /// <summary>The list.</summary>
    public static readonly Listing Listing = new("trial-readings", Columns);

    public static readonly TextField Ball = Columns.Add(new TextField("ball", "name or number of the ball") { MostLetters = 40 });
    public static readonly WholeField Place = Columns.Add(
        new WholeField(
            "place", 1, TrialPlaces.Count, "number on the record sheet; eight or more for each ball, 1, 5, 9 and 13 among them"));
    public static readonly NumberField GapMm = Columns.Add(
        new NumberField("gapMm", -MostGapMm, MostGapMm, "gap between the two edges along the surface; below 0 a lap"));
    public static readonly NumberField WaistMm = Columns.Add(
        new NumberField(
            "waistMm", 1, 200,
            "width over the felt's outer face from the middle of the seam to the middle of the seam, across the waist of panel A at "
                + "place 1 or 9, "
                + "of panel B at 5 or 13")
        {
            Optional = true,
        });
}
