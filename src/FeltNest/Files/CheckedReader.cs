using System.Text.Json;
using FeltNest.Files.Check;
using FeltNest.Files.Dies;
using FeltNest.Files.Json;
using FeltNest.Files.Layouts;
using FeltNest.Files.Orders;
using FeltNest.Files.Rolls;

namespace FeltNest.Files;

/// <summary>Reads what can be verified from its file alone, every kind of result that the program writes, told apart by its
/// schema.</summary>
internal static class CheckedReader
{
    /// <summary>The content of a file.</summary>
    /// <exception cref="InputException">Names the file, the field, the value found and what is allowed.</exception>
    public static CheckedInput Read(string path) => Read(InputText.OfFile(path));

    /// <summary>The content of a text.</summary>
    /// <exception cref="InputException">Names the text, the field, the value found and what is allowed.</exception>
    public static CheckedInput Read(InputText text)
    {
        string path = text.Name;
        JsonElement root = JsonInput.ReadObject(text);
        string schema = JsonInput.SchemaOf(
            root, path, [SchemaName.Layout, SchemaName.RollPlan, SchemaName.Die, SchemaName.OrderPlan, .. FigureCheck.Schemas]);
        StatedFile file = new(path, schema, root, CheckedFields.Of(schema));
        return schema switch
        {
            SchemaName.Layout => new CheckedInput.OfLayout(file, LayoutReader.Read(path, root)),
            SchemaName.Die => new CheckedInput.OfDie(file, DieReader.Read(path, root)),
            SchemaName.OrderPlan => new CheckedInput.OfOrders(file, OrderPlanReader.Read(path, root)),
            SchemaName.RollPlan => new CheckedInput.OfRollPlan(file, RollPlanReader.Read(path, root)),
            _ => new CheckedInput.OfFigures(file),
        };
    }
}
