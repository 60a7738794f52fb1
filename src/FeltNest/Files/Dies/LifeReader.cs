using System.Text.Json;
using FeltNest.Files.Json;

namespace FeltNest.Files.Dies;

/// <summary>Reads from the life of a die (schema feltnest/die-life/1) how long it lasts.</summary>
public static class LifeReader
{
    // Longest life, as a costs file allows it, strikes.
    private const double MostStrikes = 1_000_000_000;

    /// <summary>The life of a file.</summary>
    /// <exception cref="InputException">Names the file, the field, the value found and what is allowed; also where the readings show no
    /// limit and the die states none.</exception>
    public static LifeInput Read(string path)
    {
        JsonElement root = JsonInput.ReadObject(path);
        JsonInput.SchemaOf(root, path, SchemaName.DieLife);
        JsonFields top = JsonFields.Top(
            path, root, "schema", "name", "revision", "supersededBy", "panelProfileMm", "strikes", "failed", "reRuleAt", "driftLimit",
            "statedLife", "die", "drifts", "readings");
        if (!top.Has("reRuleAt"))
        {
            throw top.Fault("reRuleAt", "is null: the readings show no drift and the die states no life, so nothing can be reckoned with");
        }

        string die = top.Has("revision") ? $"{top.Text("name")}, revision {top.Text("revision")}" : top.Text("name");
        return new LifeInput(
            die, (int)Math.Floor(top.Within("reRuleAt", 1, MostStrikes)), top.Has("supersededBy") ? top.Text("supersededBy") : null);
    }
}
