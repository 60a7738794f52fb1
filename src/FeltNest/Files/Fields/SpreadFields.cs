namespace FeltNest.Files.Fields;

/// <summary>Three numbers in place of one. Their range is that of the number they stand for.</summary>
internal static class SpreadFields
{
    internal static readonly FieldSet Set = new();

    public static readonly NumberField Low = Set.Add(new NumberField("low", "least value"));
    public static readonly NumberField Likely = Set.Add(new NumberField("likely", "the value that counts"));
    public static readonly WordField Shape = Set.Add(
        new WordField(
            "shape", ["triangular", "uniform", "normal"],
            "how likely the values between are; normal: low and high lie two standard deviations off the likely one")
        {
            Optional = true,
            Default = "triangular",
        });
    public static readonly NumberField High = Set.Add(new NumberField("high", "greatest value"));
}
