using FeltNest.Ball;
using FeltNest.Files.Fields;
using FeltNest.Files.Json;

namespace FeltNest.Files.Felts;

/// <summary>Fields of a lot, which a felt file, a ball and a panel hold alike.</summary>
internal static class LotFields
{
    internal static readonly FieldSet Set = new();

    public static readonly TextField Name = Set.Add(new TextField("name", "name or number of the lot"));
    public static readonly DayField Date = Set.Add(new DayField("date", "of the last reading"));
    public static readonly NumberField FromPercent = Set.Add(
        new NumberField("fromPercent", 0, 30, "least strain that the moduli were fitted to"));
    public static readonly NumberField ToPercent = Set.Add(
        new NumberField("toPercent", 0, 60, "greatest strain that the moduli were fitted to"));
    public static readonly FlagField CurveBends = Set.Add(
        new FlagField("curveBends", "whether a curve of force against extension bends in that range; a panel takes the straight law"));

    /// <summary>The lot that stands there.</summary>
    public static FeltLot Read(JsonFields lot) => new()
    {
        Name = lot.Text(Name),
        Date = lot.Text(Date),
        FromPercent = lot.Number(FromPercent),
        ToPercent = lot.Number(ToPercent),
        CurveBends = lot.Flag(CurveBends),
    };

    /// <summary>Writes a lot.</summary>
    public static void Write(JsonOutput json, FeltLot lot) => json
        .Text(Name, lot.Name)
        .Text(Date, lot.Date)
        .Number(FromPercent, lot.FromPercent)
        .Number(ToPercent, lot.ToPercent)
        .Flag(CurveBends, lot.CurveBends);
}
