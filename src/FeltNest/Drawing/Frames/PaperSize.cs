namespace FeltNest.Drawing.Frames;

/// <summary>A sheet of ISO 216 with the frame of ISO 5457:1999: A4 upright, larger ones lying.</summary>
/// <param name="Name">Name.</param>
/// <param name="WidthMm">Trimmed width, mm.</param>
/// <param name="HeightMm">Trimmed height, mm.</param>
/// <param name="FieldsAcross">Fields of the grid along the width.</param>
/// <param name="FieldsUp">Fields along the height.</param>
public sealed record PaperSize(string Name, double WidthMm, double HeightMm, int FieldsAcross, int FieldsUp)
{
    /// <summary>Left margin, mm (edition of 1999, from memory).</summary>
    public const double BindingMm = 20;

    /// <summary>Margin of the other three sides, mm (edition of 1999, from memory).</summary>
    public const double MarginMm = 10;

    /// <summary>The sizes, smallest first; fields from memory.</summary>
    public static IReadOnlyList<PaperSize> All { get; } =
    [
        new("A4", 210, 297, 4, 6), new("A3", 420, 297, 8, 6), new("A2", 594, 420, 12, 8), new("A1", 841, 594, 16, 12),
        new("A0", 1189, 841, 24, 16),
    ];

    /// <summary>The room inside the frame.</summary>
    public Box Space => new(BindingMm, MarginMm, WidthMm - MarginMm, HeightMm - MarginMm);

    /// <summary>A size by its name.</summary>
    public static PaperSize Of(string name) => All.First(size => size.Name == name);
}
