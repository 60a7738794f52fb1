using System.Globalization;

namespace FeltNest.Files.Csv;

/// <summary>
/// Makes texts of cells harmless to spreadsheets, which run a cell that begins with = + - @ or a control character as a formula:
/// such a text is written with one apostrophe before it, and read back without. Numbers keep their sign.
/// </summary>
/// <remarks>The marks are those of the "CSV injection" page of the Open Worldwide Application Security Project.</remarks>
internal static class CellText
{
    private const char Apostrophe = '\'';

    /// <summary>The text as it is written: with an apostrophe where a spreadsheet could run it, else as it is.</summary>
    public static string Harmless(string text) => IsRun(text) ? Apostrophe + text : text;

    /// <summary>The text that was meant: without the apostrophe that <see cref="Harmless"/> put there.</summary>
    public static string Meant(string cell) => cell.StartsWith(Apostrophe) && IsRun(cell[1..]) ? cell[1..] : cell;

    // Apostrophes that stand there already are looked through, so that a text which begins with one reads back as it was.
    private static bool IsRun(string text)
    {
        string bare = text.TrimStart(Apostrophe);
        return bare.Length > 0 && (char.IsControl(bare[0]) || (bare[0] is '=' or '+' or '-' or '@' && !IsNumber(bare)));
    }

    private static bool IsNumber(string text) => double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out _);
}
