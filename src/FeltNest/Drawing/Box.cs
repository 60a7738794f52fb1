namespace FeltNest.Drawing;

/// <summary>An upright rectangle on the sheet, mm.</summary>
internal readonly record struct Box
{
    /// <summary>Left.</summary>
    public required double MinX { get; init; }

    /// <summary>Lower side.</summary>
    public required double MinY { get; init; }

    /// <summary>Right.</summary>
    public required double MaxX { get; init; }

    /// <summary>Upper side.</summary>
    public required double MaxY { get; init; }

    /// <summary>Width, mm.</summary>
    public double Width => MaxX - MinX;

    /// <summary>Height, mm.</summary>
    public double Height => MaxY - MinY;
}
