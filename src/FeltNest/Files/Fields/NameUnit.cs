namespace FeltNest.Files.Fields;

/// <summary>Units stand in the names of fields: <c>lengthMm</c> is in mm.</summary>
internal static class NameUnit
{
    // The first ending that fits counts, so longer ones stand before those they end in.
    private static readonly (string Ending, string Unit)[] Endings =
    [
        ("Nmm", "N mm"), ("NPerMm", "N/mm"), ("KgPerM3", "kg/m3"), ("Mm2", "mm2"), ("Mm", "mm"), ("Deg", "degrees"), ("Percent", "%"),
        ("Gsm", "g/m2"), ("Kn", "kN"), ("Kg", "kg"), ("M", "m"), ("G", "g"),
    ];

    private static readonly (string Word, string Unit)[] Words = [("metres", "m"), ("squareMetres", "m2"), ("kilograms", "kg")];

    /// <summary>The unit that a name says; empty where it says none.</summary>
    public static string Of(string name)
    {
        string? word = Words.FirstOrDefault(w => w.Word == name).Unit;
        return word ?? Endings.FirstOrDefault(e => name.EndsWith(e.Ending, StringComparison.Ordinal)).Unit ?? string.Empty;
    }
}
