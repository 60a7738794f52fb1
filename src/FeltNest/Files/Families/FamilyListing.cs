using FeltNest.Files.Fields;

namespace FeltNest.Files.Families;

/// <summary>Columns of a list of the balls of a family.</summary>
internal static class FamilyListing
{
    // Balls of a year: as annualBalls of the costs file.
    private const double MostBalls = 1e11;
    private const double MostGapMm = 1000;

    private static readonly FieldSet Columns = new();

    /// <summary>The list.</summary>
    public static readonly Listing Listing = new("family-balls", Columns);

    public static readonly TextField Name = Columns.Add(new TextField("name", "name of the ball, once in the list"));
    public static readonly FileField Ball = Columns.Add(
        new FileField("ball", "its ball specification, or its panel as an outline; path from the list"));
    public static readonly NumberField BallsPerYear = Columns.Add(
        new NumberField("ballsPerYear", 1, MostBalls, "good balls made in a year") { Unit = "balls" });
    public static readonly NumberField GapMm = Columns.Add(
        new NumberField("gapMm", 0, MostGapMm, "least distance between any two cut edges") { Otherwise = "the gap of the run" });
    public static readonly NumberField EdgeMm = Columns.Add(
        new NumberField(ShopRanges.EdgeTrim, "edge trim each side; an offer's own goes before it")
        {
            Otherwise = "the edge trim of the run",
        });
}
