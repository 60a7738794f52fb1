using System.Text.Json;
using FeltNest.Files.Json;
using FeltNest.Files.Layouts;
using FeltNest.Files.Rolls;

namespace FeltNest.Files;

/// <summary>Reads what can be verified from its file alone: a layout or a roll plan, told apart by its schema.</summary>
public static class CheckedReader
{
    /// <summary>The content of a file.</summary>
    /// <exception cref="InputException">Names the file, the field, the value found and what is allowed.</exception>
    public static CheckedInput Read(string path)
    {
        JsonElement root = JsonInput.ReadObject(path);
        if (JsonInput.SchemaOf(root, path, SchemaName.Layout, SchemaName.RollPlan) == SchemaName.Layout)
        {
            return new CheckedInput(LayoutReader.Read(path, root), null);
        }

        RollPlanInput plan = RollPlanReader.Read(path, root);
        return new CheckedInput(plan.Layout, plan);
    }
}
