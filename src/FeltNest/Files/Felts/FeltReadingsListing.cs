using FeltNest.Ball.Passport;
using FeltNest.Files.Fields;

namespace FeltNest.Files.Felts;

/// <summary>Columns of the readings of a lot of felt. Which of them a line fills hangs on its test.</summary>
internal static class FeltReadingsListing
{
    /// <summary>Word for a disc that puckered.</summary>
    public const string Yes = "yes";

    /// <summary>Word for one that lay flat.</summary>
    public const string No = "no";

    private static readonly FieldSet Columns = new();

    /// <summary>The list.</summary>
    public static readonly Listing Listing = new("felt-readings", Columns);

    public static readonly TextField Felt = Columns.Add(
        new TextField("felt", "name of the felt, the same on all lines") { MostLetters = 60 });
    public static readonly TextField Lot = Columns.Add(new TextField("lot", "the same on all lines: one file a lot") { MostLetters = 40 });
    public static readonly DayField Date = Columns.Add(new DayField("date", "of the reading"));
    public static readonly EnumField<FeltTest> Test = Columns.Add(new EnumField<FeltTest>("test", "what the line is of"));
    public static readonly TextField Specimen = Columns.Add(
        new TextField("specimen", "name of strip, disc or square; lines of one specimen share it") { MostLetters = 40 });
    public static readonly EnumField<FeltDirection> Direction = Columns.Add(
        new EnumField<FeltDirection>("direction", "`strip`, `square`: way of the pull, or of the two marks; a square has no bias")
        {
            Optional = true,
        });
    public static readonly NumberField LengthMm = Columns.Add(
        new NumberField(
            "lengthMm", 5, 2000,
            "`strip`: between the jaws under the pretension; `wrap`: length that just closes; `square`: between two marks before the cure; "
                + "`mass`: length of the piece")
        {
            Optional = true,
        });
    public static readonly NumberField WidthMm = Columns.Add(
        new NumberField("widthMm", 1, 2000, "`strip`, `wrap`, `mass`: width") { Optional = true });
    public static readonly NumberField ForceN = Columns.Add(
        new NumberField("forceN", -5000, 5000, "`strip`: force, below 0 a thrust") { Optional = true });
    public static readonly NumberField ExtensionMm = Columns.Add(
        new NumberField("extensionMm", -200, 1000, "`strip`: from the pretension on, below 0 compressed") { Optional = true });
    public static readonly NumberField NarrowingMm = Columns.Add(
        new NumberField(
            "narrowingMm", -50, 50, "`strip` along the warp, where it was read: how much narrower the strip is in its middle")
        {
            Optional = true,
        });
    public static readonly EnumField<CoreShape> Core = Columns.Add(
        new EnumField<CoreShape>("core", "`wrap`: what the strip goes round") { Optional = true });
    public static readonly NumberField CoreDiameterMm = Columns.Add(
        new NumberField("coreDiameterMm", 20, 200, "`wrap`, `disc`: diameter with its cement") { Optional = true });
    public static readonly NumberField DiscDiameterMm = Columns.Add(
        new NumberField("discDiameterMm", 5, 150, "`disc`: of the flat disc") { Optional = true });
    public static readonly NumberField ThicknessMm = Columns.Add(
        new NumberField("thicknessMm", 0.3, 12, "`wrap`, `disc`, `thickness`: of this specimen") { Optional = true });
    public static readonly WordField Puckered = Columns.Add(
        new WordField("puckered", [Yes, No], "`disc`: whether its edge puckered") { Optional = true });
    public static readonly NumberField AfterMm = Columns.Add(
        new NumberField("afterMm", 5, 2000, "`square`: between the same marks after the cure") { Optional = true });
    public static readonly NumberField MassG = Columns.Add(
        new NumberField("massG", 0.01, 10_000, "`mass`: of the piece") { Optional = true });

    /// <summary>The columns that a line of a test fills; all others stay blank. The narrowing of a strip may stay blank.</summary>
    public static IReadOnlyList<Field> Of(FeltTest test) => test switch
    {
        FeltTest.Strip => [Direction, LengthMm, WidthMm, ForceN, ExtensionMm, NarrowingMm],
        FeltTest.Wrap => [LengthMm, WidthMm, Core, CoreDiameterMm, ThicknessMm],
        FeltTest.Disc => [CoreDiameterMm, DiscDiameterMm, ThicknessMm, Puckered],
        FeltTest.Square => [Direction, LengthMm, AfterMm],
        FeltTest.Thickness => [ThicknessMm],
        _ => [LengthMm, WidthMm, MassG],
    };

    /// <summary>Columns that only some tests fill.</summary>
    public static IEnumerable<Field> Own => Columns.All.Where(column => column.Optional);
}
