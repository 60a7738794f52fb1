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
        switch (schema)
        {
            case SchemaName.Layout:
                return new CheckedInput(file, LayoutReader.Read(path, root), null, null, null);
            case SchemaName.Die:
                DieInput die = DieReader.Read(path, root);
                return new CheckedInput(file, die.Layout, null, die, null);
            case SchemaName.OrderPlan:
                return new CheckedInput(file, null, null, null, OrderPlanReader.Read(path, root));
            case SchemaName.RollPlan:
                RollPlanInput plan = RollPlanReader.Read(path, root);
                return new CheckedInput(file, plan.Layout, plan, null, null);
            default:
                return new CheckedInput(file, null, null, null, null);
        }
    }
}
