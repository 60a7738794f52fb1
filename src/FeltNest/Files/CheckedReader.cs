using System.Text.Json;
using FeltNest.Files.Dies;
using FeltNest.Files.Json;
using FeltNest.Files.Layouts;
using FeltNest.Files.Orders;
using FeltNest.Files.Rolls;

namespace FeltNest.Files;

/// <summary>Reads what can be verified from its file alone: a layout, a roll plan, a die or a plan of orders, told apart by its
/// schema.</summary>
public static class CheckedReader
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
        switch (JsonInput.SchemaOf(root, path, SchemaName.Layout, SchemaName.RollPlan, SchemaName.Die, SchemaName.OrderPlan))
        {
            case SchemaName.Layout:
                return new CheckedInput(LayoutReader.Read(path, root), null, null, null);
            case SchemaName.Die:
                DieInput die = DieReader.Read(path, root);
                return new CheckedInput(die.Layout, null, die, null);
            case SchemaName.OrderPlan:
                return new CheckedInput(null, null, null, OrderPlanReader.Read(path, root));
            default:
                RollPlanInput plan = RollPlanReader.Read(path, root);
                return new CheckedInput(plan.Layout, plan, null, null);
        }
    }
}
