namespace FeltNest.Drawing.Parts;

/// <summary>The palette and the pens of all sheets. Widths follow ISO 128-2: wide to narrow as two to one.</summary>
internal static class Ink
{
    /// <summary>Heights of letters, mm, from the row of ISO 3098: notes, labels, subtitle, title.</summary>
    public const double Note = 2.5;
    public const double Label = 3.5;
    public const double Title = 5;

    /// <summary>Lines and letters.</summary>
    public static readonly Colour Dark = Colour.Of(0x25303B);

    /// <summary>Lines and letters that stand back.</summary>
    public static readonly Colour Soft = Colour.Of(0x66727E);

    /// <summary>Ground of the cloth between panels.</summary>
    public static readonly Colour Cloth = Colour.Of(0xFBFAF6);

    /// <summary>Panels that are copies of the repeat.</summary>
    public static readonly Colour Copy = Colour.Of(0xECEEE6);

    /// <summary>Ground of trims.</summary>
    public static readonly Colour Trim = Colour.Of(0xF1E8DD);

    /// <summary>Hatching of trims.</summary>
    public static readonly Colour TrimHatch = Colour.Of(0xBFA88F);

    /// <summary>Panels of the repeat, one colour a pairing class: moss, clay, slate, plum. They differ in lightness too, for colour-blind
    /// readers and grey prints.</summary>
    public static readonly Colour[] Classes = [Colour.Of(0xBCCB94), Colour.Of(0xD98F6C), Colour.Of(0x8FB3C9), Colour.Of(0x9C83A8)];

    /// <summary>Visible outlines.</summary>
    public static readonly Pen Wide = new(0.5, Dark);

    /// <summary>Dimension, extension and leader lines.</summary>
    public static readonly Pen Narrow = new(0.25, Dark);

    /// <summary>Outlines that stand back.</summary>
    public static readonly Pen Faint = new(0.18, Soft);

    /// <summary>Centre lines: long dash, gap, dot, gap.</summary>
    public static readonly Pen Centre = new(0.18, Soft, 6, 0.9, 0.4, 0.9);
}
