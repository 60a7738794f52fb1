namespace FeltNest.Drawing.Frames;

/// <summary>A sheet of ISO 216 with the frame of ISO 5457:1999: A4 upright, larger ones lying.</summary>
internal sealed record PaperSize
{
    /// <summary>Name.</summary>
    public required string Name { get; init; }

    /// <summary>Trimmed width, mm.</summary>
    public required double WidthMm { get; init; }

    /// <summary>Trimmed height, mm.</summary>
    public required double HeightMm { get; init; }

    /// <summary>Fields of the grid along the width.</summary>
    public required int FieldsAcross { get; init; }

    /// <summary>Fields along the height.</summary>
    public required int FieldsUp { get; init; }

    /// <summary>Left margin, mm (edition of 1999, from memory).</summary>
    public const double BindingMm = 20;

    /// <summary>Margin of the other three sides, mm (edition of 1999, from memory).</summary>
    public const double MarginMm = 10;

    /// <summary>The sizes, smallest first; fields from memory.</summary>
    public static IReadOnlyList<PaperSize> All { get; } =
    [
        new() { Name = "A4", WidthMm = 210, HeightMm = 297, FieldsAcross = 4, FieldsUp = 6 },
        new() { Name = "A3", WidthMm = 420, HeightMm = 297, FieldsAcross = 8, FieldsUp = 6 },
        new() { Name = "A2", WidthMm = 594, HeightMm = 420, FieldsAcross = 12, FieldsUp = 8 },
        new() { Name = "A1", WidthMm = 841, HeightMm = 594, FieldsAcross = 16, FieldsUp = 12 },
        new() { Name = "A0", WidthMm = 1189, HeightMm = 841, FieldsAcross = 24, FieldsUp = 16 },
    ];

    /// <summary>The room inside the frame.</summary>
    public Box Space => new() { MinX = BindingMm, MinY = MarginMm, MaxX = WidthMm - MarginMm, MaxY = HeightMm - MarginMm };

    /// <summary>A size by its name.</summary>
    public static PaperSize Of(string name) => All.First(size => size.Name == name);
}
