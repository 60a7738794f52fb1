using FeltNest.Files.Json;
using static FeltNest.Files.Dies.DieLifeDocument;

namespace FeltNest.Files.Dies;

/// <summary>Reads from the life of a die (schema feltnest/die-life/1) how long it lasts.</summary>
internal static class LifeReader
{
    /// <summary>The life of a file.</summary>
    /// <exception cref="InputException">Names the file, the field, the value found and what is allowed; also where the readings show no
    /// limit and the die states none.</exception>
    public static LifeInput Read(string path) => Read(InputText.OfFile(path));

    /// <summary>The life of a text.</summary>
    /// <exception cref="InputException">Names the text, the field, the value found and what is allowed; also where the readings show no
    /// limit and the die states none.</exception>
    public static LifeInput Read(InputText text)
    {
        JsonFields top = JsonFields.Top(text, DieLifeDocument.Document);
        if (!top.Has(ReRuleAt))
        {
            throw top.Fault(ReRuleAt, "is null: the readings show no drift and the die states no life, so nothing can be reckoned with");
        }

        string die = top.Has(Revision) ? $"{top.Text(Name)}, revision {top.Text(Revision)}" : top.Text(Name);
        return new LifeInput(die, (int)Math.Floor(top.Number(ReRuleAt)), top.OptionalText(SupersededBy));
    }
}
