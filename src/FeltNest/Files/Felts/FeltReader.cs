using FeltNest.Ball.Passport;
using FeltNest.Files.Json;
using static FeltNest.Files.Felts.FeltDocument;

namespace FeltNest.Files.Felts;

/// <summary>Reads a measured felt (schema feltnest/felt/1): name, lot and the figures that a ball takes.</summary>
internal static class FeltReader
{
    /// <summary>The felt of a file.</summary>
    /// <exception cref="InputException">Names the file, the field, the value found and what is allowed.</exception>
    public static FeltFile Read(string path) => Read(InputText.OfFile(path));

    /// <summary>The felt of a text.</summary>
    /// <exception cref="InputException">Names the text, the field, the value found and what is allowed.</exception>
    public static FeltFile Read(InputText text)
    {
        JsonFields top = JsonFields.Top(text, FeltDocument.Document);
        JsonFields lot = top.Object(FeltDocument.Lot);
        FeltFile felt = new()
        {
            Name = top.Text(FeltDocument.Name),
            Lot = LotFields.Read(lot),
            Values = Figures(top.Object(FeltDocument.Values)),
        };
        if (!(felt.Lot.FromPercent < felt.Lot.ToPercent))
        {
            throw lot.Fault(LotFields.ToPercent, FormattableString.Invariant($"{felt.Lot.ToPercent} is not above {felt.Lot.FromPercent}"));
        }

        return felt.Values.Count > 0 ? felt : throw top.Fault(FeltDocument.Values, "holds no figure");
    }

    private static Dictionary<FeltQuantity, (double Value, double? Interval)> Figures(JsonFields values)
    {
        Dictionary<FeltQuantity, (double Value, double? Interval)> figures = [];
        foreach (FeltQuantity quantity in Enum.GetValues<FeltQuantity>())
        {
            if (values.OptionalObject(ValuesFields.Of(quantity)) is { } figure)
            {
                figures.Add(
                    quantity, (figure.Number(ValuesFields.ValueOf(quantity)), figure.OptionalNumber(FigureFields.Interval)));
            }
        }

        return figures;
    }
}
