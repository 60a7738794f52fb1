namespace FeltNest.Drawing.Sheets.Rolls;

/// <summary>How the panels of each part are told apart on a map and a ticket: by a letter, and by a tone that a grey print keeps.</summary>
internal static class PartMarks
{
    // Tones from light to mid grey, told apart without colour; lost panels are black.
    private static readonly Colour[] Tones = [Colour.Of(0xEEF2DF), Colour.Of(0x9DB2C2)];

    /// <summary>Lost panels.</summary>
    public static readonly Colour Lost = Colour.Of(0x16191C);

    /// <summary>Letter of a part.</summary>
    public static string NameOf(int part) => ((char)('A' + part)).ToString();

    /// <summary>Tone of a part's good panels.</summary>
    public static Colour ToneOf(int part) => Tones[part % Tones.Length];
}
